import { fail } from '../errors/error.js';
import type { Length, LengthInput } from '../length/length.js';
import { checkFields, choiceField, countField, missing, rationalField } from '../plan/field.js';
import { LAYOUTS } from './arrangement.js';
import type { FitKind, FitLimits, LogCabinFitRequest } from './fitRequest.js';
import { commonUnit, type Fraction, fractionField, stepsDown, stepsUp } from './fitUnits.js';
import { checkSteps, tooNarrow } from './refusals.js';
import type { Layout, LogKind } from './spec.js';

/** Whole steps of the grid, both ends included. */
export interface StepRange {
  readonly least: number;
  readonly most: number;
}

/** What is limited: a kind of log or the center. */
export type FitPart = LogKind | 'center';

/** A request with its defaults filled in, in whole steps of the grid. */
export interface FitProblem {
  readonly rounds: number;
  readonly layout: Layout;
  readonly first: 'wide' | 'narrow';
  readonly kinds: readonly FitKind[];
  readonly grid: Length;
  readonly seam: Length;
  readonly leastTrim: Length;
  readonly strips: Partial<Readonly<Record<LogKind, Length>>>;
  readonly finished: StepRange;
  /** As asked for. */
  readonly limits: Readonly<Record<FitPart, StepRange>>;
  /** The most that the strips on hand can show. */
  readonly shown: Readonly<Record<LogKind, number>>;
  readonly ratio: { readonly least?: Fraction; readonly most?: Fraction };
  readonly wish: { readonly ratio?: Fraction; readonly center?: Fraction };
  /** What the seam, the grid and the strips are whole multiples of, and how many a step has. */
  readonly unit: Length;
  readonly unitsInStep: number;
  readonly most: number;
}

/** The most steps of the grid that a finished size may have. */
export const MOST_STEPS = 4096;
export const MOST_ROUNDS = 50;
const MOST_FITS = 10_000;
const USUAL_FITS = 100;

const FIT_FIELDS: readonly (keyof LogCabinFitRequest)[] = [
  'rounds',
  'finished',
  'kind',
  'layout',
  'first',
  'grid',
  'seam',
  'center',
  'log',
  'wide',
  'narrow',
  'ratio',
  'wish',
  'strips',
  'leastTrim',
  'most',
];

export const LOG_KINDS: readonly LogKind[] = ['log', 'wide', 'narrow'];

interface Ends {
  readonly least?: Length;
  readonly most?: Length;
}

const hasEnds = (
  input: FitLimits,
): input is { readonly least?: LengthInput; readonly most?: LengthInput } =>
  typeof input === 'object' && input !== null && !('s' in input) && !('toJSON' in input);

/** @throws EighthsError `limits-cross` where the least is more than the most, or of a length */
export function readEnds(input: FitLimits, field: string): Ends {
  if (!hasEnds(input)) {
    const value = rationalField(input, field);
    return { least: value, most: value };
  }
  checkFields(input, field, ['least', 'most']);
  const end = (name: 'least' | 'most'): Length | undefined => {
    const { [name]: value } = input;
    const path = `${field}.${name}`;
    return value === undefined ? undefined : rationalField(value, path);
  };
  const [least, most] = [end('least'), end('most')];
  if (least !== undefined && most !== undefined && least.compareTo(most) > 0) {
    fail(
      'limits-cross',
      field,
      { least, most },
      'The least is {least} and the most {most}: nothing lies between them. Exchange them, or leave one out.',
    );
  }
  return { ...(least && { least }), ...(most && { most }) };
}

/** @throws EighthsError `missing-field`, `out-of-range` or of a length */
function readFinished(request: LogCabinFitRequest, grid: Length): StepRange {
  const { finished = missing('finished') } = request;
  const ends = readEnds(finished, 'finished');
  const { least = grid, most = missing('finished.most') } = ends;
  checkSteps(most, grid, MOST_STEPS);
  return { least: stepsUp(least, grid), most: stepsDown(most, grid) };
}

function readPart(input: FitLimits | undefined, field: FitPart, grid: Length): StepRange {
  const { least, most } = input === undefined ? {} : readEnds(input, field);
  return {
    least: least === undefined ? 1 : stepsUp(least, grid),
    most: most === undefined ? MOST_STEPS : stepsDown(most, grid),
  };
}

