import type { Sentences } from '../../plan/notice.js';

/** Every code a border's warning can carry. */
export type BorderWarningCode = 'measured-differs' | 'wide-border' | 'narrow-border';

/** The English sentences of warnings about borders, with their places open. */
export const borderSentences: Sentences<BorderWarningCode> = {
  'measured-differs':
    'The top measures {measured} and was to measure {planned}. Borders are cut to the measured size, and the top is eased to them.',
  'wide-border':
    'A border that finishes {width} on each side is wider all told than the quilt inside it, {quilt}.',
  'narrow-border':
    'A border that finishes {width} is narrower than two seam allowances: its seams will catch each other.',
};
