import type { Voice } from '../base/voice.js';

/** A name of the data as a person reads it: its word in the catalog, else the name itself. */
export function nameOf(name: string, voice: Voice, kind = ''): string {
  const key = kind === '' ? name : `${kind} ${name}`;
  const word = voice.word(key);
  return word === key ? voice.word(name).replace(/-/g, ' ') : word;
}

/** The same at the head of a line. */
export function titleOf(name: string, voice: Voice, kind = ''): string {
  const words = nameOf(name, voice, kind);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
