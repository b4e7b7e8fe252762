import type { Sentences } from '../plan/notice.js';

/** Every code a log cabin's warning can carry. */
export type LogCabinWarningCode =
  | 'narrow-log'
  | 'narrow-center'
  | 'log-off-grid'
  | 'strip-off-grid'
  | 'center-off-grid'
  | 'finished-off-grid'
  | 'trim-off-grid';

/** The English sentences of a log cabin's warnings, with their places open. */
export const logCabinSentences: Sentences<LogCabinWarningCode> = {
  'narrow-log':
    'Logs that finish {finished} are narrower than two seam allowances: each seam will catch the allowances of the one before.',
  'narrow-center':
    'A center that finishes {finished} is narrower than two seam allowances: its seams will catch each other.',
  'log-off-grid':
    'A strip for logs that finish {finished} is exactly {exact} wide. Cut at {cut}, it adds {adds} to a block that is not trimmed.',
  'strip-off-grid':
    'A strip {exact} wide lies between two lines of the grid: it is cut at {cut}, and trimming takes off the difference.',
  'center-off-grid':
    'The center is exactly {exact} when cut. Cut at {cut}, it adds {adds} to the block unless it is trimmed first.',
  'finished-off-grid':
    'The block finishes {finished}, which is {by} beyond a line of the {grid} grid.',
  'trim-off-grid':
    'In round {rounds} a trim line lies between two lines of the {grid} grid, {by} beyond one.',
};
