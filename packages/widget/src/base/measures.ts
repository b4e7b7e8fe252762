import {
  EighthsError,
  fillSentence,
  formatLength,
  type Length,
  type LengthInput,
  length,
  type SentenceValue,
} from '@eighths/core';
import { type Numbers, numbersIn } from './numbers.js';
import { type Speech, spokenFraction, spokenMetric } from './spokenLength.js';

/** The measures an element takes and shows. */
export type Units = 'inches' | 'metric';

/** How an element reads and writes lengths: one for each of its units and languages. */
export interface Measures extends Numbers {
  readonly units: Units;
  /** A length as typed; a bare number is inches, or centimeters. */
  readonly read: (text: string) => Length;
  /** In figures, for the eye: `10½`, `26.7 cm`. */
  readonly figures: (value: LengthInput) => string;
  /** The same in a table, whose caption names the unit: `10½`, `26.7`. */
  readonly bare: (value: LengthInput) => string;
  /** In words, for the ear: speech engines misread fraction glyphs. */
  readonly spoken: (value: LengthInput) => string;
  /** In decimals, whatever the unit, which is not named: for lengths that hold roots. */
  readonly decimal: (value: LengthInput) => string;
  /** As it would be typed: `10 1/2`, `26.7`. */
  readonly typed: (value: LengthInput) => string;
  /** The step of the arrow keys and of the grid. */
  readonly step: Length;
  readonly locale: string;
  readonly speech: Speech;
}

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

/**
 * @param locale of the numbers
 * @param grid the step, as text; by default the finest line that most people cut to
 * @param speech the words that lengths are said in
 */
export function measuresFor(
  units: Units,
  locale: string,
  grid = '',
  speech: Speech = { language: 'en' },
): Measures {
  const numbers = numbersIn(locale);
  const { decimalSign: decimal } = numbers;
  const common = { ...numbers, units, step: stepFrom(grid, units), locale, speech };
  if (units === 'metric') {
    const metric = { unit: 'cm', locale } as const;
    const figures = (value: LengthInput) => formatLength(value, metric);
    const bare = (value: LengthInput) => figures(value).replace(/\s*cm$/, '');
    return {
      ...common,
      read: (text) => sewable(length(text, { unit: 'cm', decimal })),
      figures,
      bare,
      decimal: bare,
      spoken: (value) => spokenMetric(value, 'cm', speech),
      typed: (value) => bare(value).replace(/^≈ /, ''),
    };
  }
  return {
    ...common,
    read: (text) => sewable(length(text, { decimal })),
    figures: (value) => formatLength(value),
    bare: (value) => formatLength(value),
    decimal: (value) => formatLength(value, { style: 'decimal', locale }),
    spoken: (value) => spokenFraction(value, 'inches', speech),
    typed: (value) => formatLength(value, { style: 'ascii' }),
  };
}

/** How the values of a sentence are written. */
export interface ValueWriting {
  readonly write: (value: LengthInput) => string;
  readonly count: (value: number) => string;
  /** A word in the element's language; what it does not know stays. */
  readonly word: (text: string) => string;
  /** Two sides of a rectangle: `{width} by {height}`. */
  readonly by: string;
  /** Between the entries of a list. */
  readonly comma: string;
}

/** A value of a sentence, as this element writes it. */
export const valueWriter =
  ({ write, count, word, by, comma }: ValueWriting): ((value: SentenceValue) => string) =>
  (value) => {
    if (typeof value === 'string') return value.split(', ').map(word).join(comma);
    if (typeof value === 'number') return count(value);
    if (!('width' in value)) return write(value.toJSON());
    const width = write(value.width.toJSON());
    const height = write(value.height.toJSON());
    return width === height ? width : fillSentence(by, { width, height });
  };
