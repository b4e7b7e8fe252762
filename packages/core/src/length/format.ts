import { mixedText } from './exactText.js';
import {
  type FractionInput,
  type Length,
  type LengthInput,
  length,
  type Rounding,
} from './length.js';
import { spokenText, type UnitWords } from './spoken.js';

/** The unit a length is written in; `ft-in` is feet and inches. */
export type WrittenUnit = 'in' | 'ft-in' | 'yd' | 'mm' | 'cm' | 'm';

/** How a length is written. */
export interface FormatOptions {
  /** Default `in`. */
  readonly unit?: WrittenUnit;
  /**
   * The step that the written value is a multiple of, as a length (`1/8`, `1 mm`). Left out, a
   * fraction of inches, feet or yards is written exactly; other values to 1/64 inch or, as decimals,
   * to four places of the unit (two of a centimeter or meter, one of a millimeter).
   */
  readonly grid?: LengthInput;
  /** Which way a value between two steps is moved; default `nearest`, ties up. */
  readonly mode?: Rounding;
  /**
   * `unicode` (`10½`, the default), `ascii` (`10 1/2`), `decimal` (`10.5`) or `spoken` (`10 and a
   * half inches`). Metric units are written as decimals in each of them.
   */
  readonly style?: 'unicode' | 'ascii' | 'decimal' | 'spoken';
  /** A BCP 47 tag for the decimal sign, and for a spoken unit; default `en`. */
  readonly locale?: string;
  /**
   * What is said of a value that had to be rounded: `mark` (default) puts ≈ before it (`about`, when
   * spoken), `exact` puts the exact inches behind it in parentheses.
   */
  readonly rounded?: 'mark' | 'exact';
}

type Metric = 'mm' | 'cm' | 'm';

const oneOf: Readonly<Record<WrittenUnit, Length>> = {
  in: length(1),
  'ft-in': length(1),
  yd: length(36),
  mm: length('1 mm'),
  cm: length('1 cm'),
  m: length('1 m'),
};

const isMetric = (unit: WrittenUnit): unit is Metric => unit in metricPlaces;

const metricPlaces: Readonly<Record<Metric, number>> = { mm: 1, cm: 2, m: 2 };
const DECIMAL_PLACES = 4;
const FINEST_INCH = length('1/64');

const words: Readonly<Record<WrittenUnit, UnitWords>> = {
  in: { one: 'inch', several: 'inches', article: 'an' },
  'ft-in': { one: 'inch', several: 'inches', article: 'an' },
  yd: { one: 'yard', several: 'yards', article: 'a' },
  mm: { one: 'millimeter', several: 'millimeters', article: 'a' },
  cm: { one: 'centimeter', several: 'centimeters', article: 'a' },
  m: { one: 'meter', several: 'meters', article: 'a' },
};

/** Fractions that Unicode has a glyph for, and that people at a cutting table meet. */
const GLYPHS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

function unicodeText(numerator: bigint, denominator: bigint): string {
  const text = mixedText(numerator, denominator);
  const [first = '', second] = text.split(' ');
  const part = second ?? first;
  if (!part.includes('/')) return text;
  const glyph = GLYPHS[part];
  const whole = second === undefined ? '' : first;
  if (glyph !== undefined) return `${whole}${glyph}`;
  // A no-break space: without it 10 13⁄16 reads as 1013⁄16.
  return `${whole}${whole === '' ? '' : '\u00a0'}${part.replace('/', '⁄')}`;
}

function decimalSign(locale: string): string {
  const parts = new Intl.NumberFormat(locale).formatToParts(0.5);
  return parts.find(({ type }) => type === 'decimal')?.value ?? '.';
}

/** The most decimal places that an exact decimal may take before it is rounded. */
const EXACT_PLACES = 6;

function decimalText({ n, d }: FractionInput, locale: string): string {
  let places = 0;
  let power = 1n;
  while ((n * power) % d !== 0n && places < EXACT_PLACES) {
    power *= 10n;
    places += 1;
  }
  const digits = ((n * power) / d).toString().padStart(places + 1, '0');
  if (places === 0) return digits;
  return `${digits.slice(0, -places)}${decimalSign(locale)}${digits.slice(-places)}`;
}

const stepFor = (unit: WrittenUnit, decimal: boolean): Length => {
  const places = isMetric(unit) ? metricPlaces[unit] : DECIMAL_PLACES;
  return decimal ? oneOf[unit].dividedBy(10n ** BigInt(places)) : FINEST_INCH;
};

function isShortDecimal({ d }: FractionInput): boolean {
  return 10n ** BigInt(EXACT_PLACES) % d === 0n;
}

