/** Values by whole lengths. */
export type Values = Float64Array;

/**
 * The value of a length that is among them. Beside `entryAt`, since loops run through values millions of
 * times, and a function that sees lists of one kind only costs them nothing.
 */
export function valueAt(values: Values, place: number): number {
  const value = values[place];
  if (value === undefined) throw new RangeError(`There is no value ${place}.`);
  return value;
}
