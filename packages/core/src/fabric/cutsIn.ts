import { type Length, length } from '../length/length.js';
import type { CuttingPlan } from './plan.js';

/** Things that lie one after the other. */
type Cuts = readonly { readonly length: Length; readonly count: number }[];

/** How many cuts part things from what they lie in: one each, but none after the last if it fills up. */
function parted(all: Cuts, within: Length): number {
  const count = all.reduce((sum, each) => sum + each.count, 0);
  const taken = all.reduce((sum, each) => sum.plus(each.length.times(each.count)), length(0));
  return taken.equals(within) ? count - 1 : count;
}

/** How many cuts a plan takes, each strip cut by itself, squaring up not counted. */
export const cutsIn = ({ strips, width: fabric }: CuttingPlan): number =>
  strips.reduce((sum, { width, count, cuts, ends = [] }) => {
    const inEnds = ends.map(({ length: long, count: alike, rows }) => {
      const apart = parted(
        rows.map((row) => ({ ...row, length: row.width })),
        width,
      );
      const across = rows.reduce((all, row) => all + row.count * parted(row.cuts, long), 0);
      return alike * (apart + across);
    });
    const own =
      1 + parted([...cuts, ...ends], fabric) + inEnds.reduce((all, each) => all + each, 0);
    return sum + count * own;
  }, 0);
