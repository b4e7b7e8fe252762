import type { Sentences } from '../../plan/notice.js';

/** Every code a step of a plan for precuts can carry besides those of the cuts. */
export type PrecutStepCode = 'find-edge';

/** Every code a warning of a plan for precuts can carry. */
export type PrecutWarningCode = 'does-not-fit' | 'fewer-not-ruled-out';

/** The English sentences of plans for precuts. */
export const precutSentences: Sentences<PrecutStepCode | PrecutWarningCode> = {
  'find-edge':
    'Precut edges are often pinked: measure whether {width} by {height} is to the peaks or to the valleys, and align there. Do not trim them first.',
  'does-not-fit':
    'No piece {piece} can be cut from a precut of which {width} by {height} is usable. {count} of them are left out.',
  'fewer-not-ruled-out':
    'These pieces can be cut from {needed} precuts. At least {fewest} are needed; whether fewer than {needed} would do is not proven.',
};
