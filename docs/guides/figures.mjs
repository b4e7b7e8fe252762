// The tables of the guide “How it is tested”, from what `npm run bench` and `npm run mutation` found.
import { readFileSync } from 'node:fs';
import { table } from './table.mjs';

/** @typedef {import('../../tests/bench/report.mjs').Figures} Figures */
/** @typedef {import('../../tests/bench/report.mjs').Row} Row */

/**
 * What became of the changes that were made to the code of one room.
 *
 * @typedef {object} Mutants
 * @property {string} room
 * @property {number} killed noticed by a test
 * @property {number} survived noticed by none
 * @property {number} timeout noticed, since the code did not end any more
 * @property {number} noCoverage in code that no test reaches
 * @property {number} score of all, the part that was noticed, in percent
 */

/** @template Value @returns {Value} */
const read = (/** @type {string} */ name) =>
  JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));

/** What is small is shown with more places. */
function written(/** @type {number} */ figure) {
  if (Number.isInteger(figure)) return String(figure);
  return figure < 1 ? String(Number(figure.toPrecision(2))) : figure.toFixed(figure < 10 ? 2 : 1);
}

/** @type {(figure: number, wish: NonNullable<Row['wish']>) => readonly [text: string, isMet: boolean]} */
function wished(figure, wish) {
  if ('under' in wish) return [`under ${written(wish.under)}`, figure < wish.under];
  if ('atMost' in wish) return [`at most ${written(wish.atMost)}`, figure <= wish.atMost];
  return [`at least ${written(wish.atLeast)}`, figure >= wish.atLeast];
}

/** @type {(row: Row) => readonly string[]} */
function cellsOf({ what, figure, unit, wish, limit }) {
  const shown = `${written(figure)} ${unit}`;
  const [text, isMet] = wish === undefined ? ['', true] : wished(figure, wish);
  const isOver = limit !== undefined && figure > limit;
  const verdict = isOver ? ', **over its limit**' : isMet ? '' : ', **not as wished**';
  return [what, shown + verdict, text, limit === undefined ? '' : written(limit)];
}

/** @type {(measured: Figures['benchmarks'][number]) => string} */
function section({ title, command, rows }) {
  const heads = ['what', 'figure', 'wished', 'limit'];
  const used = heads.map((_, at) => at < 2 || rows.some((row) => cellsOf(row)[at] !== ''));
  const kept = (/** @type {readonly string[]} */ cells) => cells.filter((_, at) => used[at]);
  return `### ${title}\n\n\`${command}\`\n\n${table(
    kept(heads),
    rows.map((row) => kept(cellsOf(row))),
  )}`;
}

/** Every figure, with the machine that they were measured on. */
export function figuresTable(
  { date, machine, benchmarks } = /** @type {Figures} */ (read('figures.json')),
) {
  const { cores, processor, node, browser } = machine;
  return [
    `Measured on ${date}, on ${cores} cores of ${processor}, with Node ${node} and ${browser}.`,
    ...benchmarks.map(section),
  ].join('\n\n');
}

/** What the tests notice of changes to the code, room by room. */
export function mutationTable(rooms = /** @type {readonly Mutants[]} */ (read('mutation.json'))) {
  if (rooms.length === 0) return 'No figures are recorded yet.';
  return table(
    ['room', 'changes', 'noticed', 'not noticed', 'not reached', 'score'],
    rooms.map(({ room, killed, survived, timeout, noCoverage, score }) => [
      `\`${room}\``,
      ...[killed + survived + timeout + noCoverage, killed + timeout, survived, noCoverage].map(
        String,
      ),
      `${score.toFixed(1)} %`,
    ]),
  );
}
