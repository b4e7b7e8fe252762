import type { DecimalSign } from './numbers.js';

/** Between the entries of a list with one value a round. */
const LIST = /\s*;\s*|,\s+/;
/** In each of the languages that the elements speak. */
const BY = /\s*(?:×|\b(?:x|by|mal|sur|par|por)\b)\s*/i;

/**
 * The text of an input for whatever a page sets as its value: a text as it is, a number, a length,
 * a list with one value a round, or a size. A number is written with the decimal sign in use, which
 * its reader asks for first.
 */
export function textOf(value: unknown, decimalSign: DecimalSign = '.'): string {
  if (value === null || value === undefined) return '';
  if (Array.isArray(value)) return value.map((each) => textOf(each, decimalSign)).join('; ');
  if (typeof value === 'object') {
    if ('width' in value && 'height' in value) {
      return `${textOf(value.width, decimalSign)} by ${textOf(value.height, decimalSign)}`;
    }
    // A length writes itself in inches, whatever a bare number means here.
    return 'toJSON' in value && typeof value.toJSON === 'function' ? `${value.toJSON()} in` : '';
  }
  const text = String(value);
  return typeof value === 'number' ? text.replace('.', decimalSign) : text;
}

/** One value, or a list of them where the text separates several: `1 1/4; 1; 3/4`. */
export function readList<Value>(
  text: string,
  read: (entry: string) => Value,
): Value | readonly Value[] {
  const entries = text.trim().split(LIST);
  return entries.length === 1 ? read(text) : entries.map(read);
}

/** A square's side, or width and height where the text says `6 by 9`. */
export function readSides<Value>(
  text: string,
  read: (side: string) => Value,
): Value | { readonly width: Value; readonly height: Value } {
  const [width, height, ...more] = text.trim().split(BY);
  if (width === undefined || height === undefined || more.length > 0) return read(text);
  return { width: read(width), height: read(height) };
}
