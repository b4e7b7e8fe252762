// Texts that somebody could type, paste or be sent where a length is asked for.

/** @typedef {import('./random.mjs').Chance} Chance */

const TYPED = [
  '10 1/2',
  '10½',
  '10.5',
  '10,5',
  '3 ft 4 in',
  '1 1/2 yd',
  '26.5 cm',
  '2′ 3⅜″',
  '10 and 7 eighths',
  '5√2',
  '3/2√2 + 1/4',
  '1.5e-3 m',
  '−2 1/8"',
  'finished',
  'spiral',
];
const PARTS =
  '0 1 2 3 7 9 10 42 1/2 3/8 ½ ⅞ ↉ ⁄ / . , - – − + * · √ √2 e e-3 e400 in ft yd mm cm m inch " \' ″ ′ and a an & ( ) ; : % = 1,000 1/0 0/0 00'.split(
    ' ',
  );
const SPACES = [
  '',
  '',
  ' ',
  ' ',
  '  ',
  '\t',
  '\n',
  '\u00a0',
  '\u2009',
  '\u200b',
  '\u202f',
  '\ufeff',
];
const STRANGE = [
  '<img src=x onerror=alert(1)>',
  '</script><script>',
  '"; --',
  '../../',
  '\u0000',
  '\ud800',
  '\u202e12',
  '１２',
  '٣',
  '十',
  'zwölf',
  '🧵',
  '__proto__',
  '{value}',
];

/** @param {Chance} by */
const characters = (by) =>
  Array.from({ length: by.whole(0, 24) }, () =>
    by.often(0.8)
      ? String.fromCharCode(by.whole(0x20, 0x7e))
      : String.fromCodePoint(by.whole(0, by.often(0.9) ? 0xffff : 0x10ffff)),
  ).join('');

/** @param {Chance} by */
const fromParts = (by) =>
  Array.from({ length: by.whole(1, 9) }, () => by.one(PARTS) + by.one(SPACES)).join('');

/** One that reads well, with a character taken away, doubled or changed. @param {Chance} by */
function changed(by) {
  const text = by.one(TYPED);
  const at = by.whole(0, text.length);
  const put = by.one(['', text.slice(at, at + 1).repeat(2), by.one(PARTS), by.one(STRANGE)]);
  return text.slice(0, at) + put + text.slice(at + 1);
}

/** Long ones: digits, repeated parts, and what would take a slow pattern ages. @param {Chance} by */
const long = (by) => by.one(PARTS).repeat(by.whole(10, by.often(0.9) ? 400 : 20_000));

/**
 * A text where a length is asked for.
 *
 * @param {Chance} by
 * @returns {string}
 */
export function anyText(by) {
  const kind = by.unit();
  if (kind < 0.4) return fromParts(by);
  if (kind < 0.7) return changed(by);
  if (kind < 0.9) return characters(by);
  if (kind < 0.97) return by.one(STRANGE) + by.one(SPACES) + by.one(PARTS);
  return long(by);
}
