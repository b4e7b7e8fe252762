import type { Sentences } from '../../plan/notice.js';

/** Every code a step of cutting a rectangle up can carry. */
export type PackStepCode = 'take-one' | 'take-several' | 'cut-rows' | 'cut-columns' | 'cut-pieces';

/** The English sentences of these steps; `{parts}` is what the parts measure, one after another. */
export const packSentences: Sentences<PackStepCode> = {
  'take-one': 'Take a rectangle of fabric {width} by {height}.',
  'take-several': 'Take {count} rectangles of fabric {width} by {height}, and cut each alike.',
  'cut-rows': 'Cut the rectangle {width} by {height} across, from the top: {parts}.',
  'cut-columns':
    'Cut the rectangle {width} by {height} from top to bottom, from the left: {parts}.',
  'cut-pieces': 'Cut the rectangle {width} by {height} into {count} pieces {across} by {down}.',
};
