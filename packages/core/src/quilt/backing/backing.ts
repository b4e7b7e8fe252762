import { formatLength } from '../../length/format.js';
import type { Length } from '../../length/length.js';
import { grownBy, type Size } from '../../plan/size.js';
import { inWords } from '../../unit/say.js';
import { panelsFor, panelsMake, type Runs, sidesFor } from '../panels.js';
import type { Backing, BackingNearMiss, BackingWay } from './plan.js';
import { type BackingFabric, type BackingTask, readBacking } from './readBacking.js';
import { backingSentences } from './sentences.js';
import type { BackingSpec } from './spec.js';

function wayOf(
  runs: Runs,
  panels: number,
  { width, wide }: BackingFabric,
  target: Size,
  { seam, grid, increment }: BackingTask,
): BackingWay {
  const panel = sidesFor(runs, target).along.toGrid(grid, 'up');
  const length = panel.times(panels);
  const beside = panelsMake(panels, width, seam);
  const down = runs === 'down';
  return {
    width,
    wide,
    runs,
    seams: panels === 1 ? 'none' : down ? 'vertical' : 'horizontal',
    panels,
    panel,
    length,
    buy: length.toGrid(increment, 'up'),
    made: down ? { width: beside, height: panel } : { width: panel, height: beside },
  };
}

/** The lesser first; of equals the one with fewer panels. */
const byLength = (a: BackingWay, b: BackingWay): number =>
  a.length.compareTo(b.length) || a.panels - b.panels;

type BothWays = readonly [best: BackingWay, other: BackingWay];

/** Both ways of a fabric, the lesser first. */
function bothWays(fabric: BackingFabric, target: Size, task: BackingTask): BothWays {
  const way = (runs: Runs): BackingWay => {
    const panels = panelsFor(sidesFor(runs, target).beside, fabric.width, task.seam);
    return wayOf(runs, panels, fabric, target, task);
  };
  const [down, across] = [way('down'), way('across')];
  return byLength(across, down) < 0 ? [across, down] : [down, across];
}

/** What one panel less would take and save, if the overhang that it leaves is near enough. */
function nearMiss(way: BackingWay, best: BackingWay, task: BackingTask): BackingNearMiss[] {
  const { quilt, overhang: asked, near, grid, seam } = task;
  const panels = way.panels - 1;
  if (panels === 0) return [];
  const room = panelsMake(panels, way.width, seam).minus(sidesFor(way.runs, quilt).beside);
  const overhang = room.dividedBy(2).toGrid(grid, 'down');
  const less = asked.minus(overhang);
  if (overhang.sign() < 0 || less.compareTo(near) > 0) return [];
  const smaller = wayOf(way.runs, panels, way, grownBy(quilt, overhang), task);
  const saves = best.length.minus(smaller.length);
  const savesToBuy = best.buy.minus(smaller.buy);
  if (savesToBuy.sign() <= 0) return [];
  const note = inWords(backingSentences, 'near-miss', {
    less,
    overhang,
    asked,
    length: smaller.length,
    width: way.width,
    full: best.length,
    yards: formatLength(savesToBuy, { unit: 'yd' }),
  });
  return [{ way: smaller, overhang, less, saves, savesToBuy, note }];
}

/** The way that takes least by area; undefined where there are none. */
const leastByArea = (ways: readonly BackingWay[]): BackingWay | undefined => {
  const area = ({ length, width }: BackingWay): Length => length.times(width);
  return [...ways].sort((a, b) => area(a).compareTo(area(b)))[0];
};

/**
 * The back of a quilt: every way of making it, compared. Panels run down or across; p panels of usable
 * width U make pU − 2s(p − 1), since each seam takes two allowances. Panels are as long as the quilt and
 * its overhang, rounded up to the grid.
 *
 * A near miss names what a slightly smaller overhang on every side would save: the greatest one on the
 * grid that one panel less is wide enough for.
 *
 * @throws EighthsError `missing-field`, `unknown-field`, `not-positive`, `out-of-range`,
 *   `seam-too-wide` and others
 * @example
 * const { best, nearMisses } = backing({ quilt: { width: 72, height: 90 }, wide: [] });
 * `${best.panels} panels, ${best.seams} seams: ${best.length}`; // '3 panels, horizontal seams: 240'
 * nearMisses[0].note.text; // '1/2 less overhang on each side, 3 1/2 in place of 4, takes 194 of the fabric 40 wide in place of 240: 1¼ yd less to buy.'
 */
export function backing(spec: BackingSpec): Backing {
  const task = readBacking(spec);
  const { quilt, overhang, seam, increment } = task;
  const target = grownBy(quilt, overhang);
  const ordinary = bothWays(task.ordinary, target, task);
  const wide = task.wide.map((fabric) => bothWays(fabric, target, task));
  const [best] = ordinary;
  const bestWide = leastByArea(wide.flat());
  const nearMisses = [ordinary, ...wide]
    .flatMap((ways) => ways.flatMap((way) => nearMiss(way, ways[0], task)))
    .sort((a, b) => b.saves.compareTo(a.saves) || a.less.compareTo(b.less));
  return {
    quilt,
    overhang,
    target,
    seam,
    increment,
    ways: [...ordinary, ...wide.flat()],
    best,
    ...(bestWide && { bestWide }),
    nearMisses,
    pieces: [{ label: 'backing', width: best.panel, length: best.width, count: best.panels }],
  };
}
