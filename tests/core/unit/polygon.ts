import { isClose, NEGLIGIBLE, over, rootOf, times } from './fixed.js';

/** A point in fixed numbers. */
export interface Dot {
  readonly x: bigint;
  readonly y: bigint;
}

export type Polygon = readonly Dot[];

/** The line through two points; its inside is on the left where y points up. */
export type Edge = readonly [Dot, Dot];

const cross = (a: Dot, b: Dot): bigint => times(a.x, b.y) - times(a.y, b.x);
const dot = (a: Dot, b: Dot): bigint => times(a.x, b.x) + times(a.y, b.y);
const minus = (a: Dot, b: Dot): Dot => ({ x: a.x - b.x, y: a.y - b.y });
export const plus = (a: Dot, b: Dot): Dot => ({ x: a.x + b.x, y: a.y + b.y });
const scaled = (a: Dot, by: bigint): Dot => ({ x: times(a.x, by), y: times(a.y, by) });

export const distance = (a: Dot, b: Dot): bigint => {
  const difference = minus(a, b);
  return rootOf(dot(difference, difference));
};

export const edgesOf = (polygon: Polygon): readonly Edge[] =>
  polygon.map((start, index) => [start, polygon[(index + 1) % polygon.length] ?? start]);

/** Twice the area with its sign: above 0 where the corners go round counterclockwise, y up. */
const doubled = (polygon: Polygon): bigint =>
  edgesOf(polygon).reduce((sum, [start, end]) => sum + cross(start, end), 0n);

export const areaOf = (polygon: Polygon): bigint => {
  const twice = doubled(polygon);
  return (twice < 0n ? -twice : twice) / 2n;
};

/** How far a point lies to the left of a line. */
export function leftOf([start, end]: Edge, point: Dot): bigint {
  return over(cross(minus(end, start), minus(point, start)), distance(start, end));
}

/** A line moved to its left. */
export function movedLeft([start, end]: Edge, by: bigint): Edge {
  const along = minus(end, start);
  const left = scaled({ x: -along.y, y: along.x }, over(by, distance(start, end)));
  return [plus(start, left), plus(end, left)];
}

/** Where two lines meet. */
export function meeting(a: Edge, b: Edge): Dot {
  const [u, v] = [minus(a[1], a[0]), minus(b[1], b[0])];
  const share = over(cross(minus(b[0], a[0]), v), cross(u, v));
  return plus(a[0], scaled(u, share));
}

const counterclockwise = (polygon: Polygon): Polygon =>
  doubled(polygon) < 0n ? [...polygon].reverse() : polygon;

/** Every side moved outward by the same distance, and the sides met again. */
export function offset(polygon: Polygon, by: bigint): Polygon {
  const edges = edgesOf(counterclockwise(polygon)).map((edge) => movedLeft(edge, -by));
  return edges.map((edge, index) => meeting(edges.at(index - 1) ?? edge, edge));
}

/** What lies to the left of a line of a convex polygon. */
export function clip(polygon: Polygon, line: Edge): Polygon {
  return edgesOf(polygon).flatMap(([start, end]) => {
    const [from, to] = [leftOf(line, start), leftOf(line, end)];
    const kept = from >= -NEGLIGIBLE ? [start] : [];
    const crosses =
      (from > NEGLIGIBLE && to < -NEGLIGIBLE) || (from < -NEGLIGIBLE && to > NEGLIGIBLE);
    return crosses ? [...kept, meeting([start, end], line)] : kept;
  });
}

/** The part of a convex polygon that lies in another one. */
export const within = (polygon: Polygon, outer: Polygon): Polygon =>
  edgesOf(counterclockwise(outer)).reduce(clip, polygon);

/** The polygon folded over a line. */
export function fold(polygon: Polygon, line: Edge): Polygon {
  const [start, end] = line;
  const length = distance(start, end);
  const normal = { x: -over(end.y - start.y, length), y: over(end.x - start.x, length) };
  return polygon.map((point) => plus(point, scaled(normal, -2n * leftOf(line, point))));
}

export const turnedRound = ([start, end]: Edge): Edge => [end, start];

/** The extent across and up. */
export function extent(polygon: Polygon): { readonly width: bigint; readonly height: bigint } {
  const spread = (values: readonly bigint[]): bigint => {
    const sorted = [...values].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
    return (sorted.at(-1) ?? 0n) - (sorted[0] ?? 0n);
  };
  return { width: spread(polygon.map(({ x }) => x)), height: spread(polygon.map(({ y }) => y)) };
}

/** Polygons that do not overlap fill another one exactly. */
export function fills(parts: readonly Polygon[], whole: Polygon): boolean {
  const covered = parts.reduce((sum, part) => sum + areaOf(within(part, whole)), 0n);
  return isClose(covered, areaOf(whole));
}

/** The length of a polygon's side from one corner to the next. */
export const sideOf = (polygon: Polygon, index: number): bigint => {
  const [start, end] = edgesOf(polygon)[index] ?? [];
  if (start === undefined || end === undefined) throw new RangeError(`no side ${index}`);
  return distance(start, end);
};
