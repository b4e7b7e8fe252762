import type { Effort } from './effort.js';
import { fill } from './greedy.js';
import { relaxation, wholeStrips } from './relaxation.js';
import { TINY } from './simplex.js';
import { type Pattern, type Run, type Stock, stripsIn, timesWithin, without } from './stock.js';

/**
 * Looks for a cutting with at most so many strips by diving: keep the whole strips of the relaxation
 * and try to fill the rest; if that takes too many, settle on one more strip of the pattern that is
 * nearest to a whole one and relax what is left. `skips` is how often another pattern than the
 * nearest may be settled on (limited discrepancy search, Harvey and Ginsberg 1995); half as many
 * strips of each pattern are not kept, which loosens a rest that fits too tightly.
 *
 * @param offer gets every cutting that is met, with more strips too.
 * @returns whether one with few enough strips was.
 */
export function* dive(
  stock: Stock,
  strips: number,
  skips: number,
  pool: Pattern[],
  effort: Effort,
  offer: (runs: readonly Run[]) => void,
): Generator<void, boolean> {
  const fitting = pool.filter((pattern) => timesWithin(pattern, stock.demands) >= 1);
  const known = fitting.length;
  const relaxed = yield* relaxation(stock, fitting, effort);
  pool.push(...fitting.slice(known));
  if (wholeStrips(relaxed.strips) > strips) return false;

  let left = stock.demands;
  const kept: Run[] = [];
  for (const { pattern, amount } of relaxed.parts) {
    const times = Math.min(
      Math.floor(amount + TINY) - Math.floor(skips / 2),
      timesWithin(pattern, left),
    );
    if (times <= 0) continue;
    kept.push({ pattern, times });
    left = without(left, pattern, times);
  }
  const allowed = strips - stripsIn(kept);
  for (const values of [stock.sizes, relaxed.duals]) {
    const runs = fill({ ...stock, demands: left }, values, effort);
    offer([...kept, ...runs]);
    if (stripsIn(runs) <= allowed) return true;
  }

  const nearest = relaxed.parts
    .map(({ pattern, amount }) => ({ pattern, part: amount % 1 }))
    .filter(({ pattern, part }) => part > TINY && timesWithin(pattern, left) >= 1)
    .sort((a, b) => b.part - a.part);
  for (const [skipped, { pattern }] of nearest.slice(0, skips + 1).entries()) {
    if (!effort.allows(0)) return false;
    const rest = { ...stock, demands: without(left, pattern, 1) };
    const settled = [...kept, { pattern, times: 1 }];
    const found = yield* dive(rest, allowed - 1, skips - skipped, pool, effort, (runs) =>
      offer([...settled, ...runs]),
    );
    if (found) return true;
  }
  return false;
}
