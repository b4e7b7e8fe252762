import { type Length, type LengthInput, length } from '../length/length.js';
import type { Size } from '../plan/size.js';
import type { TrimLine, TrimMark, TrimPoint } from './plan.js';
import { at, type UnitPoint } from './point.js';

/** Finished and two seam allowances. */
export { grownBy as withSeams } from '../plan/size.js';

/** How far the line rises for each step across, in numbers without a root. */
export interface Slant {
  readonly across: LengthInput;
  readonly down: LengthInput;
}

export const FALLING: Slant = { across: 1, down: 1 };
export const RISING: Slant = { across: 1, down: -1 };

/** Where a slanting line through a point enters and leaves a rectangle, from left to right. */
export function lineAcross(
  role: TrimLine['role'],
  through: UnitPoint,
  slant: Slant,
  { width, height }: Size,
): TrimLine {
  const slope = length(slant.down).dividedBy(slant.across);
  const { x, y } = through;
  const atX = (place: Length): UnitPoint => at(place, y.plus(place.minus(x).times(slope)));
  const atY = (place: Length): UnitPoint => at(x.plus(place.minus(y).dividedBy(slope)), place);
  const zero = length(0);
  const reach = (side: Length): UnitPoint => {
    const end = atX(side);
    if (end.y.sign() < 0) return atY(zero);
    return end.y.compareTo(height) > 0 ? atY(height) : end;
  };
  return { kind: 'line', role, from: reach(zero), to: reach(width) };
}

/** The two lines that halve a unit: for centering a motif, a ruler or the next patch. */
export const centerLines = ({ width, height }: Size): readonly TrimMark[] => {
  const middle = { x: width.dividedBy(2), y: height.dividedBy(2) };
  return [
    { kind: 'line', role: 'center', from: at(middle.x, 0), to: at(middle.x, height) },
    { kind: 'line', role: 'center', from: at(0, middle.y), to: at(width, middle.y) },
  ];
};

export const markPoint = (role: TrimPoint['role'], place: UnitPoint): TrimPoint => ({
  kind: 'point',
  role,
  at: place,
});
