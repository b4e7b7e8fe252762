/**
 * Seeded cutting problems that look like those of quilts: the same numbers on every machine.
 *
 * @typedef {object} Instance A problem of one strip width, in whole units.
 * @property {number} capacity What a strip holds.
 * @property {readonly (readonly [size: number, count: number])[]} items
 */

/**
 * Mulberry32, a small generator of numbers from 0 up to 1 (from memory).
 *
 * @param {number} seed
 */
function randomFrom(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/**
 * Problems of one strip width: piece lengths from 1 1/2 to 12 1/2 on quarters or eighths of an inch,
 * 4 to 300 of each, from fabric 40 to 44 wide on the quarter inch. Sizes are in eighths.
 *
 * @param {number} seed
 * @param {number} amount how many problems
 * @param {{ readonly most?: number }} [options] the most lengths in one
 * @returns {readonly Instance[]}
 */
export function realistic(seed, amount, { most = 12 } = {}) {
  const random = randomFrom(seed);
  /** @type {(least: number, greatest: number) => number} */
  const whole = (least, greatest) => least + Math.floor(random() * (greatest - least + 1));
  return Array.from({ length: amount }, () => {
    const step = random() < 0.5 ? 1 : 2;
    /** @type {Set<number>} */
    const lengths = new Set();
    const wanted = whole(2, most);
    while (lengths.size < wanted) lengths.add(step * whole(12 / step, 100 / step));
    const items = [...lengths]
      .sort((a, b) => b - a)
      .map((size) => /** @type {const} */ ([size, whole(4, 300)]));
    return { capacity: 2 * whole(160, 176), items };
  });
}

/**
 * The spec of such a problem: strips 2 1/2 wide, so many units to the inch.
 *
 * @param {Instance} instance
 */
export const specOf = ({ capacity, items }, perInch = 8) => ({
  method: /** @type {const} */ ('plain'),
  width: `${capacity}/${perInch}`,
  pieces: items.map(([size, count]) => ({ width: '2 1/2', length: `${size}/${perInch}`, count })),
});

/**
 * Problems of a whole fabric: 2 to 12 pieces with widths and lengths from 1 1/2 to 12 1/2 on quarters or
 * eighths of an inch, 4 to 300 of each, from fabric 40 to 44 wide on the quarter inch.
 *
 * @param {number} seed
 * @param {number} amount how many problems
 * @param {{ readonly most?: number, readonly count?: number, readonly turnable?: boolean }} [options]
 *   the most pieces in one, the most of each, and whether they may be turned
 * @returns {readonly import('@eighths/core').CuttingSpec[]}
 */
export function quiltPieces(seed, amount, { most = 12, count = 300, turnable = false } = {}) {
  const random = randomFrom(seed);
  /** @type {(least: number, greatest: number) => number} */
  const whole = (least, greatest) => least + Math.floor(random() * (greatest - least + 1));
  return Array.from({ length: amount }, () => {
    const step = random() < 0.5 ? 1 : 2;
    const size = () => `${step * whole(12 / step, 100 / step)}/8`;
    const pieces = Array.from({ length: whole(2, most) }, () => ({
      width: size(),
      length: size(),
      count: whole(4, count),
      turnable,
    }));
    return { width: `${2 * whole(160, 176)}/8`, pieces };
  });
}
