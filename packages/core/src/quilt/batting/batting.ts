import { type Length, length } from '../../length/length.js';
import { shorterOf } from '../../length/longer.js';
import { grownBy, type Size } from '../../plan/size.js';
import { panelsFor, type Runs, sidesFor } from '../panels.js';
import type { Batting, BattingNearMiss, BattingPackage, BattingRoll } from './plan.js';
import { type BattingTask, readBatting } from './readBatting.js';
import type { BattingSpec } from './spec.js';

const turnedSize = ({ width, height }: Size): Size => ({ width: height, height: width });

/** How much a package, as it lies, leaves over; below 0 lacks. */
const leftOverOf = (size: Size, target: Size): Size => ({
  width: size.width.minus(target.width),
  height: size.height.minus(target.height),
});

/** A package as it lies best: unturned, unless it lacks less the other way. */
function laid(size: Size, target: Size): BattingPackage {
  const lacks = ({ width, height }: Size): Length => shorterOf(shorterOf(width, height), length(0));
  const straight = leftOverOf(size, target);
  const turned = leftOverOf(turnedSize(size), target);
  return lacks(turned).compareTo(lacks(straight)) > 0
    ? { size, turned: true, leftOver: turned }
    : { size, turned: false, leftOver: straight };
}

const isEnough = ({ leftOver }: BattingPackage): boolean =>
  leftOver.width.sign() >= 0 && leftOver.height.sign() >= 0;

const areaOf = ({ size }: BattingPackage): Length => size.width.times(size.height);

/** The overhang that a package too small leaves, if that is near enough. */
function nearMiss(one: BattingPackage, task: BattingTask): BattingNearMiss[] {
  const lacking = shorterOf(one.leftOver.width, one.leftOver.height);
  const overhang = task.overhang.plus(lacking.dividedBy(2)).toGrid(task.grid, 'down');
  const less = task.overhang.minus(overhang);
  if (overhang.sign() < 0 || less.compareTo(task.near) > 0) return [];
  const leftOver = laid(one.size, grownBy(task.quilt, overhang));
  return [{ ...leftOver, overhang, less }];
}

function rollOf(
  runs: Runs,
  target: Size,
  { rollWidth, grid, increment }: BattingTask,
): BattingRoll {
  const { beside, along } = sidesFor(runs, target);
  const panels = panelsFor(beside, rollWidth, length(0));
  const panel = along.toGrid(grid, 'up');
  const taken = panel.times(panels);
  return { runs, panels, panel, length: taken, buy: taken.toGrid(increment, 'up') };
}

/**
 * The batting of a quilt: the packages that are large enough, either way round, those that a slightly
 * smaller overhang would do for, and what it takes from a roll. Panels of batting are butted, so that no
 * seam takes anything; they are as long as the quilt and its overhang, rounded up to the grid.
 *
 * @throws EighthsError `missing-field`, `unknown-field`, `not-positive`, `out-of-range` and others
 * @example
 * const { packages, nearMisses, roll } = batting({ quilt: { width: 63, height: 87 } });
 * packages[0].size; // {"width":"81","height":"96"}
 * roll[0].length.toString(); // '71'
 */
export function batting(spec: BattingSpec): Batting {
  const task = readBatting(spec);
  const { quilt, overhang, rollWidth } = task;
  const target = grownBy(quilt, overhang);
  const all = task.packages
    .map((size) => laid(size, target))
    .sort((a, b) => areaOf(a).compareTo(areaOf(b)) || a.size.width.compareTo(b.size.width));
  const packages = all.filter(isEnough);
  const [smallest] = packages;
  const nearMisses = all
    .filter((one) => !isEnough(one))
    .filter((one) => smallest === undefined || areaOf(one).compareTo(areaOf(smallest)) < 0)
    .flatMap((one) => nearMiss(one, task))
    .sort((a, b) => a.less.compareTo(b.less));
  const down = rollOf('down', target, task);
  const across = rollOf('across', target, task);
  return {
    quilt,
    overhang,
    target,
    packages,
    nearMisses,
    rollWidth,
    roll: across.length.compareTo(down.length) < 0 ? [across, down] : [down, across],
  };
}
