/** Words for the part below the line, as quilters say them. */
const PARTS: Readonly<Record<string, string>> = {
  '2': 'half',
  '3': 'third',
  '4': 'quarter',
  '5': 'fifth',
  '6': 'sixth',
  '7': 'seventh',
  '8': 'eighth',
  '9': 'ninth',
  '10': 'tenth',
  '12': 'twelfth',
  '16': 'sixteenth',
  '32': 'thirty-second',
  '64': 'sixty-fourth',
};

function partWords(numerator: bigint, denominator: bigint): string {
  const part = PARTS[denominator.toString()];
  if (part === undefined) return `${numerator} over ${denominator}`;
  if (numerator !== 1n) return `${numerator} ${part}s`;
  return denominator < 5n ? `a ${part}` : `1 ${part}`;
}

/** A unit's name for one and for several, and its article. */
export interface UnitWords {
  readonly one: string;
  readonly several: string;
  readonly article: 'a' | 'an';
}

/**
 * A length that is not negative in English words and figures, as a person would read it aloud:
 * `10 and a half inches`, `3 quarters of an inch`. Speech engines misread fraction glyphs.
 */
export function spokenText(numerator: bigint, denominator: bigint, unit: UnitWords): string {
  const whole = numerator / denominator;
  const part = numerator % denominator;
  if (part === 0n) return `${whole} ${whole === 1n ? unit.one : unit.several}`;
  if (whole === 0n) {
    return denominator === 2n
      ? `half ${unit.article} ${unit.one}`
      : `${partWords(part, denominator)} of ${unit.article} ${unit.one}`;
  }
  // Three quarters of an inch, but twelve and three quarter inches (common usage, no source).
  const words = denominator === 4n && part === 3n ? '3 quarter' : partWords(part, denominator);
  return `${whole} and ${words} ${unit.several}`;
}
