// What a shop's page does with the fabric that a pattern takes: it puts lengths into its basket.
const quilt = document.getElementById('quilt');
const rows = document.querySelector('#basket tbody');

const money = ({ cents, currency }) =>
  new Intl.NumberFormat('en-US', { style: 'currency', currency }).format(cents / 100);

const cell = (name, text) => {
  const element = document.createElement(name);
  element.textContent = text;
  if (name === 'th') element.scope = 'row';
  return element;
};

/** One row a length: all that a shop needs is in `buy`, as plain data. */
function fill(lines, size) {
  if (lines.length === 0) return;
  const cents = lines.reduce((sum, { cost }) => sum + cost.cents, 0);
  rows.replaceChildren(
    ...lines.map(({ name, yards, cost }) => {
      const row = document.createElement('tr');
      row.append(cell('th', name), cell('td', yards), cell('td', money(cost)));
      return row;
    }),
  );
  document.getElementById('basket-for').textContent = size;
  document.getElementById('basket-total').textContent = money({
    cents,
    currency: lines[0].cost.currency,
  });
  document.getElementById('basket').hidden = false;
  document.getElementById('basket-empty').hidden = true;
}

document.getElementById('put').addEventListener('click', () => fill(quilt.buy, quilt.plan?.size));
quilt.addEventListener('eighths-change', ({ detail }) => fill(detail.buy, detail.plan.size));
