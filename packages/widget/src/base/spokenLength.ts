import { fillSentence, formatLength, type LengthInput, length } from '@eighths/core';
import type { Catalog } from '../messages/catalog.js';

/** Nobody says a finer fraction, or a root: it is moved to the ruler's finest line. */
const FINEST = 1000n;
const RULER = '1/64';

const INCHES_IN_A_YARD = 36;

/** In which words lengths are said; English ones are the core's. */
export interface Speech {
  readonly language: string;
  readonly catalog?: Catalog | undefined;
}

/**
 * Inches, or yards, in the words of a language. Fractions are exact; what nobody says as one is said
 * to the nearest 1/64 inch, as about that.
 */
export function spokenFraction(
  value: LengthInput,
  unit: 'inches' | 'yards',
  { catalog }: Speech,
): string {
  const exact = length(value);
  const fraction = exact.toFraction();
  const sayable = fraction !== undefined && fraction.d <= FINEST;
  const near = sayable ? exact : exact.toGrid(RULER, 'nearest');
  const said = (near.sign() < 0 ? near.negated() : near)
    .dividedBy(unit === 'yards' ? INCHES_IN_A_YARD : 1)
    .toFraction();
  // Only irrational lengths have no fraction, and those were moved to a grid.
  if (catalog === undefined || said === undefined) {
    const grid = sayable ? {} : { grid: RULER };
    return formatLength(exact, { ...grid, unit: unit === 'yards' ? 'yd' : 'in', style: 'spoken' });
  }
  const { fraction: say, minus, about } = catalog.spoken;
  const spoken = say(said, unit);
  const signed = near.sign() < 0 ? fillSentence(minus, { length: spoken }) : spoken;
  return sayable ? signed : fillSentence(about, { length: signed });
}

/** Centimeters or meters, as that is named in the language of the words. */
export function spokenMetric(
  value: LengthInput,
  unit: 'cm' | 'm',
  { language, catalog }: Speech,
): string {
  const grid = unit === 'm' ? ({ grid: '1 cm', mode: 'up' } as const) : {};
  const said = formatLength(value, { ...grid, unit, style: 'spoken', locale: language });
  return catalog !== undefined && said.startsWith('≈ ')
    ? fillSentence(catalog.spoken.about, { length: said.slice(2) })
    : said;
}
