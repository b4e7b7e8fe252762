import {
  backingSentences,
  bindingSentences,
  borderSentences,
  cuttingSentences,
  fillSentence,
  kitSentences,
  layoutSentences,
  logCabinSentences,
  type Notice,
  patternSentences,
  tableSentences,
  unitSentences,
} from '@eighths/core';
import type { Voice } from '../base/voice.js';
import type { Room } from '../messages/catalog.js';

/** Whose sentences a whole quilt speaks in. */
const ROOMS: readonly (readonly [room: Room, sentences: Readonly<Record<string, string>>])[] = [
  ['pattern', patternSentences],
  ['kits', kitSentences],
  ['layout', layoutSentences],
  ['borders', borderSentences],
  ['binding', bindingSentences],
  ['backing', backingSentences],
  ['logCabin', logCabinSentences],
  ['table', tableSentences],
  ['unit', unitSentences],
  ['cutting', cuttingSentences],
];

/**
 * What a plan says, in the element's language and units. Two rooms may have one code for sentences of
 * their own: the text tells which was filled.
 *
 * @param names what people call the fabrics that it speaks of, by their ids.
 */
export function said(
  { code, values, text }: Notice<string>,
  voice: Voice,
  names: ReadonlyMap<string, string>,
): string {
  for (const [room, english] of ROOMS) {
    const own = english[code];
    if (own === undefined || fillSentence(own, values) !== text) continue;
    const others: Readonly<Record<string, string>> = voice.catalog?.sentences[room] ?? {};
    return fillSentence(others[code] ?? own, values, (value, name) =>
      name === 'fabric' ? (names.get(String(value)) ?? String(value)) : voice.write(value),
    );
  }
  return text;
}
