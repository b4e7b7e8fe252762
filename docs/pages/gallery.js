// Below each element stands the line that puts it into another page as the reader has set it.

const propertyName = (attribute) =>
  attribute.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());

const escaped = (text) =>
  text.replace(
    /[&"<>]/g,
    (sign) => ({ '&': '&amp;', '"': '&quot;', '<': '&lt;', '>': '&gt;' })[sign],
  );

const written = (attributes, prefix = '') =>
  [...attributes].map(([name, text]) => ` ${prefix}${name}="${escaped(text)}"`).join('');

/** An element's line: double quotes only, and no tag that closes itself. */
const lines = {
  tag: (name, attributes) => `<eighths-${name}${written(attributes)}></eighths-${name}>`,
  division: (name, attributes) =>
    `<div data-eighths="${name}"${written(attributes, 'data-')}></div>`,
  frame: (name, attributes, title) => {
    const query = new URLSearchParams([['element', name], ...attributes]);
    return `<iframe src="embed.html?${escaped(String(query))}" title="${escaped(title)}" width="100%" height="1400"></iframe>`;
  },
};

const chosenForm = () => document.querySelector('[name="form"]:checked').value;

/** What each input of an element holds now, and what the page said of it besides; its author's first. */
function settingsOf(element, authored) {
  const names = new Set([...authored, ...element.constructor.observedAttributes]);
  return new Map(
    [...names].map((name) => [
      name,
      element.settings?.[name] ?? element[propertyName(name)] ?? element.getAttribute(name) ?? '',
    ]),
  );
}

/** Whether an element of these attributes has the same answer. */
async function isAnsweredAlike(element, attributes) {
  const probe = document.createElement(element.localName);
  for (const [name, text] of attributes) probe.setAttribute(name, text);
  probe.hidden = true;
  document.body.append(probe);
  try {
    await probe.updateComplete;
    // A cutting plan takes a moment.
    for (let waits = 0; probe.plan === undefined && waits < 250; waits += 1) {
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    return JSON.stringify(probe.plan) === JSON.stringify(element.plan);
  } finally {
    probe.remove();
  }
}

/**
 * The author's attributes and what the reader has changed; all that is set, where that is not enough.
 * Undefined while what is set makes no plan.
 */
async function attributesOf(element, authored, first) {
  const now = [...settingsOf(element, authored)];
  const kept = now.filter(([name, text]) => authored.includes(name) || text !== first.get(name));
  if (await isAnsweredAlike(element, kept)) return kept;
  const all = now.filter(([name, text]) => text !== '' || first.get(name) !== '');
  return (await isAnsweredAlike(element, all)) ? all : undefined;
}

async function addSnippet(section) {
  const element = section.querySelector(
    'eighths-log-cabin, eighths-unit, eighths-fabric, eighths-quilt',
  );
  const name = element.localName.replace('eighths-', '');
  const authored = element.getAttributeNames();
  await customElements.whenDefined(element.localName);
  await element.updateComplete;
  const first = settingsOf(element, authored);

  const snippet = document.createElement('div');
  snippet.className = 'snippet';
  const line = document.createElement('pre');
  line.className = 'line';
  const code = line.appendChild(document.createElement('code'));
  const copy = document.createElement('button');
  copy.type = 'button';
  copy.textContent = 'Copy the line';
  const said = document.createElement('span');
  said.setAttribute('role', 'status');
  snippet.append(line, copy, said);
  section.append(snippet);

  let asked = 0;
  const show = async () => {
    asked += 1;
    const mine = asked;
    await element.updateComplete;
    const attributes = await attributesOf(element, authored, first);
    if (mine !== asked || attributes === undefined) return;
    code.textContent = lines[chosenForm()](name, attributes, section.dataset.title);
    said.textContent = '';
    snippet.classList.remove('behind');
  };

  copy.addEventListener('click', async () => {
    try {
      await navigator.clipboard.writeText(code.textContent);
      said.textContent = 'Copied.';
    } catch {
      getSelection().selectAllChildren(code);
      said.textContent = 'Selected: copy it with your keyboard or the menu.';
    }
  });
  element.addEventListener('eighths-change', show);
  element.addEventListener('eighths-error', () => {
    asked += 1;
    snippet.classList.add('behind');
    said.textContent = 'This is the line of the last sizes that could be made.';
  });
  // Measures and hand change the line, and not the plan.
  element.addEventListener('click', show);
  document.querySelector('.forms').addEventListener('change', show);
  await show();
}

await Promise.all([...document.querySelectorAll('.example')].map(addSnippet));
document.documentElement.dataset.ready = '';
