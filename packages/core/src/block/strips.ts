import { fail } from '../errors/error.js';
import { type Length, type LengthInput, length } from '../length/length.js';
import { checkFields, choiceField, lengthField } from '../plan/field.js';
import { type ByRound, eachRound } from './perRound.js';
import { tooNarrow } from './refusals.js';
import type { LogCabinSpec, LogKind, PerRound, TrimAfter } from './spec.js';
import type { FinishedWidths } from './widths.js';

/** The strip that a log is sewn from. */
export interface Strip {
  /** The width to cut: on the grid. */
  readonly cut: Length;
  /** What `cut` was rounded up from. */
  readonly exact: Length;
}

export interface Strips {
  readonly trimAfter: TrimAfter;
  readonly stripOf: (kind: LogKind, index: number) => Strip;
}

const TRIM_TIMES: readonly TrimAfter[] = ['round', 'log', 'never'];

const MILLIMETER = length('1 mm');
const FIVE_MILLIMETERS = length('5 mm');
const QUARTER_INCH = length('1/4');

/**
 * What strips are rounded up to where nobody says how wide they are cut, and what they are cut beyond
 * the exact width: a quarter inch, or 5 mm on a grid of millimeters.
 */
const coarseStep = (grid: Length): Length =>
  grid.isOnGrid(MILLIMETER) ? FIVE_MILLIMETERS : QUARTER_INCH;

interface Trim {
  readonly after: TrimAfter;
  readonly oversize: Length;
}

function readTrim(spec: LogCabinSpec, usualOversize: Length): Trim {
  const none = { after: 'never', oversize: length(0) } as const;
  if (spec.trim === undefined) {
    return spec.strips === undefined ? none : { after: 'round', oversize: usualOversize };
  }
  checkFields(spec.trim, 'trim', ['after', 'oversize']);
  const { after: afterInput = 'round', oversize } = spec.trim;
  const after = choiceField(afterInput, 'trim.after', TRIM_TIMES);
  if (oversize === undefined) {
    return after === 'never' ? none : { after, oversize: usualOversize };
  }
  if (spec.strips !== undefined) {
    fail(
      'conflicting-fields',
      'trim.oversize',
      { one: 'strips', other: 'oversize' },
      'The strips’ widths already say how much is trimmed away. Leave “{one}” or “{other}” out.',
    );
  }
  if (after === 'never') {
    fail(
      'conflicting-fields',
      'trim.oversize',
      { one: 'never', other: 'oversize' },
      'A block that is never trimmed has no oversize. Trim it after each round or log, or leave “{other}” out.',
    );
  }
  return { after, oversize: lengthField(oversize, 'trim.oversize', 'zero or more') };
}

type GivenStrips = Partial<Readonly<Record<LogKind, PerRound<LengthInput>>>>;

/** The widths that the spec gives for strips, by kind. */
function readGiven(
  spec: LogCabinSpec,
): Partial<Readonly<Record<LogKind, ByRound<[Length, string]>>>> {
  const { strips: given = {} }: { strips?: GivenStrips } = spec;
  const kinds: readonly LogKind[] = spec.log === undefined ? ['wide', 'narrow'] : ['log'];
  checkFields(given, 'strips', kinds);
  const byKind: Partial<Record<LogKind, ByRound<[Length, string]>>> = {};
  for (const kind of kinds) {
    const input = given[kind];
    if (input === undefined) continue;
    byKind[kind] = eachRound(input, `strips.${kind}`, spec.rounds, (width, field) => [
      lengthField(width, field),
      field,
    ]);
  }
  return byKind;
}

function checkStrip(strip: Length, log: Length, needed: Length, trim: Trim, field: string): void {
  if (strip.compareTo(needed) < 0) tooNarrow(field, log, strip, needed);
  if (trim.after === 'never' && !strip.equals(needed)) {
    fail(
      'strip-not-exact',
      field,
      { strip, exact: needed },
      'A block that is never trimmed needs strips cut exactly {exact}, not {strip}. Trim it after each round, or cut exact.',
    );
  }
}

/**
 * How wide the strips of each kind are cut. A log that finishes `f` shows `W − 2·seam` of a strip cut
 * `W`, so it needs at least `f + 2·seam`; what the strip is wider is trimmed away.
 *
 * @throws EighthsError `strip-too-narrow`, `strip-not-exact`, `conflicting-fields` or of a length
 */
export function readStrips(
  spec: LogCabinSpec,
  widths: FinishedWidths,
  seam: Length,
  grid: Length,
): Strips {
  const step = coarseStep(grid);
  const trim = readTrim(spec, step);
  const given = readGiven(spec);
  const allowances = seam.times(2);

  const exactWidth = (kind: LogKind, index: number): Length => {
    const log = widths(kind, index);
    const needed = log.plus(allowances);
    const [strip, field] = given[kind]?.(index) ?? [];
    if (strip === undefined || field === undefined) {
      return trim.after === 'never' ? needed : needed.plus(trim.oversize).toGrid(step, 'up');
    }
    checkStrip(strip, log, needed, trim, field);
    return strip;
  };
  return {
    trimAfter: trim.after,
    stripOf: (kind, index) => {
      const exact = exactWidth(kind, index);
      return { exact, cut: exact.toGrid(grid, 'up') };
    },
  };
}
