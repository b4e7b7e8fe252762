// Chance that repeats itself: the same seed and number give the same input on every machine.

/**
 * @typedef {object} Chance
 * @property {() => number} unit from 0 up to 1
 * @property {(least: number, greatest: number) => number} whole both ends included
 * @property {<Item>(items: readonly Item[]) => Item} one of them
 * @property {(share: number) => boolean} often whether something that is so with this probability is so
 */

/**
 * Mulberry32, a small generator of numbers from 0 up to 1 (from memory), started for one input.
 *
 * @param {number} seed
 * @param {number} number of the input
 * @returns {Chance}
 */
export function chance(seed, number) {
  let state = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b)) | 0;
  const unit = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  /** @type {Chance['whole']} */
  const whole = (least, greatest) => least + Math.floor(unit() * (greatest - least + 1));
  return {
    unit,
    whole,
    one: (items) => {
      const [item] = items.slice(whole(0, items.length - 1));
      if (item === undefined) throw new Error('There is nothing to choose from.');
      return item;
    },
    often: (share) => unit() < share,
  };
}
