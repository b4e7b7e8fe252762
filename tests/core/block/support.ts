import { EighthsError, type Length } from '@eighths/core';

/** What a length writes; a missing one fails the test with its name. */
export const inches = (value: Length | undefined): string => value?.toString() ?? 'nothing';

/** The error that an act throws. What is no EighthsError is thrown on, and so is nothing. */
export function refusal(act: () => unknown): EighthsError {
  try {
    act();
  } catch (error) {
    if (error instanceof EighthsError) return error;
    throw error;
  }
  throw new Error('Nothing was refused.');
}

/** A length in sixty-fourths of an inch, which has to be a whole number of them. */
export function sixtyFourths(value: Length): number {
  const steps = value.times(64).toFraction();
  if (steps?.d !== 1n) throw new Error(`${value} lies between two sixty-fourths.`);
  return Number(steps.s * steps.n);
}
