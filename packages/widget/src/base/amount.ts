import { formatLength, type Length, type LengthInput, length } from '@eighths/core';
import type { Measures } from './measures.js';
import { spokenFraction, spokenMetric } from './spokenLength.js';

/** The eighth of a yard, in inches: the step that people name yards in. */
const YARD_STEP = '4 1/2';
const YARD = '1 yd';
/** What has a larger denominator was not bought in yards. */
const FINEST_YARD = 64n;

/** What the shop measures in, by what it cuts in: no part of a yard is whole centimeters. */
export const shopUnit = (increment: Length): 'yd' | 'm' =>
  increment.isOnGrid('1 cm') ? 'm' : 'yd';

/** An amount of fabric for the eye and for the ear. */
export interface Amount {
  readonly figures: string;
  readonly spoken: string;
}

/**
 * An amount of fabric: yards as fractions, meters in decimals, never less than it is. Yards that no
 * shop cuts are moved up to the next eighth.
 */
export function amountOf(
  value: LengthInput,
  unit: 'yd' | 'm',
  { locale, speech }: Measures,
): Amount {
  if (unit === 'm') {
    const figures = formatLength(value, { unit, grid: '1 cm', mode: 'up', locale });
    return { figures, spoken: spokenMetric(value, unit, speech) };
  }
  const yards = length(value).dividedBy(length(YARD)).toFraction();
  const isCut = yards !== undefined && yards.d <= FINEST_YARD;
  const shown = isCut ? length(value) : length(value).toGrid(YARD_STEP, 'up');
  const mark = isCut ? '' : '≈ ';
  return {
    figures: mark + formatLength(shown, { unit }),
    spoken: spokenFraction(shown, 'yards', speech),
  };
}
