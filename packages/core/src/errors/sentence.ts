/** Anything that a sentence can speak of: a count, a word, or a length (which writes itself). */
export type SentenceValue = number | string | { toJSON(): string };

/** What a sentence speaks of, by the name of its place in the sentence. */
export type SentenceValues = Readonly<Record<string, SentenceValue>>;

const write = (value: SentenceValue): string =>
  typeof value === 'object' ? value.toJSON() : String(value);

/**
 * A sentence with its places filled: `{needed}` becomes the value of that name.
 *
 * @param writeValue how a value is written; by default lengths stand in inches, exactly. An element
 *   that shows centimeters, or another language, passes its own.
 * @example
 * fillSentence('Cut {count} of {width}.', { count: 4, width: '2 1/2' }); // 'Cut 4 of 2 1/2.'
 */
export function fillSentence(
  template: string,
  values: SentenceValues,
  writeValue: (value: SentenceValue, name: string) => string = write,
): string {
  return template.replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = values[name];
    return value === undefined ? place : writeValue(value, name);
  });
}
