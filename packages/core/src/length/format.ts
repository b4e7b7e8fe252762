import { refuseChoice } from './choice.js';
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

type Style = 'unicode' | 'ascii' | 'decimal' | 'spoken';

const STYLES: readonly Style[] = ['unicode', 'ascii', 'decimal', 'spoken'];

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
   * half inches`). Metric units are written as decimals in each of them, and so is what is spoken in
   * another language than English.
   */
  readonly style?: Style;
  /** A BCP 47 tag for the decimal sign, and for a spoken unit; default `en`. */
  readonly locale?: string;
  /**
   * What is said of a value that had to be rounded: `mark` (default) puts ≈ before it (`~` in ASCII,
   * `about` when spoken in English), `exact` puts the exact inches behind it in parentheses.
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

/** The part of a number as a locale writes it, in the digits 0 to 9. */
function localePart(
  locale: string,
  type: 'decimal' | 'unit',
  value: number,
  options?: Intl.NumberFormatOptions,
): string | undefined {
  let format: Intl.NumberFormat;
  try {
    format = new Intl.NumberFormat(locale, { ...options, numberingSystem: 'latn' });
  } catch {
    return refuseChoice('locale', locale, ['language tags such as en or de-CH']);
  }
  return format.formatToParts(value).find((part) => part.type === type)?.value;
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
  return `${digits.slice(0, -places)}${localePart(locale, 'decimal', 0.5) ?? '.'}${digits.slice(-places)}`;
}

const stepFor = (unit: WrittenUnit, decimal: boolean): Length => {
  const places = isMetric(unit) ? metricPlaces[unit] : DECIMAL_PLACES;
  return decimal ? oneOf[unit].dividedBy(10n ** BigInt(places)) : FINEST_INCH;
};

function isShortDecimal({ d }: FractionInput): boolean {
  return 10n ** BigInt(EXACT_PLACES) % d === 0n;
}

/** The value as it will be shown: on the grid if one is given, and so that it can be written. */
function shownValue(
  exact: Length,
  unit: WrittenUnit,
  decimal: boolean,
  options: FormatOptions,
): Length {
  const mode = options.mode ?? 'nearest';
  const value = options.grid === undefined ? exact : exact.toGrid(options.grid, mode);
  const fraction = value.dividedBy(oneOf[unit]).toFraction();
  const writable = fraction !== undefined && (!decimal || isShortDecimal(fraction));
  return writable ? value : value.toGrid(stepFor(unit, decimal), mode);
}

const isEnglish = (locale: string): boolean => /^en\b/i.test(locale);

/**
 * A length in writing. Rounded to `grid` in the direction of `mode` (and on to a decimal that can be
 * written, where a grid such as 1/3 has none); a rounded value never passes for an exact one. Inches
 * stand bare, as `length()` reads them; other units are named.
 *
 * @throws EighthsError `length-syntax`, `length-step` for a grid that is none, or `unknown-choice`.
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
  if (!Object.hasOwn(oneOf, unit)) refuseChoice('unit', unit, Object.keys(oneOf));
  if (!STYLES.includes(style)) refuseChoice('style', style, STYLES);
  const english = style === 'spoken' && isEnglish(locale);
  const decimal = isMetric(unit) || style === 'decimal' || (style === 'spoken' && !english);

  const exact = length(input);
  const shown = shownValue(exact, unit, decimal, options);
  const minus = shown.sign() < 0 ? (english ? 'minus ' : '-') : '';
  const size = shown.sign() < 0 ? shown.negated() : shown;
  const text = minus + written(size, unit, { style, locale, decimal });
  if (shown.equals(exact)) return text;
  if (options.rounded === 'exact') return `${text} (exactly ${exact})`;
  return `${english ? 'about' : style === 'ascii' ? '~' : '≈'} ${text}`;
}

/** What is settled of a writing before a number is looked at. */
interface Writing {
  readonly style: Style;
  readonly locale: string;
  readonly decimal: boolean;
}

/** A length that is not negative. */
function written(size: Length, unit: WrittenUnit, writing: Writing): string {
  if (unit === 'ft-in') return feetAndInches(size, writing);
  const fraction = size.dividedBy(oneOf[unit]).toFraction();
  // Only irrational lengths have none, and those were moved to a grid.
  if (fraction === undefined) return size.toString();
  if (writing.style === 'spoken') return spoken(fraction, unit, writing);
  const number = numberText(fraction, writing);
  if (unit === 'in') return number;
  return `${number}${writing.style === 'ascii' ? ' ' : '\u00a0'}${unit}`;
}

function numberText(fraction: FractionInput, { style, locale, decimal }: Writing): string {
  if (decimal) return decimalText(fraction, locale);
  const { n, d } = fraction;
  return style === 'ascii' ? mixedText(n, d) : unicodeText(n, d);
}

function feetAndInches(size: Length, writing: Writing): string {
  const feet = size.dividedBy(12).toGrid(1, 'down');
  const inches = size.minus(feet.times(12));
  const rest = written(inches, 'in', writing);
  if (writing.style === 'spoken') {
    if (feet.sign() === 0) return rest;
    const feetText = spoken({ s: 1n, n: BigInt(feet.toString()), d: 1n }, 'ft', writing);
    if (inches.sign() === 0) return feetText;
    const join = inches.compareTo(1) < 0 && isEnglish(writing.locale) ? ' and ' : ' ';
    return feetText + join + rest;
  }
  const [foot, inch] = writing.style === 'unicode' ? ['′', '″'] : ["'", '"'];
  if (feet.sign() === 0) return `${rest}${inch}`;
  return inches.sign() === 0 ? `${feet}${foot}` : `${feet}${foot} ${rest}${inch}`;
}

type SpokenUnit = Exclude<WrittenUnit, 'ft-in'> | 'ft';

const words: Readonly<Record<SpokenUnit, UnitWords>> = {
  in: { one: 'inch', several: 'inches', article: 'an' },
  ft: { one: 'foot', several: 'feet', article: 'a' },
  yd: { one: 'yard', several: 'yards', article: 'a' },
  mm: { one: 'millimeter', several: 'millimeters', article: 'a' },
  cm: { one: 'centimeter', several: 'centimeters', article: 'a' },
  m: { one: 'meter', several: 'meters', article: 'a' },
};

function spoken(fraction: FractionInput, unit: SpokenUnit, { locale, decimal }: Writing): string {
  const { one, several } = words[unit];
  if (!decimal) return spokenText(fraction.n, fraction.d, words[unit]);
  const number = decimalText(fraction, locale);
  if (isEnglish(locale)) return `${number} ${number === '1' ? one : several}`;
  const value = Number(fraction.n) / Number(fraction.d);
  const name = localePart(locale, 'unit', value, { style: 'unit', unit: one, unitDisplay: 'long' });
  return `${number} ${name ?? unit}`;
}
