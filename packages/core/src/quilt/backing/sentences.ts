import type { Sentences } from '../../plan/notice.js';

/** Every code a note on backing can carry. */
export type BackingNoteCode = 'near-miss';

/** The English sentences of notes on backing, with their places open. */
export const backingSentences: Sentences<BackingNoteCode> = {
  'near-miss':
    '{less} less overhang on each side, {overhang} in place of {asked}, takes {length} of the fabric {width} wide in place of {full}: {yards} less to buy.',
};
