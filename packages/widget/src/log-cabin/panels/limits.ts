import { EighthsError, type FitLimits, type Length, length } from '@eighths/core';

/** `8 to 10`, `8 on`, `up to 10`. */
const TO = /^(?:from\s+)?(.+?)\s+to\s+(.+)$/i;
const UP_TO = /^up\s+to\s+(.+)$/i;
const ON = /^(?:from\s+(.+?)|(.+?)\s+on)$/i;

/** One length, or the least and the most it may be: `8`, `8 to 10`, `up to 10`, `8 on`. */
export function readLimits(text: string, read: (text: string) => Length): FitLimits {
  const [, upTo] = UP_TO.exec(text) ?? [];
  if (upTo !== undefined) return { most: read(upTo) };
  const [, least, most] = TO.exec(text) ?? [];
  if (least !== undefined && most !== undefined) return { least: read(least), most: read(most) };
  const [, from, on] = ON.exec(text) ?? [];
  const open = from ?? on;
  return open === undefined ? read(text) : { least: read(open) };
}

const RATIO = /^(\d{1,4}(?:\.\d{1,4})?)\s*(?::|\/|\s+to\s+)\s*(\d{1,4}(?:\.\d{1,4})?)$/;

/** `5 : 2`, `5/2`, `5 to 2` or `2.5`, as a number. */
export function readRatio(text: string): Length {
  const [, over, under] = RATIO.exec(text.trim()) ?? [];
  if (over === undefined || under === undefined) return length(text);
  if (Number(under) > 0) return length(over).dividedBy(length(under));
  throw new EighthsError(
    'not-positive',
    'ratio',
    { value: length(0) },
    'A number above 0 is needed on both sides of a ratio.',
  );
}
