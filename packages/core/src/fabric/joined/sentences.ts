import type { Sentences } from '../../plan/notice.js';

/** Every code a step of joining strips, or of cutting a block along the length, can carry. */
export type JoinStepCode =
  | 'cut-block'
  | 'join-straight'
  | 'join-diagonal'
  | 'cut-length-one'
  | 'cut-length-several';

/** Every code a warning of joined strips can carry. */
export type JoinWarningCode = 'join-at-cut';

/** Every code a warning of a plan for all of a fabric can carry. */
export type FabricWarningCode = JoinWarningCode | 'lies-along' | 'length-not-proven';

/** The English sentences of joined strips and of plans for all of a fabric. */
export const joinSentences: Sentences<JoinStepCode | FabricWarningCode> = {
  'cut-block':
    'Square up the end of the fabric, and cut off a block {length} long for the pieces that are cut along the length.',
  'join-straight':
    'Join {strips} strips {width} wide end to end with straight seams of {seam}: one length of {total}.',
  'join-diagonal':
    'Join {strips} strips {width} wide with diagonal seams, laying the ends across each other at right angles, and trim to {seam} beside the seams: one length of {total}.',
  'cut-length-one': 'From this length cut 1 piece {length}.',
  'cut-length-several': 'From this length cut {count} pieces {length}.',
  'join-at-cut':
    '{count} of the joins lie where two pieces are cut apart. Cut the pieces in another order, or cut a little off first, if the seam must not lie there.',
  'lies-along':
    'The piece {piece} is longer than the fabric is wide, so it is cut along the length of the fabric: a directional print lies the other way on it.',
  'length-not-proven':
    'This plan takes {length} of fabric. At least {lowerBound} is needed; whether less than the plan would do is not proven.',
};
