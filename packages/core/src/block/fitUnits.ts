import { type FractionInput, type Length, type LengthInput, length } from '../length/length.js';
import { greatestDivisor } from '../number/greatestDivisor.js';
import { rationalField } from '../plan/field.js';

/** A fraction above zero, in lowest terms. */
export interface Fraction {
  readonly n: bigint;
  readonly d: bigint;
}

const fractionOf = (value: Length): FractionInput => value.toFraction() ?? { s: 1n, n: 0n, d: 1n };

/** The number that a length without a root is, from a field. */
export function fractionField(input: LengthInput, field: string): Fraction {
  const { n, d } = fractionOf(rationalField(input, field));
  return { n, d };
}

/** The largest length that all of these are whole multiples of; none may hold a root. */
export function commonUnit(first: Length, ...lengths: readonly Length[]): Length {
  let { n, d } = fractionOf(first);
  for (const each of lengths) {
    const other = fractionOf(each);
    n = greatestDivisor(n * other.d, other.n * d);
    d *= other.d;
  }
  return length({ s: 1n, n, d });
}

/** How many whole steps lie within a length. */
export function stepsDown(value: Length, step: Length): number {
  const { s, n } = fractionOf(value.toGrid(step, 'down').dividedBy(step));
  return Number(s * n);
}

/** How many steps a length needs. */
export function stepsUp(value: Length, step: Length): number {
  const { s, n } = fractionOf(value.toGrid(step, 'up').dividedBy(step));
  return Number(s * n);
}

/** The whole part of count · n / d, exactly; the count is not negative. */
export function shareDown(count: number, n: bigint, d: bigint): number {
  const product = count * Number(n);
  if (product <= Number.MAX_SAFE_INTEGER && d <= BigInt(Number.MAX_SAFE_INTEGER)) {
    // The remainder of whole numbers is exact, which a quotient is not.
    return (product - (product % Number(d))) / Number(d);
  }
  return Number((BigInt(count) * n) / d);
}
