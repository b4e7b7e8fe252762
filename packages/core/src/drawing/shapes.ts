import type { Place } from '../block/places.js';
import type { Area, AreaRole, Line, LineRole, Point } from './drawing.js';
import { cornersOf } from './points.js';

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
