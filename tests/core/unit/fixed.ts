/**
 * Numbers to 60 decimal places in whole numbers of 10^−60, and points of them: a reckoning beside the
 * one that is tested. Nothing here knows about roots, lengths or allowances.
 */

export const UNIT = 10n ** 60n;

/** What is taken for no difference: far above the error of a few hundred operations. */
export const NEGLIGIBLE = 10n ** 15n;

export const fixed = (numerator: number | bigint, denominator: number | bigint = 1): bigint =>
  (BigInt(numerator) * UNIT) / BigInt(denominator);

export const times = (a: bigint, b: bigint): bigint => (a * b) / UNIT;
export const over = (a: bigint, b: bigint): bigint => (a * UNIT) / b;

/** The greatest whole number whose square is at most n: guessed, bettered, and checked at the end. */
function wholeRoot(n: bigint): bigint {
  const bits = BigInt(n.toString(2).length);
  const digits = bits > 100n ? bits - 100n - (bits % 2n) : 0n;
  let root = BigInt(Math.floor(Math.sqrt(Number(n >> digits)))) << (digits / 2n);
  if (root === 0n) root = 1n;
  for (let times = 0; times < 12; times += 1) root = (root + n / root) / 2n;
  while (root * root > n) root -= 1n;
  while ((root + 1n) * (root + 1n) <= n) root += 1n;
  return root;
}

const known = new Map<bigint, bigint>();

export function rootOf(value: bigint): bigint {
  const before = known.get(value);
  if (before !== undefined) return before;
  const root = wholeRoot(value * UNIT);
  known.set(value, root);
  return root;
}

export const isClose = (a: bigint, b: bigint): boolean => {
  const difference = a - b;
  return difference < NEGLIGIBLE && difference > -NEGLIGIBLE;
};

/** Eighths, rounded up; what is negligibly beyond an eighth is that eighth. */
export const eighthsUp = (value: bigint): number => {
  const eighth = UNIT / 8n;
  return Number((value - NEGLIGIBLE + eighth - 1n) / eighth);
};

/** A length's own text (`7/2√2 + 3 1/2`) as a fixed number: what people are shown is what is tested. */
export function fixedOf(length: { toString(): string }): bigint {
  const signed = length.toString().replaceAll(' - ', ' + -').split(' + ');
  return signed.reduce((sum, text) => {
    const negative = text.startsWith('-');
    const [factor = '', radicand = '1'] = text.replace('-', '').split('√');
    const parts = factor === '' ? ['1'] : factor.split(' ');
    const size = parts.reduce((total, part) => {
      const [numerator = '0', denominator = '1'] = part.split('/');
      return total + fixed(BigInt(numerator), BigInt(denominator));
    }, 0n);
    const value = times(size, rootOf(fixed(BigInt(radicand))));
    return negative ? sum - value : sum + value;
  }, 0n);
}
