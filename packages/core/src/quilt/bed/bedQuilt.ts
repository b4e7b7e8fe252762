import type { Length } from '../../length/length.js';
import { grownBy } from '../../plan/size.js';
import { MOST_BLOCKS, topExtent } from '../layout/topSize.js';
import { type BorderFit, byFit, lacking, nearestBorder } from './nearestBorder.js';
import type { BedCandidate, BedQuilt } from './plan.js';
import { type BedTask, readBed } from './readBed.js';
import type { BedQuiltSpec } from './spec.js';

/** One number of blocks one way, and how long the top then is. */
interface Extent {
  readonly count: number;
  readonly length: Length;
}

/** The numbers of blocks one way whose top is not too long; nor too short, with the widest border. */
function extents(side: Length, target: Length, { top, border, counts, within }: BedTask): Extent[] {
  const longest = target.plus(within).minus(border.least.times(2));
  const shortest = target.minus(within).minus(border.most.times(2));
  const wanted = (count: number): boolean =>
    counts === 'any' || (count % 2 === 0) === (counts === 'even');
  const list: Extent[] = [];
  for (let count = 1; count <= MOST_BLOCKS[top.setting]; count += 1) {
    const length = topExtent(side, count, top);
    if (length.compareTo(longest) > 0) break;
    if (wanted(count) && length.compareTo(shortest) >= 0) list.push({ count, length });
  }
  return list;
}

interface Found {
  readonly across: Extent;
  readonly down: Extent;
  readonly blocks: number;
  readonly fit: BorderFit;
}

const blocksIn = (across: number, down: number, { top }: BedTask): number =>
  across * down + (top.setting === 'on-point' ? (across - 1) * (down - 1) : 0);

/** Of equals the one with fewer blocks, then with fewer across. */
const byNearness = (a: Found, b: Found): number =>
  byFit(a.fit, b.fit) || a.blocks - b.blocks || a.across.count - b.across.count;

function candidate({ across, down, blocks, fit }: Found, task: BedTask): BedCandidate {
  const { kept, mattress, tuck } = task;
  const center = { width: across.length, height: down.length };
  const finished = grownBy(center, fit.border);
  const washed = { width: finished.width.times(kept), height: finished.height.times(kept) };
  return {
    across: across.count,
    down: down.count,
    blocks,
    border: fit.border,
    center,
    finished,
    over: fit.over,
    distance: fit.distance,
    washed,
    drop: {
      sides: washed.width.minus(mattress.width).dividedBy(2),
      foot: washed.height.minus(mattress.height).minus(tuck),
    },
  };
}

/**
 * Layouts for a bed: from the mattress, the drop and what is tucked in to the size wanted, and from that
 * to the numbers of blocks and the width of borders that come nearest.
 *
 * What quilting and washing take divides: a quilt that loses p of its size is made wanted / (1 − p).
 * The distance of a layout is the greater of its two differences from that. Every layout within it is
 * found, each with the border on the grid that suits it best; borders are alike on all four sides.
 *
 * @throws EighthsError `missing-field`, `unknown-field`, `unknown-choice`, `not-positive`,
 *   `not-a-shrinkage`, `limits-cross`, `not-square`, `out-of-range` and others
 * @example
 * const { wanted, candidates } = bedQuilt({ mattress: 'twin', drop: 12, block: 9 });
 * wanted; // {"width":"63","height":"87"}
 * const [best] = candidates;
 * `${best.across} by ${best.down}, border ${best.border}, ${best.finished.width} by ${best.finished.height}`; // '5 by 8, border 8, 61 by 88'
 */
export function bedQuilt(spec: BedQuiltSpec): BedQuilt {
  const task = readBed(spec);
  const { mattress, wanted, target, top, within, most } = task;
  const across = extents(top.block.width, target.width, task);
  const down = extents(top.block.height, target.height, task);
  const found: Found[] = [];
  for (const one of across) {
    for (const other of down) {
      const lacks = lacking(target, one.length, other.length);
      // One border cannot come near both ways where they differ too much.
      const differ = lacks.width.minus(lacks.height);
      const most = within.times(2);
      if (differ.compareTo(most) > 0 || differ.negated().compareTo(most) > 0) continue;
      const fit = nearestBorder(lacks, task);
      if (fit === undefined || fit.distance.compareTo(within) > 0) continue;
      const blocks = blocksIn(one.count, other.count, task);
      found.push({ across: one, down: other, blocks, fit });
    }
  }
  found.sort(byNearness);
  return {
    mattress,
    setting: top.setting,
    wanted,
    target,
    within,
    candidates: found.slice(0, most).map((each) => candidate(each, task)),
    found: found.length,
  };
}
