import type { SentenceValues } from '../../errors/sentence.js';
import type { Length } from '../../length/length.js';
import type { Warning } from '../../plan/notice.js';
import { inWords } from '../../unit/say.js';
import type { BindingTask } from './readBinding.js';
import { type BindingWarningCode, bindingSentences } from './sentences.js';

/** What every binding repeats of its spec, and how much it makes beyond the need. */
export function bindingBasics(
  { perimeter, extra, needed, strip, fabricWidth }: BindingTask,
  length: Length,
): {
  readonly perimeter: Length;
  readonly extra: Length;
  readonly needed: Length;
  readonly strip: Length;
  readonly fabricWidth: Length;
  readonly length: Length;
  readonly leftOver: Length;
} {
  return {
    perimeter,
    extra,
    needed,
    strip,
    fabricWidth,
    length,
    leftOver: length.minus(needed),
  };
}

export const warn = (
  code: BindingWarningCode,
  field: string,
  values: SentenceValues,
): Warning<BindingWarningCode> => ({ ...inWords(bindingSentences, code, values), field });
