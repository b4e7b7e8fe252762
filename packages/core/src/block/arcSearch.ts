import { entryAt } from '../plan/entryAt.js';
import {
  type ArcCorner,
  type ArcEnd,
  arcCorner,
  type BestMiddle,
  bestMiddle,
  leastDeviation,
  middlesWithin,
} from './arcGeometry.js';
import type { StepRange } from './fitProblem.js';
import { Queue } from './queue.js';

/** What is searched, in whole steps of the grid. */
export interface ArcProblem {
  readonly rounds: number;
  readonly finished: number;
  readonly center: StepRange;
  readonly wide: StepRange;
  readonly narrow: StepRange;
}

/** The best widths, round by round, in steps. */
export interface ArcSolution extends BestMiddle {
  readonly center: number;
  readonly end: ArcEnd;
  readonly wide: readonly number[];
  readonly narrow: readonly number[];
}

/** A block's center and outer corner, and a stretch of middles for its circle. */
interface Stretch {
  readonly center: number;
  readonly end: ArcEnd;
  readonly from: number;
  readonly to: number;
  /** No widths deviate less in this stretch. */
  readonly bound: number;
}

/** The widths of one path from the center's corner to the outer one, and its greatest least deviation. */
interface Path {
  readonly wide: readonly number[];
  readonly narrow: readonly number[];
  readonly bound: number;
}

/** A corner that a path may come by. */
interface Stop {
  readonly a: number;
  readonly b: number;
  /** The least it deviates over the stretch. */
  readonly bound: number;
  /** The stops one round before, by index. */
  readonly from: number[];
}

/** Where the circle of the middle (t, t) crosses the column x, as −y; not a number where it does not. */
function crossing(t: number, x: number, end: ArcEnd): number {
  if (!Number.isFinite(t)) return end.y - (end.x - x);
  const square = (end.x - t) ** 2 + (end.y + t) ** 2 - (x - t) ** 2;
  // Of the two crossings, the one on the side of the outer corner.
  return end.y + t > 0 ? Math.sqrt(square) - t : -Math.sqrt(square) - t;
}

/** The corners between the center's and the outer one that some circle of the stretch comes near. */
function stopsNear(
  problem: ArcProblem,
  { center, end, from, to }: Omit<Stretch, 'bound'>,
  limit: number,
): Stop[] {
  const { wide, narrow } = problem;
  const stops: Stop[] = [];
  const lastA = end.x - center - wide.least;
  const lastB = end.y - narrow.least;
  const boundAt = (a: number, b: number): number =>
    leastDeviation(arcCorner(center + a, b, end), from, to, end);
  const add = (a: number, b: number, bound: number): void => {
    stops.push({ a, b, bound, from: [] });
  };
  for (let a = wide.least; a <= lastA; a += 1) {
    const [one, other] = [crossing(from, center + a, end), crossing(to, center + a, end)];
    const guess = Math.round((one + other) / 2);
    // A circle with its middle before the center's corner may cross a column twice among the corners.
    if (Number.isNaN(guess) || limit > 1 || from < 0) {
      for (let b = narrow.least; b <= lastB; b += 1) {
        const bound = boundAt(a, b);
        if (bound < limit) add(a, b, bound);
      }
      continue;
    }
    // The further from the circles, the more it deviates: on to both sides until it is too much.
    for (let b = Math.min(guess, lastB); b >= narrow.least; b -= 1) {
      const bound = boundAt(a, b);
      if (bound < limit) add(a, b, bound);
      else if (b < guess - 1) break;
    }
    for (let b = Math.max(guess + 1, narrow.least); b <= lastB; b += 1) {
      const bound = boundAt(a, b);
      if (bound < limit) add(a, b, bound);
      else if (b > guess + 2) break;
    }
  }
  return stops;
}

/**
 * The path whose greatest least deviation over a stretch is least, by dynamic programming, round by
 * round, over the corners near its circles; undefined where none is below `limit`. Those deviations
 * are bounds from below, so the path's is one for all paths.
 */
