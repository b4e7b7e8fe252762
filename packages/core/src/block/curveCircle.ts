import { entryAt } from '../plan/entryAt.js';

/** A point in inches. */
export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

/** A circle fitted to points, in inches, to the precision of doubles. */
export interface CurveCircle {
  readonly middle: CurvePoint;
  readonly radius: number;
  /** How far each point lies outside the circle, in the order of the points; inside is less than 0. */
  readonly deviations: readonly number[];
  /** The greatest of them, without its sign. */
  readonly greatest: number;
  /** The root of the mean of their squares. */
  readonly rootMeanSquare: number;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function circleAround(
  points: readonly CurvePoint[],
  middle: CurvePoint,
  radius: number,
): CurveCircle {
  const deviations = points.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y) - radius);
  return {
    middle,
    radius,
    deviations,
    greatest: Math.max(...deviations.map(Math.abs)),
    rootMeanSquare: Math.sqrt(mean(deviations.map((each) => each * each))),
  };
}

/**
 * The circle that lies nearest to the points by algebra: x² + y² is nearest to a linear function of x
 * and y (I. Kåsa, 1976, from memory). Undefined where the points lie on a straight line.
 */
function algebraicMiddle(points: readonly CurvePoint[]): CurvePoint | undefined {
  const [mx, my] = [mean(points.map(({ x }) => x)), mean(points.map(({ y }) => y))];
  const around = points.map(({ x, y }) => ({ u: x - mx, v: y - my }));
  const sum = (of: (point: { u: number; v: number }) => number): number =>
    around.reduce((total, point) => total + of(point), 0);
  const [uu, uv, vv] = [sum(({ u }) => u * u), sum(({ u, v }) => u * v), sum(({ v }) => v * v)];
  const determinant = uu * vv - uv * uv;
  if (determinant <= 1e-12 * (uu + vv) ** 2) return undefined;
  const pu = sum(({ u, v }) => u * (u * u + v * v)) / 2;
  const pv = sum(({ u, v }) => v * (u * u + v * v)) / 2;
  return {
    x: mx + (pu * vv - pv * uv) / determinant,
    y: my + (pv * uu - pu * uv) / determinant,
  };
}

const STEPS = 200;

/**
 * The circle of least squares: the sum of the squared distances from it is least. By Gauss and Newton
 * from the algebraic circle, a step halved where it would not come nearer. Undefined where the points
 * lie on a straight line.
 *
 * @example
 * const circle = leastSquaresCircle([{ x: 1, y: 0 }, { x: 0, y: 1 }, { x: -1, y: 0 }]);
 * circle?.radius.toFixed(6); // '1.000000'
 */
export function leastSquaresCircle(points: readonly CurvePoint[]): CurveCircle | undefined {
  const start = algebraicMiddle(points);
  if (start === undefined) return undefined;
  const around = (middle: CurvePoint): CurveCircle =>
    circleAround(
      points,
      middle,
      mean(points.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y))),
    );
  let best = around(start);
  for (let step = 0; step < STEPS; step += 1) {
    const { middle, deviations } = best;
    const slopes = points.map(({ x, y }) => {
      const distance = Math.hypot(x - middle.x, y - middle.y);
      return { u: (middle.x - x) / distance, v: (middle.y - y) / distance };
    });
    // The radius is the mean distance, so the means go out of the slopes.
    const [mu, mv] = [mean(slopes.map(({ u }) => u)), mean(slopes.map(({ v }) => v))];
    let [uu, uv, vv, du, dv] = [0, 0, 0, 0, 0];
    for (const [index, slope] of slopes.entries()) {
      const [u, v, off] = [slope.u - mu, slope.v - mv, entryAt(deviations, index)];
      uu += u * u;
      uv += u * v;
      vv += v * v;
      du += u * off;
      dv += v * off;
    }
    const determinant = uu * vv - uv * uv;
    const move = { x: (uv * dv - vv * du) / determinant, y: (uv * du - uu * dv) / determinant };
    let next: CurveCircle | undefined;
    for (let part = 1; part > 1e-6 && next === undefined; part /= 2) {
      const tried = around({ x: middle.x + part * move.x, y: middle.y + part * move.y });
      if (tried.rootMeanSquare < best.rootMeanSquare) next = tried;
    }
    if (next === undefined) break;
    best = next;
  }
  return best;
}

/**
 * The circle whose greatest distance from the points is least, for points that are their own mirror
 * image in the diagonal x = y, with its middle on that diagonal. Half of each pair is enough.
 *
 * With (along, off) a point's place along the diagonal and its distance from it, and d its distance
 * from the middle at t, the greatest distance is (greatest d − least d) / 2. That is least where two
 * distances are equal, a linear equation in t: where a greatest and a least one change alike, both
 * points lie on one ray from the middle, and their difference is not at its least but at its greatest.
 * Undefined where no circle is nearer than a straight line.
 */
export function leastGreatestCircle(half: readonly CurvePoint[]): CurveCircle | undefined {
  const points = half.map(({ x, y }) => ({
    along: (x + y) / Math.SQRT2,
    off: Math.abs(x - y) / Math.SQRT2,
  }));
  const alongs = points.map(({ along }) => along);
  const spread = Math.max(...alongs) - Math.min(...alongs);
  if (spread === 0) return undefined;
  let best = { t: Number.NaN, width: spread, radius: 0 };
  const consider = (t: number): void => {
    if (!Number.isFinite(t)) return;
    const distances = points.map(({ along, off }) => Math.hypot(along - t, off));
    const [least, most] = [Math.min(...distances), Math.max(...distances)];
    if (most - least < best.width) best = { t, width: most - least, radius: (most + least) / 2 };
  };
  for (const [index, one] of points.entries()) {
    for (const other of points.slice(index + 1)) {
      const square = (point: typeof one): number => point.along ** 2 + point.off ** 2;
      consider((square(one) - square(other)) / (2 * (one.along - other.along)));
    }
  }
  if (Number.isNaN(best.t)) return undefined;
  const middle = { x: best.t / Math.SQRT2, y: best.t / Math.SQRT2 };
  return circleAround(half, middle, best.radius);
}
