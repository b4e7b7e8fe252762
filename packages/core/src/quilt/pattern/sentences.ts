import type { Sentences } from '../../plan/notice.js';

/** Every code a warning about a pattern as a whole can carry. */
export type PatternWarningCode =
  | 'directional-turned'
  | 'directional-sides'
  | 'directional-borders'
  | 'fabric-unused';

/** The English sentences of warnings about patterns, with their places open. */
export const patternSentences: Sentences<PatternWarningCode> = {
  'directional-turned':
    'The print of {fabric} has an up and a down, and blocks that it is in are turned: it turns with them.',
  'directional-sides':
    'The print of {fabric} has an up and a down, and in block {block} it lies along all sides that it is on: strips cut one way stand upright on some and lie down on others.',
  'directional-borders':
    'The print of {fabric} has an up and a down: in border {border}, strips cut one way stand upright on two sides and lie down on the other two.',
  'fabric-unused': 'Nothing is cut from {fabric} in this size.',
};
