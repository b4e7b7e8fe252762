import type { Length } from '../../length/length.js';
import { warningsFrom } from '../../unit/say.js';
import type { BindingTask } from './readBinding.js';
import { bindingSentences } from './sentences.js';

/** What every binding repeats of its spec, and how much it makes beyond the need. */
export const bindingBasics = (
  { perimeter, extra, needed, strip, fabricWidth }: BindingTask,
  length: Length,
) => ({
  perimeter,
  extra,
  needed,
  strip,
  fabricWidth,
  length,
  leftOver: length.minus(needed),
});

export const warn = warningsFrom(bindingSentences);
