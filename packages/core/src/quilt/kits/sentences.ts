import type { Sentences } from '../../plan/notice.js';

/** Every code a warning about kits can carry. */
export type KitWarningCode = 'sold-below-cost' | 'no-price';

/** The English sentences of warnings about kits, with their places open. */
export const kitSentences: Sentences<KitWarningCode> = {
  'sold-below-cost': 'A kit costs more than it is sold for.',
  'no-price': '{fabric} has no price, so that it is not known what a kit costs.',
};
