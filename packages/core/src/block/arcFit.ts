import { fail } from '../errors/error.js';
import { type Length, type LengthInput, length, squareRoot } from '../length/length.js';
import { absolute, longerOf } from '../length/longer.js';
import { checkFields, choiceField, countField, missing, rationalField } from '../plan/field.js';
import { arcCorner } from './arcGeometry.js';
import { type ArcProblem, type ArcSolution, searchArc } from './arcSearch.js';
import { readEnds } from './fitProblem.js';
import type { FitLimits } from './fitRequest.js';
import { stepsDown, stepsUp } from './fitUnits.js';
import { checkSteps, tooNarrow } from './refusals.js';
import type { CurvedLogCabinSpec } from './spec.js';

/** A curved block whose logs may differ in width from round to round. */
export interface ArcRequest {
  /** From 1 to 12. */
  readonly rounds: number;
  /** The block's finished size. */
  readonly finished: LengthInput;
  /** The center's finished size, or limits of it. */
  readonly center: FitLimits;
  /** The cut widths of the strips, which all rounds are sewn from. */
  readonly strips?: { readonly wide?: LengthInput; readonly narrow?: LengthInput };
  /** Limits of the wide logs; left out: from two seam allowances to what the strip can show. */
  readonly wide?: FitLimits;
  /** Limits of the narrow logs, likewise. */
  readonly narrow?: FitLimits;
  /** The least that trimming has to take off each log; default 0. */
  readonly leastTrim?: LengthInput;
  /** Default 1/4. */
  readonly seam?: LengthInput;
  /** The step that all widths are multiples of; default 1/8. */
  readonly grid?: LengthInput;
  /** Default `spiral`. */
  readonly layout?: 'spiral' | 'courthouse';
  /** The pair that each round begins with; default `wide`. */
  readonly first?: 'wide' | 'narrow';
}

/** A pair of corners where wide meets narrow, and how far they lie from the circle. */
export interface ArcCornerFit {
  /** The round whose corners these are; 0 is the center. */
  readonly round: number;
  /**
   * (d² − r²) / 2r, exactly: more than 0 outside the circle. d is the corner's distance from the
   * circle's middle, r the radius; for corners near the circle this is all but d − r.
   */
  readonly deviation: Length;
}

/** The widths whose color line is nearest to an arc. */
export interface ArcFit {
  readonly center: Length;
  /** The finished widths of the wide logs, round by round. */
  readonly wide: readonly Length[];
  readonly narrow: readonly Length[];
  /** The circle's radius; left out where the nearest of all is a straight line. */
  readonly radius?: Length;
  /** From the center out to the block's own corners, which lie on the circle. */
  readonly corners: readonly ArcCornerFit[];
  /** The greatest of the deviations, without its sign. */
  readonly greatestDeviation: Length;
  /** What trimming takes off each log of a round, where strips are given. */
  readonly trimsOff: {
    readonly wide?: readonly Length[];
    readonly narrow?: readonly Length[];
  };
  /** Ready for `logCabin`. */
  readonly spec: CurvedLogCabinSpec;
}

const FIELDS: readonly (keyof ArcRequest)[] = [
  'rounds',
  'finished',
  'center',
  'strips',
  'wide',
  'narrow',
  'leastTrim',
  'seam',
  'grid',
  'layout',
  'first',
];
const MOST_ROUNDS = 12;
/** The most steps of the grid that an arc's block may have: the search is over the corners between. */
const MOST_STEPS = 512;

interface ReadRequest {
  readonly problem: ArcProblem;
  readonly grid: Length;
  readonly seam: Length;
  readonly strips: { readonly wide?: Length; readonly narrow?: Length };
  readonly layout: 'spiral' | 'courthouse';
  readonly first: 'wide' | 'narrow';
}

function readArc(request: ArcRequest): ReadRequest {
  checkFields(request, '', FIELDS);
  const { grid: gridInput = '1/8', seam: seamInput = '1/4', leastTrim: trimInput = 0 } = request;
  const { layout = 'spiral', first = 'wide', strips: stripInputs = {} } = request;
  const grid = rationalField(gridInput, 'grid');
  const seam = rationalField(seamInput, 'seam', 'zero or more');
  const taken = seam.times(2).plus(rationalField(trimInput, 'leastTrim', 'zero or more'));
  const finished = rationalField(request.finished ?? missing('finished'), 'finished');
  checkSteps(finished, grid, MOST_STEPS);
  checkFields(stripInputs, 'strips', ['wide', 'narrow']);
  const strips: { wide?: Length; narrow?: Length } = {};

  const widths = (kind: 'wide' | 'narrow'): ArcProblem['wide'] => {
    const { [kind]: stripInput } = stripInputs;
    const { [kind]: limits = {} } = request;
    const ends = readEnds(limits, kind);
    const least = Math.max(1, stepsUp(ends.least ?? seam.times(2), grid));
    if (stripInput === undefined) {
      const { most: given = missing(`strips.${kind}`) } = ends;
      return { least, most: stepsDown(given, grid) };
    }
    const field = `strips.${kind}`;
    const strip = rationalField(stripInput, field);
    strips[kind] = strip;
    const shown = stepsDown(strip.minus(taken), grid);
    if (shown < least) {
      const log = grid.times(least);
      tooNarrow(field, log, strip, log.plus(taken));
    }
    return { least, most: Math.min(shown, stepsDown(ends.most ?? strip, grid)) };
  };
  const wide = widths('wide');
  const narrow = widths('narrow');
  const center = readEnds(request.center ?? missing('center'), 'center');
  const steps = stepsDown(finished, grid);
  return {
    problem: {
      rounds: countField(request.rounds ?? missing('rounds'), 'rounds', 1, MOST_ROUNDS),
      // A block off the grid cannot be made of parts on it.
      finished: finished.isOnGrid(grid) ? steps : 0,
      center: {
        least: Math.max(1, stepsUp(center.least ?? grid, grid)),
        most: Math.min(steps, stepsDown(center.most ?? finished, grid)),
      },
      wide,
      narrow,
    },
    grid,
    seam,
    strips,
    layout: choiceField(layout, 'layout', ['spiral', 'courthouse']),
    first: choiceField(first, 'first', ['wide', 'narrow']),
  };
}