/** The value as it will be shown: itself where it can be written exactly, else a multiple of a step. */
function shownValue(
  exact: Length,
  unit: WrittenUnit,
  decimal: boolean,
  options: FormatOptions,
): Length {
  const mode = options.mode ?? 'nearest';
  if (options.grid !== undefined) return exact.toGrid(options.grid, mode);
  const fraction = exact.dividedBy(oneOf[unit]).toFraction();
  const writable = fraction !== undefined && (!decimal || isShortDecimal(fraction));
  return writable ? exact : exact.toGrid(stepFor(unit, decimal), mode);
}

/**
 * A length in writing. Rounded at most once, to `grid`, in the direction of `mode`; a rounded value
 * never passes for an exact one. Inches stand bare, as `length()` reads them; other units are named.
 *
 * @throws EighthsError `length-syntax`, or `length-step` for a grid that is none.
 * @example
 * formatLength('10 1/2'); // '10½'
 * formatLength('10 1/2', { style: 'spoken' }); // '10 and a half inches'
 * formatLength('10 1/2', { unit: 'cm' }); // '26.67 cm'
 * formatLength(squareRoot(2).times(9), { grid: '1/8', mode: 'up' }); // '≈ 12¾'
 */
export function formatLength(input: LengthInput, options: FormatOptions = {}): string {
  const unit = options.unit ?? 'in';
  const style = options.style ?? 'unicode';
  const locale = options.locale ?? 'en';
  const decimal =
    isMetric(unit) || style === 'decimal' || (style === 'spoken' && !locale.startsWith('en'));
  const exact = length(input);
  const shown = shownValue(exact, unit, decimal, options);
  const text = written(shown, unit, style, locale, decimal);
  if (shown.equals(exact)) return text;
  if (options.rounded === 'exact') return `${text} (exactly ${exact})`;
  return `${style === 'spoken' ? 'about' : '≈'} ${text}`;
}

function written(
  shown: Length,
  unit: WrittenUnit,
  style: NonNullable<FormatOptions['style']>,
  locale: string,
  decimal: boolean,
): string {
  const minus = shown.sign() < 0 ? (style === 'spoken' ? 'minus ' : '-') : '';
  const size = shown.sign() < 0 ? shown.negated() : shown;
  return minus + unsigned(size, unit, style, locale, decimal);
}

/** Feet as a whole number, and the inches over. */
function feetAndInches(size: Length): { feet: Length; inches: Length } {
  const feet = size.dividedBy(12).toGrid(1, 'down');
  return { feet, inches: size.minus(feet.times(12)) };
}

function unsigned(
  size: Length,
  unit: WrittenUnit,
  style: NonNullable<FormatOptions['style']>,
  locale: string,
  decimal: boolean,
): string {
  if (unit === 'ft-in') {
    const { feet, inches } = feetAndInches(size);
    const rest = (): string => unsigned(inches, 'in', style, locale, decimal);
    if (style === 'spoken') {
      if (feet.sign() === 0) return rest();
      const feetText = `${feet} ${feet.equals(1) ? 'foot' : 'feet'}`;
      return inches.sign() === 0 ? feetText : `${feetText} ${rest()}`;
    }
    const [foot, inch] = style === 'unicode' ? ['′', '″'] : ["'", '"'];
    if (feet.sign() === 0) return `${rest()}${inch}`;
    return inches.sign() === 0 ? `${feet}${foot}` : `${feet}${foot} ${rest()}${inch}`;
  }
  const fraction = size.dividedBy(oneOf[unit]).toFraction();
  // Only irrational lengths have none, and those were moved to a grid.
  if (fraction === undefined) return size.toString();
  const { n, d } = fraction;
  if (style === 'spoken') return spoken(fraction, unit, locale, decimal);
  const number = decimal
    ? decimalText(fraction, locale)
    : style === 'ascii'
      ? mixedText(n, d)
      : unicodeText(n, d);
  return unit === 'in' ? number : `${number}\u00a0${unit}`;
}

const localeUnits = {
  in: 'inch',
  'ft-in': 'inch',
  yd: 'yard',
  mm: 'millimeter',
  cm: 'centimeter',
  m: 'meter',
} as const;

function spoken(
  fraction: FractionInput,
  unit: WrittenUnit,
  locale: string,
  decimal: boolean,
): string {
  if (!decimal) return spokenText(fraction.n, fraction.d, words[unit]);
  const number = decimalText(fraction, locale);
  if (locale.startsWith('en'))
    return `${number} ${number === '1' ? words[unit].one : words[unit].several}`;
  const parts = new Intl.NumberFormat(locale, {
    style: 'unit',
    unit: localeUnits[unit],
    unitDisplay: 'long',
  }).formatToParts(Number(fraction.n) / Number(fraction.d));
  const name = parts.find(({ type }) => type === 'unit')?.value ?? unit;
  return `${number} ${name}`;
}
