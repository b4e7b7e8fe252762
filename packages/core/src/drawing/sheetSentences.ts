import type { Sentences } from '../plan/notice.js';

/** What is said on a sheet of paper. */
export type SheetNoteCode = 'measure-first' | 'never-cut-against' | 'join' | 'page';

/** The English sentences, with their places open. */
export const sheetSentences: Sentences<SheetNoteCode> = {
  'measure-first':
    'Print at 100 %. Before use, measure this square: its small corner is 1 inch, the whole 5 cm. If it is not, the sheet is wrong.',
  'never-cut-against':
    'Never cut against paper: it is for checking, for tracing, or taped under an acrylic ruler.',
  join: 'Lay the crosses of two sheets on each other: letter on letter.',
  page: 'Page {page} of {pages}: row {row}, column {column}',
};
