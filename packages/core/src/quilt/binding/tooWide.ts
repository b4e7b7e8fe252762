import { fail } from '../../errors/error.js';
import type { BindingTask } from './readBinding.js';

/** @throws EighthsError `strip-too-wide` */
export function tooWide({ strip, fabricWidth }: BindingTask): never {
  return fail(
    'strip-too-wide',
    'strip',
    { strip, width: fabricWidth },
    'No binding {strip} wide can be cut on the bias from fabric {width} wide. Take narrower strips or wider fabric.',
  );
}
