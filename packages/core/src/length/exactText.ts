import type { Exact } from '../number/exact.js';
import type { Rational } from '../number/rational.js';

/** A rational number that is not negative as a whole number and a fraction: `10 1/2`. */
export function mixedText(numerator: bigint, denominator: bigint): string {
  const whole = numerator / denominator;
  const part = numerator % denominator;
  if (part === 0n) return whole.toString();
  return whole === 0n ? `${part}/${denominator}` : `${whole} ${part}/${denominator}`;
}

/** coefficient · √radicand without its sign. */
function termText({ n, d }: Rational, radicand: bigint): string {
  if (radicand === 1n) return mixedText(n, d);
  const factor = d === 1n ? `${n}` : `${n}/${d}`;
  return `${factor === '1' ? '' : factor}√${radicand}`;
}

/** An exact number in inches as a text that reads back to the same number: `5√2 - 1/2`, `-12 2/3`. */
export function exactText(value: Exact): string {
  // The rational part stands last: 10 1/2 + √2 would look like a mixed number with a root.
  const terms = [...value].sort((a, b) => (a.radicand < b.radicand ? 1 : -1));
  return (
    terms.reduce((text, { coefficient, radicand }) => {
      const sign = coefficient.s < 0n ? '-' : '+';
      const size = termText(coefficient, radicand);
      if (text !== '') return `${text} ${sign} ${size}`;
      return sign === '-' ? `-${size}` : size;
    }, '') || '0'
  );
}
