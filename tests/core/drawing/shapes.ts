import type { Area, Drawing, Line, LineRole, LogCabin, Point } from '@eighths/core';
import { sixtyFourths } from '../block/support.js';

/** An upright rectangle in sixty-fourths of an inch. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The corners of an upright rectangle, which the points must be. */
export function boxOf(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => sixtyFourths(x));
  const ys = points.map(({ y }) => sixtyFourths(y));
  return {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
}

export const areaOf = ({ left, top, right, bottom }: Box): number =>
  (right - left) * (bottom - top);

/** Twice the area of any polygon, by the sum over its edges: it has to agree with its box. */
export const doubleArea = (points: readonly Point[]): number =>
  Math.abs(
    points.reduce((sum, { x, y }, index) => {
      const next = points[(index + 1) % points.length] ?? { x, y };
      return sum + sixtyFourths(x) * sixtyFourths(next.y) - sixtyFourths(next.x) * sixtyFourths(y);
    }, 0),
  );

export const isWithin = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left &&
  inner.top >= outer.top &&
  inner.right <= outer.right &&
  inner.bottom <= outer.bottom;

export const areasOf = (drawing: Drawing, role: Area['role']): readonly Area[] =>
  drawing.shapes.filter((shape): shape is Area => shape.kind === 'area' && shape.role === role);

export const linesOf = (drawing: Drawing, role: LineRole): readonly Line[] =>
  drawing.shapes.filter((shape): shape is Line => shape.kind === 'line' && shape.role === role);

/** The raw edge of the block in a drawing. */
export function outlineOf(drawing: Drawing): Box {
  const [outline] = areasOf(drawing, 'outline');
  if (outline === undefined) throw new Error('There is no outline.');
  return boxOf(outline.points);
}

export interface Fabric extends Box {
  readonly fabric: string | undefined;
}

export const fabricsIn = (drawing: Drawing): readonly Fabric[] =>
  areasOf(drawing, 'fabric').map(({ points, fabric }) => ({ ...boxOf(points), fabric }));

export const roundOf = (plan: LogCabin, number: number): LogCabin['rounds'][number] => {
  const round = plan.rounds[number - 1];
  if (round === undefined) throw new Error(`There is no round ${number}.`);
  return round;
};