function boundingPath(
  problem: ArcProblem,
  stretch: Omit<Stretch, 'bound'>,
  limit: number,
): Path | undefined {
  const { rounds, wide, narrow } = problem;
  const { center, end, from, to } = stretch;
  const start = leastDeviation(arcCorner(center, 0, end), from, to, end);
  if (start >= limit) return undefined;
  const isStep = (one: Stop, next: Stop): boolean => {
    const [w, n] = [next.a - one.a, next.b - one.b];
    return w >= wide.least && w <= wide.most && n >= narrow.least && n <= narrow.most;
  };
  const stops: Stop[] = [
    { a: 0, b: 0, bound: start, from: [] },
    ...(rounds > 1 ? stopsNear(problem, stretch, limit) : []),
    { a: end.x - center, b: end.y, bound: 0, from: [] },
  ];
  for (const [index, stop] of stops.entries()) {
    for (let before = index - 1; before >= 0; before -= 1) {
      const one = stops[before];
      if (one === undefined || stop.a - one.a > wide.most) break;
      if (isStep(one, stop)) stop.from.push(before);
    }
  }

  const layers: Int32Array[] = [];
  const nowhere = (): Float64Array => new Float64Array(stops.length).fill(Number.POSITIVE_INFINITY);
  let before = nowhere();
  before[0] = start;
  for (let round = 1; round <= rounds; round += 1) {
    const now = nowhere();
    const origin = new Int32Array(stops.length).fill(-1);
    for (const [index, stop] of stops.entries()) {
      let least = limit;
      for (const one of stop.from) {
        const value = entryAt(before, one);
        if (value >= least) continue;
        least = value;
        origin[index] = one;
      }
      if (least < limit) now[index] = Math.max(least, stop.bound);
    }
    layers.push(origin);
    before = now;
  }

  let at = stops.length - 1;
  const bound = entryAt(before, at);
  if (bound >= limit) return undefined;
  const path: Path & { wide: number[]; narrow: number[] } = { wide: [], narrow: [], bound };
  for (const origin of layers.reverse()) {
    const came = entryAt(origin, at);
    const [one, next] = [entryAt(stops, came), entryAt(stops, at)];
    path.wide.unshift(next.a - one.a);
    path.narrow.unshift(next.b - one.b);
    at = came;
  }
  return path;
}

/** The corners of a path that are free to deviate: the center's and all but the outer ones. */
function cornersOfPath(
  center: number,
  { wide, narrow }: Pick<Path, 'wide' | 'narrow'>,
  end: ArcEnd,
): readonly ArcCorner[] {
  let [x, y] = [center, 0];
  return wide.map((w, index) => {
    const corner = arcCorner(x, y, end);
    x += w;
    y += entryAt(narrow, index);
    return corner;
  });
}

/** The middle of a stretch of t, infinite ends included. */
function halfway({ from, to, end }: Stretch): number {
  const spread = end.x + end.y;
  if (from === Number.NEGATIVE_INFINITY) return Math.min(to * 2, 0) - spread;
  if (to === Number.POSITIVE_INFINITY) return Math.max(from * 2, 0) + spread;
  return (from + to) / 2;
}

/** What differs by less than this many steps of the grid is alike: doubles hold no more. */
const ALIKE = 1e-9;

/** Every center and outer corner that the widths leave open. */
function* ends({
  rounds,
  finished,
  center,
  wide,
  narrow,
}: ArcProblem): Generator<[number, ArcEnd]> {
  for (let c = center.least; c <= center.most; c += 1) {
    const added = finished - c;
    const least = Math.max(rounds * wide.least, added - rounds * narrow.most);
    const most = Math.min(rounds * wide.most, added - rounds * narrow.least);
    // Only where the wide logs add more does the line bend toward the narrow corner.
    for (let a = Math.max(least, Math.floor(added / 2) + 1); a <= most; a += 1) {
      yield [c, { x: c + a, y: added - a }];
    }
  }
}

/** The best widths that deviate by less than a limit, if there are any. */
function searchBelow(problem: ArcProblem, start: number): ArcSolution | undefined {
  let best: ArcSolution | undefined;
  const limit = (): number => (best === undefined ? start : best.greatest - ALIKE);
  const queue = new Queue<Stretch>();
  const look = (stretch: Omit<Stretch, 'bound'>): void => {
    const path = boundingPath(problem, stretch, limit());
    if (path === undefined) return;
    const { center, end } = stretch;
    const corners = cornersOfPath(center, path, end);
    const own = bestMiddle(corners, end);
    if (own.greatest < limit()) {
      best = { ...own, center, end, wide: path.wide, narrow: path.narrow };
    }
    if (path.bound < limit()) queue.push({ ...stretch, bound: path.bound });
  };
  for (const [center, end] of ends(problem)) {
    // The circle has to come near the center's corner too.
    const [from, to] = middlesWithin(arcCorner(center, 0, end), limit(), end);
    look({ center, end, from, to });
  }
  for (let stretch = queue.pop(); stretch !== undefined; stretch = queue.pop()) {
    if (stretch.bound >= limit()) break;
    const middle = halfway(stretch);
    look({ ...stretch, to: middle });
    look({ ...stretch, from: middle });
  }
  return best;
}

/** The limits that are tried in turn, in steps of the grid: few corners lie near a circle. */
const LIMITS = [1 / 16, 1 / 4, 1, Number.POSITIVE_INFINITY];

/**
 * The widths whose corners lie nearest to a circle, by branch and bound: stretches of the circle's
 * middle are halved, the one with the lowest bound first, until no bound is below the best widths found.
 */
export function searchArc(problem: ArcProblem): ArcSolution | undefined {
  for (const limit of LIMITS) {
    const solution = searchBelow(problem, limit);
    if (solution !== undefined) return solution;
  }
  return undefined;
}
