import type { Sentences } from '../../plan/notice.js';

/** Every code a step of a plan for fabric on hand can carry besides those of the cuts. */
export type OnHandStepCode = 'cut-apart';

/** Every code a warning of a plan for fabric on hand can carry. */
export type OnHandWarningCode = 'not-cut' | 'more-not-ruled-out' | 'blocks-not-proven';

/** The English sentences of plans for fabric on hand. */
export const onHandSentences: Sentences<OnHandStepCode | OnHandWarningCode> = {
  'cut-apart':
    'Fabric {piece} lacks a corner: cut it apart into a rectangle of {first} and one of {second}.',
  'not-cut': 'The fabric on hand lacks {count} of the piece {piece}.',
  'more-not-ruled-out':
    'Whether more of these pieces could be cut from the fabric on hand is not proven.',
  'blocks-not-proven':
    'There is fabric for {blocks} blocks, and for at most {bound}; whether more than {blocks} can be cut is not proven.',
};
