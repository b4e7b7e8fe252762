/** A length: it writes itself as exact inches. */
type Measure = { toJSON(): string };

/** Anything that a sentence can speak of: a count, a word, a length, or a size of two lengths. */
export type SentenceValue =
  | number
  | string
  | Measure
  | { readonly width: Measure; readonly height: Measure };

/** What a sentence speaks of, by the name of its place in the sentence. */
export type SentenceValues = Readonly<Record<string, SentenceValue>>;

function write(value: SentenceValue): string {
  if (typeof value !== 'object') return String(value);
  if (!('width' in value)) return value.toJSON();
  const width = value.width.toJSON();
  const height = value.height.toJSON();
  return width === height ? width : `${width} by ${height}`;
}

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
