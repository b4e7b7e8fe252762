import { fail } from '../errors/error.js';
import { type Length, length, squareRoot } from '../length/length.js';
import type { UnitInput } from './definition.js';
import { outward, sine } from './enclosure.js';
import type { Enclosure } from './plan.js';

/** An angle with its sine, cosine, cosecant (1 / sine) and cotangent, each between two limits. */
export interface Angle {
  readonly degrees: number;
  /** Whether the limits are the same: for 15, 30, 45, 60, 75 and 90 degrees. */
  readonly exact: boolean;
  readonly sine: Enclosure;
  readonly cosine: Enclosure;
  readonly cosecant: Enclosure;
  readonly cotangent: Enclosure;
}

const LEAST = 15;
const MOST = 90;

/** The acute angle of a shape, as an input. */
export const angleInput = (usual: number): UnitInput => ({
  kind: 'degrees',
  name: 'angle',
  least: LEAST,
  most: MOST,
  default: usual,
});

const same = (value: Length): Enclosure => ({ least: value, most: value });

const known = (
  degrees: number,
  sin: Length,
  cosine: Length,
  cosecant: Length,
  cotangent: Length,
): Angle => ({
  degrees,
  exact: true,
  sine: same(sin),
  cosine: same(cosine),
  cosecant: same(cosecant),
  cotangent: same(cotangent),
});

/** Exact values (school trigonometry; the tests check sin² + cos² = 1 and the quotients). */
function exactAngle(degrees: number): Angle | undefined {
  const two = squareRoot(2);
  const three = squareRoot(3);
  const six = squareRoot(6);
  const [less, more] = [six.minus(two), six.plus(two)];
  const half = length('1/2');
  switch (degrees) {
    case 15:
      return known(15, less.dividedBy(4), more.dividedBy(4), more, three.plus(2));
    case 30:
      return known(30, half, three.dividedBy(2), length(2), three);
    case 45:
      return known(45, two.dividedBy(2), two.dividedBy(2), two, length(1));
    case 60:
      return known(60, three.dividedBy(2), half, three.times('2/3'), three.dividedBy(3));
    case 75:
      return known(75, more.dividedBy(4), less.dividedBy(4), less, length(2).minus(three));
    case 90:
      return known(90, length(1), length(0), length(1), length(0));
    default:
      return undefined;
  }
}

/**
 * An angle from 15 to 90 degrees. Multiples of 15 are exact; others lie between decimals of 15 places
 * that are rounded outward.
 *
 * @throws EighthsError `angle-out-of-range`
 * @example
 * readAngle(60).cosecant.most.toString(); // '2/3√3'
 * readAngle(50).exact; // false
 */
export function readAngle(degrees: number): Angle {
  if (!Number.isFinite(degrees) || degrees < LEAST || degrees > MOST) {
    fail(
      'angle-out-of-range',
      'angle',
      { value: String(degrees), least: LEAST, most: MOST },
      'An angle from {least} to {most} degrees is needed here, not {value}.',
    );
  }
  const exact = exactAngle(degrees);
  if (exact !== undefined) return exact;
  const sin = sine(length(degrees));
  const cosine = sine(length(90).minus(degrees));
  return {
    degrees,
    exact: false,
    sine: sin,
    cosine,
    cosecant: outward(length(1).dividedBy(sin.most), length(1).dividedBy(sin.least)),
    cotangent: outward(cosine.least.dividedBy(sin.most), cosine.most.dividedBy(sin.least)),
  };
}
