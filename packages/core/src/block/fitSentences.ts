import type { Sentences } from '../plan/notice.js';

/** What decides the order of fits. */
export type FitCriterion =
  | 'ratio'
  | 'center'
  | 'thin-parts'
  | 'center-like-round'
  | 'fabric'
  | 'size';

/** What the finder says beside its fits. */
export type FitNoteCode =
  | 'fits-left-out'
  | 'sizes-left-out'
  | 'relax-least'
  | 'relax-most'
  | 'relax-strip'
  | 'relax-least-trim'
  | 'relax-rounds'
  | 'relax-grid';

/** The English sentences of the finder, with their places open. */
export const fitSentences: Sentences<FitCriterion | FitNoteCode> = {
  ratio: 'Wide : narrow is closest to the ratio wished for.',
  center: 'The center is closest to the one wished for.',
  'thin-parts': 'The fewest kinds of parts are narrower than two seam allowances.',
  'center-like-round': 'The center is closest to what one round adds.',
  fabric: 'It takes the least fabric.',
  size: 'The block is smaller, and then its center.',
  'fits-left-out':
    'There are {total} blocks like this. The best {shown} are given, {leftOut} are left out.',
  'sizes-left-out':
    'There are too many blocks to look at each. Those that finish from {least} to {most} were looked at; narrow the limits for the others.',
  'relax-least': 'It works out with {part} down to {value}, instead of {limit} at least.',
  'relax-most': 'It works out with {part} up to {value}, instead of {limit} at most.',
  'relax-strip': 'It works out with strips for {part} logs cut {value}, instead of {limit}.',
  'relax-least-trim': 'It works out where trimming takes off {value} at least, instead of {limit}.',
  'relax-rounds': 'It works out with {value} rounds instead of {limit}.',
  'relax-grid': 'It works out on a grid of {value} instead of {limit}.',
};
