import { fillSentence, type SentenceValue, type SentenceValues } from '../errors/sentence.js';

/**
 * Something a plan says: a code of a closed list, what the sentence speaks of, and the sentence in
 * English. Other languages are written from the code and the values.
 */
export interface Notice<Code extends string> {
  readonly code: Code;
  readonly values: SentenceValues;
  readonly text: string;
}

/** What a person should know of a plan that can be made all the same. */
export interface Warning<Code extends string = string> extends Notice<Code> {
  /** The path of the input it is about. */
  readonly field: string;
}

/** One thing to do, in words. */
export type Step<Code extends string = string> = Notice<Code>;

/** A room's sentences by code, with their places open. */
export type Sentences<Code extends string> = Readonly<Record<Code, string>>;

/**
 * A warning or a step, with its sentence filled.
 *
 * @param write how a value is written; by default lengths stand in inches, exactly.
 */
export const notice = <Code extends string>(
  sentences: Sentences<Code>,
  code: Code,
  values: SentenceValues,
  write?: (value: SentenceValue) => string,
): Notice<Code> => ({ code, values, text: fillSentence(sentences[code], values, write) });

/** Warns from one table of sentences, in which other things may be said as well. */
export const warningsFrom =
  <Code extends string>(sentences: Sentences<Code>, write?: (value: SentenceValue) => string) =>
  <Own extends Code>(code: Own, field: string, values: SentenceValues = {}): Warning<Own> => ({
    ...notice<Own>(sentences, code, values, write),
    field,
  });