function readKinds(request: LogCabinFitRequest, layout: Layout): readonly FitKind[] {
  const { kind, log, wide, narrow, ratio, wish, strips } = request;
  const speaksOfPlain = (log ?? strips?.log) !== undefined;
  const speaksOfCurved =
    (wide ?? narrow ?? ratio ?? wish?.ratio ?? strips?.wide ?? strips?.narrow) !== undefined;
  const usual =
    layout === 'quarter' || (speaksOfPlain && !speaksOfCurved)
      ? 'plain'
      : speaksOfCurved && !speaksOfPlain
        ? 'curved'
        : 'any';
  const chosen = choiceField(kind === undefined ? usual : kind, 'kind', ['plain', 'curved', 'any']);
  if (layout === 'quarter' && chosen === 'curved') {
    fail(
      'conflicting-fields',
      'kind',
      { one: 'quarter', other: 'curved' },
      'A {one} log cabin has logs on two sides only, so none of it is {other}. Choose another layout, or plain.',
    );
  }
  if (layout === 'quarter') return ['plain'];
  return chosen === 'any' ? ['plain', 'curved'] : [chosen];
}

/** The most steps that a log can show of a strip, with the least trim taken off. */
function readShown(strip: Length | undefined, field: string, grid: Length, taken: Length): number {
  if (strip === undefined) return MOST_STEPS;
  const shown = stepsDown(strip.minus(taken), grid);
  return shown < 1 ? tooNarrow(field, grid, strip, taken.plus(grid)) : shown;
}

function checkWideOverNarrow(
  { wide, narrow }: FitProblem['limits'],
  kinds: readonly FitKind[],
  grid: Length,
): void {
  if (!kinds.includes('curved') || wide.most > narrow.least) return;
  const [most, least] = [grid.times(wide.most), grid.times(narrow.least)];
  fail(
    'limits-cross',
    'wide',
    { least, most },
    'Wide logs may be {most} at most and narrow ones {least} at least: no wide log would be wider than a narrow one.',
  );
}

/** @throws EighthsError with the path of the field it is about */
export function readFitProblem(request: LogCabinFitRequest): FitProblem {
  checkFields(request, '', FIT_FIELDS);
  const { grid: gridInput = '1/8', seam: seamInput = '1/4', leastTrim: trimInput = 0 } = request;
  const { rounds = missing('rounds'), layout: layoutInput = 'spiral', first = 'wide' } = request;
  const { wish = {}, strips: stripInputs = {}, most = USUAL_FITS } = request;
  const grid = rationalField(gridInput, 'grid');
  const seam = rationalField(seamInput, 'seam', 'zero or more');
  const leastTrim = rationalField(trimInput, 'leastTrim', 'zero or more');
  const layout = choiceField(layoutInput, 'layout', LAYOUTS);
  const kinds = readKinds(request, layout);
  checkFields(wish, 'wish', ['ratio', 'center']);
  checkFields(stripInputs, 'strips', LOG_KINDS);

  const strips: Partial<Record<LogKind, Length>> = {};
  const shown: Record<LogKind, number> = { log: 0, wide: 0, narrow: 0 };
  for (const kind of LOG_KINDS) {
    const { [kind]: input } = stripInputs;
    const field = `strips.${kind}`;
    if (input !== undefined) strips[kind] = rationalField(input, field);
    shown[kind] = readShown(strips[kind], field, grid, seam.times(2).plus(leastTrim));
  }
  const limits = {
    center: readPart(request.center, 'center', grid),
    log: readPart(request.log, 'log', grid),
    wide: readPart(request.wide, 'wide', grid),
    narrow: readPart(request.narrow, 'narrow', grid),
  };
  checkWideOverNarrow(limits, kinds, grid);
  const ratio = request.ratio === undefined ? {} : readEnds(request.ratio, 'ratio');
  const unit = commonUnit(grid, seam, ...Object.values(strips));
  return {
    rounds: countField(rounds, 'rounds', 1, MOST_ROUNDS),
    layout,
    first: choiceField(first, 'first', ['wide', 'narrow']),
    kinds,
    grid,
    seam,
    leastTrim,
    strips,
    finished: readFinished(request, grid),
    limits,
    shown,
    ratio: {
      ...(ratio.least && { least: fractionField(ratio.least, 'ratio') }),
      ...(ratio.most && { most: fractionField(ratio.most, 'ratio') }),
    },
    wish: {
      ...(wish.ratio !== undefined && { ratio: fractionField(wish.ratio, 'wish.ratio') }),
      ...(wish.center !== undefined && {
        center: fractionField(
          rationalField(wish.center, 'wish.center').dividedBy(grid),
          'wish.center',
        ),
      }),
    },
    unit,
    unitsInStep: stepsDown(grid, unit),
    most: countField(most, 'most', 1, MOST_FITS),
  };
}
