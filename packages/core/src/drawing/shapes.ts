import type { Place } from '../block/places.js';
import type { Area, AreaRole, Dimension, DrawingWord, Line, LineRole, Point } from './drawing.js';
import { cornersOf, point, sideOf, sizeOf } from './points.js';

export const area = (role: AreaRole, place: Place): Area => ({
  kind: 'area',
  role,
  points: cornersOf(place),
});

export const fabricArea = (fabric: string, place: Place): Area => ({
  ...area('fabric', place),
  fabric,
});

export const line = (role: LineRole, points: readonly Point[]): Line => ({
  kind: 'line',
  role,
  points,
});

/** A closed line round a place. */
export const lineRound = (role: LineRole, place: Place): Line =>
  line(role, [...cornersOf(place), point(place.left, place.top)]);

/** The width of a place below it, or its height beside it. */
export function dimension(
  place: Place,
  away: 'bottom' | 'right',
  word?: DrawingWord,
  row = 0,
): Dimension {
  const [from, to] = sideOf(place, away);
  const { width, height } = sizeOf(place);
  const measure = away === 'bottom' ? width : height;
  return { kind: 'dimension', from, to, away, row, measure, ...(word !== undefined && { word }) };
}
