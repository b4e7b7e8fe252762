import {
  type DrawingWord,
  type EighthsError,
  type ErrorCode,
  fillSentence,
  type Notice,
  type SentenceValue,
  type SentenceValues,
} from '@eighths/core';
import type { Catalog } from '../messages/catalog.js';
import type { MessageName, Messages, WordName } from '../messages/messages.js';
import { type Measures, type ValueWriting, valueWriter } from './measures.js';

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
  /** Several of them in one line. */
  readonly list: (texts: readonly string[]) => string;
  /** What a plan or a drawing says. */
  readonly notice: (notice: Notice<string>) => string;
  readonly error: (error: EighthsError) => string;
  readonly drawingWords: Readonly<Partial<Record<DrawingWord, string>>>;
  /** The other language's messages, where there is one. */
  readonly catalog: Catalog | undefined;
}

/** What a page has written is repeated in its errors as it is, and so are the words it may write. */
const VERBATIM: readonly ErrorCode[] = [
  'length-syntax',
  'not-a-count',
  'unknown-choice',
  'unknown-field',
  'missing-field',
  'not-loaded',
];

const has = <Key extends string>(table: Readonly<Record<Key, unknown>>, key: string): key is Key =>
  Object.hasOwn(table, key);

/** Fabrics of the same kind are told apart by numbers: `rail 3`. */
const NUMBERED = /^(\D+) (\d{1,2})$/;

export function voiceOf(messages: Messages, measures: Measures, catalog?: Catalog): Voice {
  const { words, sentences, errors } = messages;
  const known = (text: string): string | undefined =>
    has<WordName>(words, text) ? words[text] : undefined;
  const word = (text: string): string => {
    const [, name = '', number] = NUMBERED.exec(text) ?? [];
    const numbered = catalog && known(name);
    return known(text) ?? (numbered === undefined ? text : `${numbered} ${number}`);
  };
  const template = (name: MessageName): string => messages[name] ?? name;
  const [by, comma] = [template('by'), template('comma')];
  const writing: ValueWriting = { write: measures.figures, count: measures.count, word, by, comma };
  const shown = valueWriter(writing);
  const spoken = valueWriter({ ...writing, write: measures.spoken });
  const verbatim = valueWriter({ ...writing, word: (text) => text });
  /** The sentence of the very case, of its reason, of its code, or the core's own. */
  const errorTemplate = ({ code, values, template: english }: EighthsError): string =>
    errors[english] ?? errors[`${code} ${values.reason}`] ?? errors[code] ?? english;
  return {
    measures,
    template,
    catalog,
    write: shown,
    say: (name, values = {}) => fillSentence(template(name), values, shown),
    speak: (name, values = {}) => fillSentence(template(name), values, spoken),
    word,
    list: (texts) => texts.map(word).join(comma),
    notice: ({ code, values, text }) =>
      has(sentences, code) ? fillSentence(sentences[code], values, shown) : text,
    error: (error) =>
      fillSentence(
        errorTemplate(error),
        error.values,
        VERBATIM.includes(error.code) ? verbatim : shown,
      ),
    drawingWords: words,
  };
}
