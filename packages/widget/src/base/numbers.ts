export type DecimalSign = '.' | ',';

/** How a locale writes numbers. */
export interface Numbers {
  /** The decimal sign that is written, and read before the other one. */
  readonly decimalSign: DecimalSign;
  /** A whole number, or a count of degrees. */
  readonly count: (value: number) => string;
}

/** Formats are slow to make, and an element asks for its own at every key. */
const known = new Map<string, Numbers>();

function made(locale: string): Numbers {
  const { format } = new Intl.NumberFormat(locale, {
    numberingSystem: 'latn',
    // No group signs: 1.000 is a thousand to some and one to others.
    useGrouping: false,
    maximumFractionDigits: 9,
  });
  return { decimalSign: format(0.5).includes(',') ? ',' : '.', count: (value) => format(value) };
}

export function numbersIn(locale: string): Numbers {
  const numbers = known.get(locale) ?? made(locale);
  known.set(locale, numbers);
  return numbers;
}

/** The same text with the decimal signs of another language. */
export const withDecimalSign = (text: string, from: DecimalSign, to: DecimalSign): string =>
  from === to
    ? text
    : text.replace(/(\d)([.,])(?=\d)/g, (found, digit: string, sign: string) =>
        sign === from ? digit + to : found,
      );
