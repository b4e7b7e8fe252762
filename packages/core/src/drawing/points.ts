import type { Place } from '../block/places.js';
import type { Length } from '../length/length.js';
import type { Side } from '../plan/side.js';
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

/** The two ends of a side, from left to right or from top to bottom. */
export function sideOf({ left, top, right, bottom }: Place, side: Side): readonly [Point, Point] {
  switch (side) {
    case 'top':
      return [point(left, top), point(right, top)];
    case 'bottom':
      return [point(left, bottom), point(right, bottom)];
    case 'left':
      return [point(left, top), point(left, bottom)];
    case 'right':
      return [point(right, top), point(right, bottom)];
  }
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
