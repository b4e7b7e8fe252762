/**
 * A text with every mark that people type or paste brought to one plain form, and the way back from
 * each plain character to where it stood.
 */
export interface PlainText {
  readonly text: string;
  /** For each index of `text`, and its end, the index in the text as typed. */
  readonly origins: readonly number[];
}

const FRACTION_GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
  '⅟': '1/',
};

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

const INVISIBLE = /[\u200b-\u200f\u2060\u202a-\u202e\u2066-\u2069\ufeff]/;
const SPACE = /\s/;
const INCH_MARKS = '"″”“„‟〃＂';
const FOOT_MARKS = "'′’‘‛´＇";
const HYPHENS = '-‐‑‒–—−﹣－';
const SLASHES = '/⁄∕／';

function plainMark(mark: string): string {
  if (SPACE.test(mark)) return ' ';
  if (INCH_MARKS.includes(mark)) return '"';
  if (FOOT_MARKS.includes(mark)) return "'";
  if (HYPHENS.includes(mark)) return '-';
  if (SLASHES.includes(mark)) return '/';
  const subscript = SUBSCRIPTS.indexOf(mark);
  if (subscript >= 0) return String(subscript);
  // Full-width digits and letters of East Asian keyboards. Fraction glyphs never come this far:
  // this normal form would turn 10½ into 101⁄2.
  return mark.normalize('NFKC').toLowerCase();
}

const isDigit = (character: string | undefined): boolean =>
  character !== undefined && character >= '0' && character <= '9';

/** Brings a typed text to plain characters, one by one, in time linear in its length. */
export function plainText(typed: string): PlainText {
  const characters: string[] = [];
  const origins: number[] = [];
  // The last piece was a fraction by itself, so that a digit after it must not run into it.
  let closed = false;
  let superscript = false;
  let index = 0;
  const put = (plain: string): void => {
    for (const character of plain) {
      characters.push(character);
      origins.push(index);
    }
  };
  const space = (): void => {
    if (characters.length > 0 && characters.at(-1) !== ' ') put(' ');
  };

  for (const mark of typed) {
    const glyph = FRACTION_GLYPHS[mark];
    const raised = SUPERSCRIPTS.indexOf(mark);
    if (INVISIBLE.test(mark)) {
      // Nothing to see, nothing to read.
    } else if (glyph !== undefined) {
      if (closed || isDigit(characters.at(-1))) space();
      put(glyph);
      closed = !glyph.endsWith('/');
      superscript = false;
    } else if (raised >= 0) {
      if (!superscript && isDigit(characters.at(-1))) space();
      put(String(raised));
      superscript = true;
      closed = false;
    } else {
      const plain = plainMark(mark);
      if (plain === ' ') space();
      else if (plain === "'" && characters.at(-1) === "'") characters[characters.length - 1] = '"';
      else {
        if (closed && isDigit(plain[0])) space();
        put(plain);
      }
      superscript = false;
      closed = false;
    }
    index += mark.length;
  }
  if (characters.at(-1) === ' ') {
    characters.pop();
    origins.pop();
  }
  origins.push(index);
  return { text: characters.join(''), origins };
}
