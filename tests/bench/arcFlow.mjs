/**
 * One-dimensional cutting stock as an integer program of arc flow (J. M. Valério de Carvalho, Annals
 * of Operations Research 86, 1999, from memory): nodes are places along a strip, an arc is a piece
 * that lies between two of them, a path is a strip. A model that shares nothing with the solver it
 * checks. In CPLEX LP format.
 *
 * @param {import('./instances.mjs').Instance} instance
 */
export function arcFlow({ capacity, items }) {
  // Longest first along a strip, which loses no cutting: places reachable so, and the arcs between.
  /** @typedef {{ readonly item: number, readonly from: number, readonly to: number }} Arc */
  /** @type {Map<string, Arc>} */
  const arcs = new Map();
  let places = new Set([0]);
  items.forEach(([size, count], item) => {
    const reached = new Set(places);
    for (const start of places) {
      for (let copy = 0, at = start; copy < count && at + size <= capacity; copy += 1, at += size) {
        arcs.set(`x${item}_${at}`, { item, from: at, to: at + size });
        reached.add(at + size);
      }
    }
    places = reached;
  });
  const names = [...arcs];
  /** @param {(arc: Arc) => boolean} keep */
  const sum = (keep) =>
    names
      .filter(([, arc]) => keep(arc))
      .map(([name]) => name)
      .join(' + ');
  const balances = new Map();
  for (const [name, { from, to }] of names) {
    balances.set(to, `${balances.get(to) ?? ''} + ${name}`);
    if (from > 0) balances.set(from, `${balances.get(from) ?? ''} - ${name}`);
  }
  return [
    'Minimize',
    ` strips: ${sum(({ from }) => from === 0)}`,
    'Subject To',
    ...items.map(([, count], item) => ` d${item}: ${sum((arc) => arc.item === item)} >= ${count}`),
    ...[...balances].map(([place, balance]) => ` p${place}:${balance} >= 0`),
    'General',
    ` ${names.map(([name]) => name).join(' ')}`,
    'End',
  ].join('\n');
}