function refuseArc({ problem, grid }: ReadRequest): never {
  const { rounds, center, wide, narrow } = problem;
  const least = grid.times(center.least + rounds * (wide.least + narrow.least));
  const most = grid.times(center.most + rounds * (wide.most + narrow.most));
  return fail(
    'no-arc',
    'finished',
    { least, most, grid },
    'No widths within these limits make a block of this size that curves: they add up to {least} at least and {most} at most, on a grid of {grid}, and the wide logs must add more than the narrow ones. Change the size, the center, the rounds or the limits.',
  );
}

/** The exact deviations of a solution, in inches. */
function measure(
  { center, end, wide, narrow, middle }: ArcSolution,
  grid: Length,
): { readonly radius?: Length; readonly corners: readonly ArcCornerFit[] } {
  const t = middle && length(middle.over).dividedBy(middle.under);
  const squared = t
    ?.minus(end.x)
    .times(t.minus(end.x))
    .plus(t.plus(end.y).times(t.plus(end.y)));
  const radius = squared && squareRoot(squared);
  const corners: ArcCornerFit[] = [];
  let [x, y] = [center, 0];
  for (let round = 0; round <= wide.length; round += 1) {
    const { power, beyond } = arcCorner(x, y, end);
    const steps =
      t === undefined || squared === undefined || radius === undefined
        ? squareRoot(2).times(beyond).dividedBy(-2)
        : radius.times(length(power).minus(t.times(2 * beyond))).dividedBy(squared.times(2));
    corners.push({ round, deviation: steps.times(grid) });
    x += wide[round] ?? 0;
    y += narrow[round] ?? 0;
  }
  return { ...(radius && { radius: radius.times(grid) }), corners };
}

/**
 * The finished widths of each round for which the line between the two halves of color is as near to
 * an arc as the grid allows: the corners where wide meets narrow, the center's included, lie as near
 * as possible to a circle through the block's two outer corners where its wide and narrow sides meet.
 * The radius is free; what is least is the greatest |d² − r²| / 2r. The search is exhaustive (branch
 * and bound), decided in doubles to a billionth of a step of the grid; the figures are exact.
 *
 * The strips stay the same width in all rounds; what trimming takes off varies. The widths add up
 * exactly, and the wide logs of all rounds to more than the narrow ones, so that the line curves
 * toward the narrow corner.
 *
 * @throws EighthsError `no-arc` where no widths add up, `strip-too-narrow`, `limits-cross`,
 *   `missing-field`, `out-of-range` and those of single fields
 * @example
 * const strips = { wide: 2, narrow: '1 1/2' };
 * const arc = fitArc({ rounds: 3, finished: 8, center: 2, strips });
 * arc.wide; // ["1 1/8","1 1/8","1 3/8"]
 * arc.greatestDeviation.toNumber() < 0.003; // true
 */
export function fitArc(request: ArcRequest): ArcFit {
  const read = readArc(request);
  const { problem, grid, seam, strips, layout, first } = read;
  const solution = searchArc(problem) ?? refuseArc(read);
  const inches = (steps: readonly number[]): readonly Length[] =>
    steps.map((each) => grid.times(each));
  const [wide, narrow] = [inches(solution.wide), inches(solution.narrow)];
  const { radius, corners } = measure(solution, grid);
  const greatestDeviation = corners.map(({ deviation }) => absolute(deviation)).reduce(longerOf);
  const off = (logs: readonly Length[], strip: Length): readonly Length[] =>
    logs.map((log) => strip.minus(log).minus(seam.times(2)));
  const center = grid.times(solution.center);
  return {
    center,
    wide,
    narrow,
    ...(radius && { radius }),
    corners,
    greatestDeviation,
    trimsOff: {
      ...(strips.wide && { wide: off(wide, strips.wide) }),
      ...(strips.narrow && { narrow: off(narrow, strips.narrow) }),
    },
    spec: {
      rounds: problem.rounds,
      layout,
      first,
      center,
      wide,
      narrow,
      seam,
      grid,
      ...((strips.wide ?? strips.narrow) && { strips }),
    },
  };
}
