import { choiceField } from './choice.js';
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

const UNITS: readonly WrittenUnit[] = ['in', 'ft-in', 'yd', 'mm', 'cm', 'm'];
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

/** What is known of a unit: the inches in one, its words, and the decimals of a rounded metric value. */
interface Unit extends UnitWords {
  readonly inches: Length;
  readonly places?: number;
}

const inch: Unit = { inches: length(1), one: 'inch', several: 'inches', article: 'an' };

const units: Readonly<Record<WrittenUnit | 'ft', Unit>> = {
  in: inch,
  'ft-in': inch,
  ft: { inches: length('1 ft'), one: 'foot', several: 'feet', article: 'a' },
  yd: { inches: length('1 yd'), one: 'yard', several: 'yards', article: 'a' },
  mm: {
    inches: length('1 mm'),
    one: 'millimeter',
    several: 'millimeters',
    article: 'a',
    places: 1,
  },
  cm: {
    inches: length('1 cm'),
    one: 'centimeter',
    several: 'centimeters',
    article: 'a',
    places: 2,
  },
  m: { inches: length('1 m'), one: 'meter', several: 'meters', article: 'a', places: 2 },
};

const isMetric = (unit: WrittenUnit): boolean => units[unit].places !== undefined;

const DECIMAL_PLACES = 4;
const FINEST_INCH = length('1/64');

/** Fractions that Unicode has a glyph for, and that people at a cutting table meet. */
const GLYPHS = [...'½⅓⅔¼¾⅛⅜⅝⅞'];

function unicodeText(numerator: bigint, denominator: bigint): string {
  const text = mixedText(numerator, denominator).replace('/', '⁄');
  return text.replace(/( ?)(\d+⁄\d+)/, (_, gap: string, part: string) => {
    const glyph = GLYPHS.find((each) => each.normalize('NFKC') === part);
    // A no-break space: without it 10 13⁄16 reads as 1013⁄16.
    return glyph ?? gap.replace(' ', '\u00a0') + part;
  });
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
    return choiceField(locale, 'locale', ['language tags such as en or de-CH']);
  }
  return format.formatToParts(value).find((part) => part.type === type)?.value;
}

/** The most decimal places that an exact decimal may take before it is rounded. */
const EXACT_PLACES = 6;
const MOST_PARTS = 10n ** BigInt(EXACT_PLACES);

/** A decimal that ends within `EXACT_PLACES`. */
function decimalText({ n, d }: FractionInput, locale: string): string {
  const digits = ((n * MOST_PARTS) / d).toString().padStart(EXACT_PLACES + 1, '0');
  const whole = digits.slice(0, -EXACT_PLACES);
  const part = digits.slice(-EXACT_PLACES).replace(/0+$/, '');
  return part === '' ? whole : `${whole}${localePart(locale, 'decimal', 0.5) ?? '.'}${part}`;
}

const stepFor = (unit: WrittenUnit, decimal: boolean): Length => {
  const { inches, places = DECIMAL_PLACES } = units[unit];
  return decimal ? inches.dividedBy(10n ** BigInt(places)) : FINEST_INCH;
};

/** The value as it will be shown: on the grid if one is given, and so that it can be written. */
function shownValue(
  exact: Length,
  unit: WrittenUnit,
  decimal: boolean,
  options: FormatOptions,
): Length {
  const mode = options.mode ?? 'nearest';
  const value = options.grid === undefined ? exact : exact.toGrid(options.grid, mode);
  const fraction = value.dividedBy(units[unit].inches).toFraction();
  const writable = fraction !== undefined && (!decimal || MOST_PARTS % fraction.d === 0n);
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
  const unit = choiceField(options.unit ?? 'in', 'unit', UNITS);
  const style = choiceField(options.style ?? 'unicode', 'style', STYLES);
  const locale = options.locale ?? 'en';
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
function written(size: Length, unit: WrittenUnit | 'ft', writing: Writing): string {
  if (unit === 'ft-in') return feetAndInches(size, writing);
  const fraction = size.dividedBy(units[unit].inches).toFraction();
  // Only irrational lengths have none, and those were moved to a grid.
  if (fraction === undefined) return size.toString();
  const { style, locale, decimal } = writing;
  if (style === 'spoken') return spoken(fraction, unit, writing);
  const { n, d } = fraction;
  const ascii = style === 'ascii';
  const number = decimal ? decimalText(fraction, locale) : (ascii ? mixedText : unicodeText)(n, d);
  return unit === 'in' ? number : `${number}${ascii ? ' ' : '\u00a0'}${unit}`;
}

function feetAndInches(size: Length, writing: Writing): string {
  const feet = size.toGrid(12, 'down');
  const inches = size.minus(feet);
  const spokenOut = writing.style === 'spoken';
  const [foot, inch] = spokenOut ? ['', ''] : writing.style === 'unicode' ? ['′', '″'] : ["'", '"'];
  const inchText = written(inches, 'in', writing) + inch;
  if (feet.sign() === 0) return inchText;
  const feetText = spokenOut ? written(feet, 'ft', writing) : `${feet.dividedBy(12)}${foot}`;
  if (inches.sign() === 0) return feetText;
  const joined = spokenOut && inches.compareTo(1) < 0 && isEnglish(writing.locale);
  return `${feetText}${joined ? ' and ' : ' '}${inchText}`;
}

function spoken(
  fraction: FractionInput,
  unit: Exclude<WrittenUnit, 'ft-in'> | 'ft',
  { locale, decimal }: Writing,
): string {
  const { n, d } = fraction;
  if (!decimal) return spokenText(n, d, units[unit]);
  const { one, several } = units[unit];
  const number = decimalText(fraction, locale);
  if (isEnglish(locale)) return `${number} ${number === '1' ? one : several}`;
  const options = {
    style: 'unit',
    unit: one,
    unitDisplay: 'long',
    // With fewer, 1.0001 would be one inch, and not several.
    maximumFractionDigits: EXACT_PLACES,
  } as const;
  return `${number} ${localePart(locale, 'unit', Number(n) / Number(d), options) ?? unit}`;
}
