import type { ErrorCode } from '@eighths/core';
import { en } from './en.js';

type English = typeof en;

/** A catalog: every message that is a text by itself, and the sentences and words by their codes. */
export type Messages = Readonly<Omit<English, 'words' | 'sentences' | 'errors'>> & {
  readonly words: Readonly<Record<keyof English['words'], string>>;
  readonly sentences: Readonly<Record<keyof English['sentences'], string>>;
  readonly errors: Readonly<Partial<Record<ErrorCode, string>>>;
};

/** The name of a message that is a text by itself. */
export type MessageName = keyof Omit<English, 'words' | 'sentences' | 'errors'>;

/** The name of a word in a drawing or a sentence. */
export type WordName = keyof English['words'];

export const messages: Messages = en;
