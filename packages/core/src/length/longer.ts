import type { Length } from './length.js';

/** The longer of two lengths. */
export const longerOf = (one: Length, other: Length): Length =>
  one.compareTo(other) < 0 ? other : one;

/** The shorter of two lengths. */
export const shorterOf = (one: Length, other: Length): Length =>
  one.compareTo(other) > 0 ? other : one;

/** A length without its sign. */
export const absolute = (value: Length): Length => (value.sign() < 0 ? value.negated() : value);
