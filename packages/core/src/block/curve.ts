import { fail } from '../errors/error.js';
import type { Length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import { SIDES, type Side, turnSide } from '../plan/side.js';
import {
  type CurveCircle,
  type CurvePoint,
  leastGreatestCircle,
  leastSquaresCircle,
} from './curveCircle.js';
import { logCabinPlaces, type Place } from './places.js';
import type { LogCabin } from './plan.js';
import { firstWideSide } from './wideCorner.js';

/** A corner where wide meets narrow. */
export interface CurveCorner {
  /** The round whose corner it is; 0 is the center. */
  readonly round: number;
  /** From the finished block's left edge. */
  readonly x: Length;
  /** From its top edge, down. */
  readonly y: Length;
}

/** How much of a block is of one fabric. */
export interface FabricShare {
  readonly fabric: string;
  /** The finished area in square inches. */
  readonly area: Length;
  /** The share of the block, a fraction of 1. Exact. */
  readonly share: Length;
}

/** How round a curved block's line of color is. */
export interface LogCabinCurve {
  /** The line from one of the block's corners to the other, by the center's two. Exact. */
  readonly corners: readonly CurveCorner[];
  /** Nearest by least squares; left out where the line is straight. Its figures are doubles. */
  readonly leastSquares?: CurveCircle;
  /** Whose greatest distance is least. */
  readonly leastGreatest?: CurveCircle;
  /** By how many degrees the line turns between the logs of the first round on either side. */
  readonly bendAtCenter: number;
  /** By how many degrees it turns altogether. */
  readonly bend: number;
}

/**
 * How much of a block each fabric shows when it is finished, in the order in which they are sewn.
 *
 * @example
 * const block = logCabin({ rounds: 1, center: 2, log: 1 });
 * fabricShares(block).map(({ fabric, share }) => `${fabric} ${share}`); // ["center 1/4","log 3/4"]
 */
export function fabricShares(plan: LogCabin): readonly FabricShare[] {
  const { center, logs, cornerstones } = logCabinPlaces(plan);
  const areas = new Map<string, Length>();
  const add = (fabric: string, { left, top, right, bottom }: Place): void => {
    const area = right.minus(left).times(bottom.minus(top));
    areas.set(fabric, area.plus(areas.get(fabric) ?? 0));
  };
  add(plan.center.fabric, center);
  for (const { log, place } of logs) add(log.fabric, place);
  for (const { cornerstone, place } of cornerstones) add(cornerstone.fabric, place);
  const whole = plan.finished.width.times(plan.finished.height);
  return [...areas].map(([fabric, area]) => ({ fabric, area, share: area.dividedBy(whole) }));
}

/** The angle at which a line runs, in degrees. */
const angleOf = (from: CurvePoint, to: CurvePoint): number =>
  (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;

/** How far the finished block reaches beyond its center on both sides of a corner, round by round. */
function reaches(
  { rounds, seam, center }: LogCabin,
  wide: Side,
): readonly { readonly wide: Length; readonly narrow: Length }[] {
  const none = center.finished.width.times(0);
  const narrow = turnSide(wide, -1);
  return [
    { wide: none, narrow: none },
    ...rounds.map(({ centerSeamToEdge }) => ({
      wide: centerSeamToEdge[wide].minus(seam),
      narrow: centerSeamToEdge[narrow].minus(seam),
    })),
  ];
}

/**
 * How round a curved block is, in numbers: the corners where wide meets narrow, the circles nearest to
 * them, and how the line bends. Where logs have the same widths in all rounds the line is two straight
 * runs, and turns only at the center: by 90° − 2·atan(narrow / wide).
 *
 * @throws EighthsError `not-curved` for a plain block, `not-square` for a center that is none
 * @example
 * const block = logCabin({ rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' });
 * const { bendAtCenter, leastGreatest } = logCabinCurve(block);
 * bendAtCenter.toFixed(1); // '46.4'
 * leastGreatest.radius.toFixed(1); // '10.1'
 */
export function logCabinCurve(plan: LogCabin): LogCabinCurve {
  const wide = firstWideSide(plan);
  if (wide === undefined) {
    return fail(
      'not-curved',
      'plan',
      {},
      'A block with logs of one kind has no curve. Give it wide logs on two sides and narrow ones on the others.',
    );
  }
  const { width, height } = plan.center.finished;
  if (!width.equals(height)) {
    fail(
      'not-square',
      'center',
      { width, height },
      'The curve is that of a square block, and the center is {width} by {height}.',
    );
  }
  const side = plan.finished.width;
  const reach = reaches(plan, wide);
  const narrowEnd = entryAt(reach, reach.length - 1).narrow;
  // As if the wide sides were right and bottom: first the corners up to the right, from the outside.
  const right = reach.map(({ wide: out, narrow: up }, round) => ({
    round,
    x: narrowEnd.plus(width).plus(out),
    y: narrowEnd.minus(up),
  }));
  const line = [
    ...[...right].reverse(),
    ...right.map(({ round, x, y }) => ({ round, x: y, y: x })),
  ];
  const dots = right.map(({ x, y }) => ({ x: x.toNumber(), y: y.toNumber() }));
  const mirrored = dots.map(({ x, y }) => ({ x: y, y: x }));
  const [center = { x: 0, y: 0 }, first = center] = dots;
  const [before = first, last = first] = dots.slice(-2);
  const turn = (from: CurvePoint, to: CurvePoint): number => 2 * (angleOf(from, to) + 45);
  const leastSquares = leastSquaresCircle([...dots, ...mirrored]);
  const leastGreatest = leastGreatestCircle(dots);
  const turned = (points: readonly CurvePoint[]): readonly CurvePoint[] =>
    points.map((point) => turnPoint(point, wide, side.toNumber()));
  const onBlock = (circle: CurveCircle): CurveCircle => {
    const [middle = circle.middle] = turned([circle.middle]);
    return { ...circle, middle };
  };
  const inLineOrder = (deviations: readonly number[]): readonly number[] => {
    const own = deviations.slice(0, dots.length);
    return [...[...own].reverse(), ...own];
  };
  return {
    corners: line.map((corner) => turnCorner(corner, wide, side)),
    ...(leastSquares && {
      leastSquares: onBlock({ ...leastSquares, deviations: inLineOrder(leastSquares.deviations) }),
    }),
    ...(leastGreatest && {
      leastGreatest: onBlock({
        ...leastGreatest,
        deviations: inLineOrder(leastGreatest.deviations),
      }),
    }),
    bendAtCenter: turn(center, first),
    bend: turn(before, last),
  };
}

/** Quarter turns from right and bottom to the wide sides. */
const turnsTo = (wide: Side): number => (SIDES.indexOf(wide) + 3) & 3;

function turnCorner(corner: CurveCorner, wide: Side, side: Length): CurveCorner {
  let { x, y } = corner;
  for (let turn = 0; turn < turnsTo(wide); turn += 1) [x, y] = [side.minus(y), x];
  return { round: corner.round, x, y };
}

function turnPoint(point: CurvePoint, wide: Side, side: number): CurvePoint {
  let { x, y } = point;
  for (let turn = 0; turn < turnsTo(wide); turn += 1) [x, y] = [side - y, x];
  return { x, y };
}
