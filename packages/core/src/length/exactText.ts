import type { Exact } from '../number/exact.js';
import type { Rational } from '../number/rational.js';

/** A rational number that is not negative as a whole number and a fraction: `10 1/2`. */
export function mixedText(numerator: bigint, denominator: bigint): string {
  const whole = numerator / denominator;
  const part = numerator % denominator;
  if (part === 0n) return whole.toString();
  return whole === 0n ? `${part}/${denominator}` : `${whole} ${part}/${denominator}`;
}

const factorText = ({ n, d }: Rational): string =>
  d === 1n ? (n === 1n ? '' : n.toString()) : `${n}/${d}`;

/** An exact number in inches as a text that reads back to the same number: `5√2 - 1/2`, `-12 2/3`. */
export function exactText({ rational, roots }: Exact): string {
  const terms = roots.map(({ coefficient, radicand }) => ({
    negative: coefficient.s < 0n,
    text: `${factorText(coefficient)}√${radicand}`,
  }));
  if (rational.n !== 0n || terms.length === 0) {
    terms.push({ negative: rational.s < 0n, text: mixedText(rational.n, rational.d) });
  }
  return terms
    .map(({ negative, text }, index) =>
      index === 0 ? `${negative ? '-' : ''}${text}` : `${negative ? ' - ' : ' + '}${text}`,
    )
    .join('');
}
