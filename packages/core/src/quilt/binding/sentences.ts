import type { Sentences } from '../../plan/notice.js';

/** Every code a binding's warning can carry. */
export type BindingWarningCode = 'several-squares' | 'customary-short';

/** The English sentences of warnings about binding, with their places open. */
export const bindingSentences: Sentences<BindingWarningCode> = {
  'several-squares':
    'One square would be wider than the fabric, {fabricWidth}: {squares} squares of {square} are cut and their bindings joined.',
  'customary-short':
    'The customary rule, side times side by width, asks for a square of {customary} only. Whole strips and seams give {length} from that, and {needed} is needed.',
};
