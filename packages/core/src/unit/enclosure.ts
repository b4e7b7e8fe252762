import { type Length, length } from '../length/length.js';
import type { Enclosure } from './plan.js';

/** Decimal places to which enclosures are rounded outward. */
const PLACES = 15n;
const UNIT = 10n ** PLACES;

/** Whole numbers in units of 10^−50 that are worked with inside. */
const FINE = 10n ** 50n;

/** Pi to 50 places, cut off (from memory; the tests reckon it anew). */
const PI = 314159265358979323846264338327950288419716939937510n;

const step = length(1).dividedBy(UNIT);

/** Both ends moved outward to 15 decimal places. */
export const outward = (least: Length, most: Length): Enclosure => ({
  least: least.toGrid(step, 'down'),
  most: most.toGrid(step, 'up'),
});

/** A value in units of 10^−50, wrong by at most `error` of them. */
const around = (value: bigint, error: bigint): Enclosure =>
  outward(length(value - error).dividedBy(FINE), length(value + error).dividedBy(FINE));

/** 3.141592653589793 to 3.141592653589794. */
export const pi: Enclosure = around(PI, 1n);

/**
 * The sine of an angle from 0 to 90 degrees, between two decimals of 15 places.
 *
 * Taylor's series in whole numbers of 10^−50: each of its fewer than 60 terms is cut off once, which
 * is wrong by less than one unit, and the angle in radians by less than two.
 *
 * @example
 * sine(length(40)).least.toNumber(); // 0.642787609686539
 */
export function sine(degrees: Length): Enclosure {
  const { n = 0n, d = 1n } = degrees.toFraction() ?? {};
  const angle = (PI * n) / (180n * d);
  const square = (angle * angle) / FINE;
  let term = angle;
  let sum = 0n;
  for (let odd = 1n; term !== 0n; odd += 2n) {
    sum += term;
    term = -(term * square) / (FINE * (odd + 1n) * (odd + 2n));
  }
  return around(sum, 1000n);
}
