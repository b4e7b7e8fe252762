import { EighthsError, type FitLimits, type Length, length } from '@eighths/core';

// In the languages of the elements, whichever the page speaks: `8 bis 10`, `de 8 à 10`, `8から10`.
const TO =
  /^(?:(?:from|von|de|desde)\s+)?(.+?)(?:\s+(?:to|bis|à|a|hasta|[–—-])\s+|\s*(?:\.\.+|…|[~〜～]|から)\s*)(.+?)(?:まで)?$/iu;
const UP_TO = /^(?:(?:up\s+to|bis|jusqu[’']à|hasta)\s+(.+)|(.+?)\s*(?:以下|まで))$/iu;
const ON =
  /^(?:(?:from|ab|von|dès|à\s+partir\s+de|desde|de)\s+(.+)|(.+?)(?:\s+on|\s*(?:以上|から)))$/iu;

/** Longer than any two lengths. */
const LONGEST = 1000;

/** One length, or the least and the most it may be: `8`, `8 to 10`, `up to 10`, `8 on`. */
export function readLimits(text: string, read: (text: string) => Length): FitLimits {
  // Not looked through: what is so long is no length, as `read` says.
  if (text.length > LONGEST) return read(text);
  const [, upTo, downFrom] = UP_TO.exec(text) ?? [];
  if (upTo !== undefined) return { most: read(upTo) };
  const [, least, most] = TO.exec(text) ?? [];
  if (least !== undefined && most !== undefined) return { least: read(least), most: read(most) };
  if (downFrom !== undefined) return { most: read(downFrom) };
  const [, from, on] = ON.exec(text) ?? [];
  const open = from ?? on;
  return open === undefined ? read(text) : { least: read(open) };
}

const RATIO =
  /^(\d{1,4}(?:[.,]\d{1,4})?)(?:\s*[:/：対]\s*|\s+(?:to|zu|sur|a)\s+)(\d{1,4}(?:[.,]\d{1,4})?)$/u;

/** `5 : 2`, `5/2`, `5 to 2` or `2.5`, as a number. */
export function readRatio(text: string): Length {
  const [, over, under] = RATIO.exec(text.trim()) ?? [];
  const number = (digits: string): Length => length(digits.replace(',', '.'));
  if (over === undefined || under === undefined) return number(text);
  if (number(under).sign() > 0) return number(over).dividedBy(number(under));
  throw new EighthsError(
    'not-positive',
    'ratio',
    { value: length(0) },
    'A number above 0 is needed on both sides of a ratio.',
  );
}
