/**
 * Circles through the two outer corners of a curved block, where its wide and narrow sides meet.
 *
 * Measured from the corner of the center where its narrow sides meet, the wide sides right and below,
 * the corners of round k are (c + A, −B) and its mirror image (−B, c + A), A and B being the wide and
 * the narrow logs so far. All circles through the outer two have their middle on the diagonal, at (t, t).
 * With u = x + y and v = x² + y² of a corner, and U, V of the outer one,
 *
 *   d² − r² = (v − V) − 2t (u − U)  and  r² = V − 2tU + 2t²:
 *
 * the first is linear in t. The deviation |d² − r²| / 2r falls toward the one t where the circle passes
 * through the corner, rises beyond it, and has at most one other bend, a greatest value: so over a
 * stretch of t without that zero it is least at an end, and the least greatest deviation of several
 * corners lies at a zero of one or where two are equal, which is a linear equation again.
 */
export interface ArcCorner {
  /** v − V. */
  readonly power: number;
  /** u − U. */
  readonly beyond: number;
}

/** The outer corner (x, −y) that circles pass through. */
export interface ArcEnd {
  readonly x: number;
  readonly y: number;
}

/** The corner (x, −y), as seen from the outer one. */
export const arcCorner = (x: number, y: number, end: ArcEnd): ArcCorner => ({
  power: x * x + y * y - end.x * end.x - end.y * end.y,
  beyond: x - y - (end.x - end.y),
});

/** The radius of the circle whose middle is at (t, t). */
const radiusAt = (t: number, { x, y }: ArcEnd): number =>
  Math.sqrt((x - t) * (x - t) + (y + t) * (y + t));

/** (d² − r²) / 2r of a corner; at an infinite t, the circle is the straight line between the ends. */
function deviationAt(t: number, { power, beyond }: ArcCorner, end: ArcEnd): number {
  if (Number.isFinite(t)) return (power - 2 * t * beyond) / (2 * radiusAt(t, end));
  return ((t > 0 ? -1 : 1) * beyond) / Math.SQRT2;
}

/** The least |deviation| of a corner over a stretch of t. */
export function leastDeviation(corner: ArcCorner, from: number, to: number, end: ArcEnd): number {
  const [one, other] = [deviationAt(from, corner, end), deviationAt(to, corner, end)];
  return one < 0 === other < 0 ? Math.min(Math.abs(one), Math.abs(other)) : 0;
}

/** The stretch of t over which a corner deviates by less than a limit. */
export function middlesWithin(
  { power, beyond }: ArcCorner,
  limit: number,
  { x, y }: ArcEnd,
): readonly [from: number, to: number] {
  const everywhere = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;
  // (power − 2t · beyond)² < 4 · limit² · r², a quadratic in t.
  const square = 4 * limit * limit;
  const a = 4 * beyond * beyond - 2 * square;
  if (!(a > 0)) return everywhere;
  const half = 2 * power * beyond - square * (x - y);
  const c = power * power - square * (x * x + y * y);
  const spread = Math.sqrt(Math.max(0, half * half - a * c));
  // A little more on both sides, for what doubles lose.
  const slack = 1e-9 * (1 + Math.abs(half / a));
  return [(half - spread) / a - slack, (half + spread) / a + slack];
}

/** The t at which two corners deviate equally, or oppositely, as a fraction; whole for whole corners. */
export interface MiddleFraction {
  readonly over: number;
  readonly under: number;
}

/** The middles among which the best circle of these corners is. */
function* candidateMiddles(corners: readonly ArcCorner[]): Generator<MiddleFraction> {
  const middle = (over: number, under: number): MiddleFraction[] =>
    under === 0 ? [] : [{ over, under: 2 * under }];
  for (const [index, one] of corners.entries()) {
    yield* middle(one.power, one.beyond);
    for (const other of corners.slice(index + 1)) {
      yield* middle(one.power + other.power, one.beyond + other.beyond);
      yield* middle(one.power - other.power, one.beyond - other.beyond);
    }
  }
}

/** The best circle of some corners: its middle, and the greatest deviation. */
export interface BestMiddle {
  /** Undefined where the best of all is the straight line. */
  readonly middle: MiddleFraction | undefined;
  readonly greatest: number;
}

export function bestMiddle(corners: readonly ArcCorner[], end: ArcEnd): BestMiddle {
  const greatestAt = (t: number): number =>
    corners.reduce((most, corner) => Math.max(most, Math.abs(deviationAt(t, corner, end))), 0);
  let best: BestMiddle = { middle: undefined, greatest: greatestAt(Number.POSITIVE_INFINITY) };
  for (const middle of candidateMiddles(corners)) {
    const greatest = greatestAt(middle.over / middle.under);
    if (greatest < best.greatest) best = { middle, greatest };
  }
  return best;
}
