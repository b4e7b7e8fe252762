/**
 * A text with every mark that people type or paste brought to one plain form, and the way back from
 * each plain character to where it stood.
 */
export interface PlainText {
  readonly text: string;
  /** For each index of `text`, and its end, the index in the text as typed. */
  readonly origins: readonly number[];
}

/** What people type or paste, and the plain character that it stands for. */
const PLAIN_MARKS: readonly (readonly [RegExp, string])[] = [
  [/[\u200b-\u200f\u2060\u202a-\u202e\u2066-\u2069\ufeff]/, ''],
  [/\s/, ' '],
  [/[″”“„‟〃＂ʺ]/, '"'],
  [/[′’‘‛´＇ʹ]/, "'"],
  [/[‐‑‒–—−﹣－]/, '-'],
  [/[⁄∕／]/, '/'],
];

/** The rest is full-width writing, raised and lowered digits, and fractions in one glyph. */
const plainMark = (mark: string): string =>
  PLAIN_MARKS.find(([marks]) => marks.test(mark))?.[1] ??
  mark.normalize('NFKC').toLowerCase().replace('⁄', '/');

type Kind = 'glyph' | 'raised' | 'lowered' | 'plain';

function kindOf(mark: string, plain: string): Kind {
  if (plain.length > 1) return 'glyph';
  if (/[⁰¹²³⁴-⁹]/.test(mark)) return 'raised';
  return /[₀-₉]/.test(mark) ? 'lowered' : 'plain';
}

/** Brings a typed text to plain characters, one by one, in time linear in its length. */
export function plainText(typed: string): PlainText {
  const characters: string[] = [];
  const origins: number[] = [];
  let previous: Kind = 'plain';
  let index = 0;
  const put = (plain: string): void => {
    for (const character of plain) {
      characters.push(character);
      origins.push(index);
    }
  };

  for (const mark of typed) {
    const plain = plainMark(mark);
    const kind = kindOf(mark, plain);
    const last = characters.at(-1) ?? ' ';
    if (plain === "'" && last === "'") {
      characters[characters.length - 1] = '"';
    } else if (plain !== ' ' || last !== ' ') {
      // Digits of two kinds are two numbers: 10½ is 10 1/2 and not 101/2, nor is 10¹⁄₂.
      if (kind !== previous && /\d/.test(last) && /^\d/.test(plain)) put(' ');
      put(plain);
    }
    if (plain !== '') previous = kind;
    index += mark.length;
  }
  if (characters.at(-1) === ' ') {
    characters.pop();
    origins.pop();
  }
  origins.push(index);
  return { text: characters.join(''), origins };
}
