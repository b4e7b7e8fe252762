/**
 * What the benchmarks share: how they time, judge and tell. What they measured goes into the guide “How
 * it is tested”, for readers who know nothing of the code.
 *
 * @typedef {{ readonly under: number } | { readonly atMost: number } | { readonly atLeast: number }} Wish
 *
 * @typedef {object} Row
 * @property {string} what what was measured, in the words of a newcomer
 * @property {number} figure
 * @property {string} unit
 * @property {Wish} [wish] in the same unit
 * @property {number} [limit] with more than this, `npm test` fails; left out where there is none
 *
 * @typedef {object} Measured What one benchmark hands over.
 * @property {string} title
 * @property {string} command what measures it again
 * @property {string} [browser] name and version
 * @property {readonly Row[]} rows
 *
 * @typedef {object} Figures What `npm run bench` writes.
 * @property {string} date
 * @property {{ readonly cores: number, readonly processor: string, readonly node: string, readonly browser: string }} machine
 * @property {readonly Measured[]} benchmarks
 */
import { appendFileSync } from 'node:fs';

/** @type {string[]} */
const faults = [];

/** Something is wrong: an answer, or a time over its limit. */
export const fault = (/** @type {string} */ text) => void faults.push(text);

/** @param {string} name @param {number} ms @param {number} limit */
export function judge(name, ms, limit) {
  if (ms >= limit) fault(`${name}: ${ms.toFixed(2)} ms, and ${limit} is the limit`);
}

/**
 * What some work gives, how long it took, and how much of that the processor worked for it.
 *
 * @template Result
 * @param {() => Result} work
 */
export function timed(work) {
  const [start, used] = [performance.now(), process.cpuUsage()];
  const result = work();
  const ms = performance.now() - start;
  const { user, system } = process.cpuUsage(used);
  return { result, ms, cpu: (user + system) / 1000 };
}

/**
 * The time that a part of the runs did not exceed.
 *
 * @param {readonly number[]} times
 * @param {number} part
 */
export function quantile(times, part) {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0;
}

export const median = (/** @type {readonly number[]} */ times) => quantile(times, 0.5);

/** @type {(what: string, figure: number, wish?: Wish) => Row} */
export const milliseconds = (what, figure, wish) => ({
  what,
  figure,
  unit: 'ms',
  ...(wish && { wish }),
});

/** So many of them, where all are wished for. @type {(what: string, figure: number, all: number) => Row} */
export const allOf = (what, figure, all) => ({
  what,
  figure,
  unit: `of ${all}`,
  wish: { atLeast: all },
});

/** Ends a benchmark: tells what is wrong, and hands over its rows where `npm run bench` asks for them. */
export function handOver(/** @type {Measured} */ measured) {
  for (const text of faults) console.error(`FAULT: ${text}`);
  process.exitCode = faults.length > 0 ? 1 : 0;
  const { EIGHTHS_FIGURES: file } = process.env;
  if (file !== undefined) appendFileSync(file, `${JSON.stringify(measured)}\n`);
}
