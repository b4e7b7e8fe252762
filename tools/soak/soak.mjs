// One element edited by chance, and measured between equal stretches of edits.
import { chance } from '../fuzz/random.mjs';
import { answered, edit, reset } from './edit.mjs';
import { held } from './held.mjs';

/** @typedef {import('./held.mjs').Held} Held */

/** Edits between two returns to what the author wrote: one turn into a corner is not all that is seen. */
const TURN = 50;

/**
 * Edits the page's first element and measures before the first stretch and after each.
 *
 * @param {import('playwright-core').Page} page
 * @param {string} tag
 * @param {{ seed: number, warm: number, edits: number, stretches: number, again?: boolean }} options
 *   `edits` in one stretch; `warm`: edits before the first; `again`: every stretch has the same edits
 * @returns {Promise<Held[]>}
 */
export async function soak(page, tag, { seed, warm, edits, stretches, again = false }) {
  const devtools = await page.context().newCDPSession(page);
  const element = page.locator(tag).first();
  await element.locator('[part=headline]').first().waitFor();
  await answered(page, tag);
  const attributes = await element.evaluate((node) =>
    [...node.attributes].map(({ name, value }) => /** @type {const} */ ([name, value])),
  );
  const some = async (/** @type {number} */ first, /** @type {number} */ count) => {
    for (let number = 0; number < count; number += 1) {
      if (number % TURN === 0) await reset(page, tag, attributes);
      try {
        await edit(page, tag, chance(seed, first + number));
      } catch (cause) {
        throw new Error(`Edit ${first + number} of seed ${seed} has failed.`, { cause });
      }
    }
    await reset(page, tag, attributes);
  };
  await some(0, warm);
  const measured = [await held(devtools)];
  for (let stretch = 0; stretch < stretches; stretch += 1) {
    await some(again ? 0 : warm + stretch * edits, edits);
    measured.push(await held(devtools));
  }
  await devtools.detach();
  return measured;
}

/**
 * What is never given back. A leak grows in every stretch, while a table that fills or doubles, and a
 * view that is seen for the first time, do so in some: the least growth of all stretches.
 *
 * @param {readonly number[]} measured
 */
export const leastGrowth = (measured) =>
  Math.min(...measured.slice(1).map((value, at) => value - (measured[at] ?? value)));
