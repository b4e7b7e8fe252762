import type { Catalog, Room, TextGroup } from '../messages/catalog.js';
import type { Messages } from '../messages/messages.js';

/** What an element says: where it looks in a catalog. What comes later in a list wins. */
export interface Vocabulary {
  readonly texts: readonly TextGroup[];
  /** Whose sentences of the core. */
  readonly rooms: readonly Room[];
}

/** An element's English messages, and over them what a catalog has for them. */
export function translated(
  english: Messages,
  catalog: Catalog | undefined,
  { texts, rooms }: Vocabulary,
): Messages {
  if (catalog === undefined) return english;
  let shown = english;
  for (const group of texts) shown = { ...shown, ...catalog.texts[group] };
  let { sentences } = english;
  for (const room of rooms) sentences = { ...sentences, ...catalog.sentences[room] };
  return {
    ...shown,
    words: { ...english.words, ...catalog.words },
    sentences,
    errors: { ...english.errors, ...catalog.errors },
  };
}
