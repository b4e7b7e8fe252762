import { beyond, movedOut, type Place } from '../block/places.js';
import type { Length } from '../length/length.js';
import { perSide, runsAcross, type Side } from '../plan/side.js';
import type { Size } from '../plan/size.js';
import type { Point } from './drawing.js';

export const point = (x: Length, y: Length): Point => ({ x, y });

export const cornersOf = ({ left, top, right, bottom }: Place): readonly Point[] => [
  point(left, top),
  point(right, top),
  point(right, bottom),
  point(left, bottom),
];

export const middleOf = ({ left, top, right, bottom }: Place): Point =>
  point(left.plus(right).dividedBy(2), top.plus(bottom).dividedBy(2));

/** Where two sides of a place meet. */
export const cornerOf = (place: Place, one: Side, other: Side): Point =>
  runsAcross(one) ? point(place[other], place[one]) : point(place[one], place[other]);

/** A side alone, as a place without breadth. */
export const edgeOf = (place: Place, side: Side): Place => beyond(side, place, place);

/** The two ends of a side, from left to right or from top to bottom. */
export function sideOf(place: Place, side: Side): readonly [Point, Point] {
  const { left, top, right, bottom } = edgeOf(place, side);
  return [point(left, top), point(right, bottom)];
}

/** A place turned clockwise about the origin by quarter turns. */
export function turnPlace(place: Place, quarterTurns: number): Place {
  let turned = place;
  for (let turn = 0; turn < quarterTurns; turn += 1) {
    const { left, top, right, bottom } = turned;
    turned = { left: bottom.negated(), top: left, right: top.negated(), bottom: right };
  }
  return turned;
}

/** A place that reaches farther on every side. */
export const grown = (place: Place, by: Length): Place =>
  perSide((side) => movedOut(place, side, by));

export const sizeOf = ({ left, top, right, bottom }: Place): Size => ({
  width: right.minus(left),
  height: bottom.minus(top),
});
