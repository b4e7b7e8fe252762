import type { Sentences } from '../plan/notice.js';

/** What is said of a seam, of drift and of blocks that came out at other sizes. */
export type SeamNoteCode =
  | 'seam-true'
  | 'seam-deep'
  | 'seam-scant'
  | 'oversize-short'
  | 'coping-narrow';

/** The English sentences, with their places open. */
export const seamSentences: Sentences<SeamNoteCode> = {
  'seam-true': 'The seam is {seam}, as it should be.',
  'seam-deep': 'The seam is {seam}, which is {by} deeper than {wanted}: every strip shows less.',
  'seam-scant': 'The seam is {seam}, which is {by} less than {wanted}: every strip shows more.',
  'oversize-short':
    'The {kind} strips, cut {cut}, are trimmed by {oversize}, and this seam takes {needed}: cut them {better}.',
  'coping-narrow':
    'Coping strips that finish {finished} are narrower than {least}. Let the blocks finish {better} and they are {least}.',
};
