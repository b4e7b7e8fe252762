import {
  EighthsError,
  fillSentence,
  formatLength,
  type Length,
  type LengthInput,
  length,
  type SentenceValue,
} from '@eighths/core';

/** The measures an element takes and shows. */
export type Units = 'inches' | 'metric';

/** How an element reads and writes lengths: one for each of its units and languages. */
export interface Measures {
  readonly units: Units;
  /** A length as typed; a bare number is inches, or centimeters. */
  readonly read: (text: string) => Length;
  /** In figures, for the eye: `10½`, `26.7 cm`. */
  readonly figures: (value: LengthInput) => string;
  /** The same in a table, whose caption names the unit: `10½`, `26.7`. */
  readonly bare: (value: LengthInput) => string;
  /** In words, for the ear: speech engines misread fraction glyphs. */
  readonly spoken: (value: LengthInput) => string;
  /** As it would be typed: `10 1/2`, `26.7`. */
  readonly typed: (value: LengthInput) => string;
  /** The step of the arrow keys and of the grid. */
  readonly step: Length;
}

const decimalSign = (locale: string): '.' | ',' =>
  new Intl.NumberFormat(locale).format(0.5).includes(',') ? ',' : '.';

/** In inches: nothing that is sewn is longer, and beyond this a drawing's coordinates lose their sense. */
const LONGEST = 10_000;

/** @throws EighthsError `out-of-range` */
function sewable(value: Length): Length {
  const most = length(LONGEST);
  if (value.compareTo(most) <= 0 && value.compareTo(most.negated()) >= 0) return value;
  throw new EighthsError(
    'out-of-range',
    'length',
    { value, least: length(0), most },
    'A length of at most {most} is needed here.',
  );
}

/** A grid that a page gives as text, or the finest line that most people cut to. */
function stepFrom(grid: string, units: Units): Length {
  const usual = length(units === 'metric' ? '1 mm' : '1/8');
  if (grid.trim() === '') return usual;
  try {
    const step = length(grid, { unit: units === 'metric' ? 'cm' : 'in' });
    if (step.sign() <= 0 || step.toFraction() === undefined) return usual;
    // Half millimeters are measured, but nobody steps by them.
    return units === 'metric' && step.compareTo(usual) < 0 ? usual : step;
  } catch {
    // The plan says what is wrong with it; until then the steps are the usual ones.
    return usual;
  }
}

export function measuresFor(units: Units, locale: string, grid = ''): Measures {
  const step = stepFrom(grid, units);
  const decimal = decimalSign(locale);
  if (units === 'metric') {
    const metric = { unit: 'cm', locale } as const;
    return {
      units,
      read: (text) => sewable(length(text, { unit: 'cm', decimal })),
      figures: (value) => formatLength(value, metric),
      bare: (value) => formatLength(value, metric).replace(/\s*cm$/, ''),
      spoken: (value) => formatLength(value, { ...metric, style: 'spoken' }),
      typed: (value) => formatLength(value, metric).replace(/^≈ |\s*cm$/g, ''),
      step,
    };
  }
  return {
    units,
    read: (text) => sewable(length(text, { decimal })),
    figures: (value) => formatLength(value),
    bare: (value) => formatLength(value),
    spoken: (value) => formatLength(value, { style: 'spoken', locale }),
    typed: (value) => formatLength(value, { style: 'ascii' }),
    step,
  };
}

/** A value of a sentence, as this element writes it. */
export const valueWriter =
  (
    write: (value: LengthInput) => string,
    word: (text: string) => string,
    by: string,
  ): ((value: SentenceValue) => string) =>
  (value) => {
    if (typeof value === 'string') return value.split(', ').map(word).join(', ');
    if (typeof value === 'number') return String(value);
    if (!('width' in value)) return write(value.toJSON());
    const width = write(value.width.toJSON());
    const height = write(value.height.toJSON());
    return width === height ? width : fillSentence(by, { width, height });
  };
