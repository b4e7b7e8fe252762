/** The entry at a place that is known to exist: to ask for another is a mistake here, not in a spec. */
export function entryAt<Entry>(list: ArrayLike<Entry>, place: number): Entry {
  const entry = list[place];
  if (entry === undefined) throw new RangeError(`There is no entry ${place}.`);
  return entry;
}
