/** An independent reckoning for sums of square roots: digits by long-hand square roots, no library. */

/** sign · numerator / denominator · √radicand in plain whole numbers; radicand 1 for a rational term. */
export interface Summand {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly radicand: bigint;
}

/** The greatest whole number whose square is at most n, bit by bit from the top. */
export function wholeRoot(n: bigint): bigint {
  let root = 0n;
  for (let bit = BigInt((n.toString(2).length >> 1) + 1); bit >= 0n; bit -= 1n) {
    const larger = root | (1n << bit);
    if (larger * larger <= n) root = larger;
  }
  return root;
}

/** Decimal places of the reckoning. */
const PLACES = 300n;
export const UNIT = 10n ** PLACES;

/** The sum in units of 10^−300, wrong by less than one unit for each summand and each of its n/d. */
export function scaledSum(summands: readonly Summand[]): bigint {
  return summands.reduce(
    (sum, { numerator, denominator, radicand }) =>
      sum + (numerator * wholeRoot(radicand * UNIT * UNIT)) / denominator,
    0n,
  );
}

/** Sums smaller than this are taken for zero: far above the error, far below what the tests make. */
export const NEGLIGIBLE = 10n ** 100n;

export function signOf(summands: readonly Summand[]): -1 | 0 | 1 {
  const sum = scaledSum(summands);
  if (sum > NEGLIGIBLE) return 1;
  return sum < -NEGLIGIBLE ? -1 : 0;
}

/** A double in units of 10^−300, cut off: every double is a whole number times a power of two. */
export function scaledDouble(value: number): bigint {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  const exponent = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xfffffffffffffn;
  const mantissa = exponent === 0 ? fraction : fraction | (1n << 52n);
  const power = BigInt(Math.max(exponent, 1) - 1075);
  const size = power < 0n ? (mantissa * UNIT) >> -power : (mantissa * UNIT) << power;
  return value < 0 ? -size : size;
}

/** The doubles next below and next above one that is not zero. */
export function neighbors(value: number): readonly [below: number, above: number] {
  const view = new DataView(new ArrayBuffer(8));
  const stepped = (steps: bigint): number => {
    view.setFloat64(0, value);
    view.setBigInt64(0, view.getBigInt64(0) + steps);
    return view.getFloat64(0);
  };
  return value > 0 ? [stepped(-1n), stepped(1n)] : [stepped(1n), stepped(-1n)];
}
