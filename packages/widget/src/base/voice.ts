import {
  type DrawingWord,
  type EighthsError,
  fillSentence,
  type LengthInput,
  type Notice,
  type SentenceValue,
  type SentenceValues,
} from '@eighths/core';
import type { MessageName, Messages, WordName } from '../messages/messages.js';
import { type Measures, valueWriter } from './measures.js';

/** An element's words and numbers, in its language and units. */
export interface Voice {
  readonly measures: Measures;
  /** A message, its places filled. */
  readonly say: (name: MessageName, values?: SentenceValues) => string;
  /** A message with its places open. */
  readonly template: (name: MessageName) => string;
  /** The same as `say` with its lengths spoken out. */
  readonly speak: (name: MessageName, values?: SentenceValues) => string;
  /** A value of a sentence in figures. */
  readonly write: (value: SentenceValue) => string;
  /** A word such as a side's; a text that is no known word (a fabric's name) stays as it is. */
  readonly word: (text: string) => string;
  /** What a plan or a drawing says. */
  readonly notice: (notice: Notice<string>) => string;
  readonly error: (error: EighthsError) => string;
  readonly drawingWords: Readonly<Partial<Record<DrawingWord, string>>>;
}

const has = <Key extends string>(table: Readonly<Record<Key, unknown>>, key: string): key is Key =>
  Object.hasOwn(table, key);

export function voiceOf(messages: Messages, measures: Measures): Voice {
  const { words, sentences, errors } = messages;
  const word = (text: string): string => (has<WordName>(words, text) ? words[text] : text);
  const template = (name: MessageName): string => messages[name] ?? name;
  const writer = (write: (value: LengthInput) => string) =>
    valueWriter(write, word, template('by'));
  const shown = writer(measures.figures);
  const spoken = writer(measures.spoken);
  return {
    measures,
    template,
    write: shown,
    say: (name, values = {}) => fillSentence(template(name), values, shown),
    speak: (name, values = {}) => fillSentence(template(name), values, spoken),
    word,
    notice: ({ code, values, text }) =>
      has(sentences, code) ? fillSentence(sentences[code], values, shown) : text,
    error: ({ code, values, template }) => fillSentence(errors[code] ?? template, values, shown),
    drawingWords: words,
  };
}
