import type { ErrorCode } from '@eighths/core';
import { en } from './en.js';
import type { enFabric } from './enFabric.js';
import type { enUnit } from './enUnit.js';

type English = typeof en;

/** The messages that are texts by themselves; an element carries only those it says. */
export type Texts = Readonly<Partial<Record<MessageName, string>>>;

/** A catalog: messages that are texts by themselves, and the sentences and words by their codes. */
export type Messages = Texts & {
  readonly words: Readonly<Record<keyof English['words'], string>>;
  readonly sentences: Readonly<Record<keyof English['sentences'], string>>;
  readonly errors: Readonly<Partial<Record<ErrorCode, string>>>;
};

/** The name of a message that is a text by itself. */
export type MessageName =
  | keyof Omit<English, 'words' | 'sentences' | 'errors'>
  | keyof typeof enFabric
  | keyof typeof enUnit;

/** The name of a word in a drawing or a sentence. */
export type WordName = keyof English['words'];

export const messages: Messages = en;
