import { en } from './en.js';
import type { enFabric } from './enFabric.js';
import type { enLogCabin } from './enLogCabin.js';
import type { enQuilt } from './enQuilt.js';
import type { enUnit } from './enUnit.js';

type English = typeof en;

/** The messages that are texts by themselves; an element carries only those it says. */
export type Texts = Readonly<Partial<Record<MessageName, string>>>;

/** A catalog: messages that are texts by themselves, and the sentences and words by their codes. */
export type Messages = Texts & {
  readonly words: Readonly<Record<keyof English['words'], string>>;
  readonly sentences: Readonly<Record<keyof English['sentences'], string>>;
  /** By code, by code and reason, or by the English sentence. */
  readonly errors: Readonly<Record<string, string>>;
};

/** The name of a message that is a text by itself. */
export type MessageName =
  | keyof Omit<English, 'words' | 'sentences' | 'errors'>
  | keyof typeof enFabric
  | keyof typeof enLogCabin
  | keyof typeof enQuilt
  | keyof typeof enUnit;

/** The name of a word in a drawing or a sentence. */
export type WordName = keyof English['words'];

export const messages: Messages = en;
