import { joinedStrips } from '../joinedStrips.js';
import { bindingBasics } from './basics.js';
import { biasStrips } from './biasStrips.js';
import { continuousBias } from './continuousBias.js';
import type { Binding, StraightBinding } from './plan.js';
import { type BindingTask, readBinding } from './readBinding.js';
import type { BindingSpec } from './spec.js';

function straight(task: BindingTask): StraightBinding {
  const { needed, strip, fabricWidth } = task;
  const { count, length, joins } = joinedStrips(needed, strip, fabricWidth, 'strip');
  return {
    ...bindingBasics(task, length),
    cut: 'straight',
    strips: count,
    fabric: strip.times(count),
    joins,
    pieces: [{ label: 'binding', width: strip, length: fabricWidth, count }],
    warnings: [],
  };
}

/**
 * Binding for a quilt's edge: the perimeter and `extra` for corners and ends, in strips joined on the
 * diagonal.
 *
 * Straight: n strips across fabric of usable width U make nU − (n − 1)w exactly, since each join takes
 * the strip's width. Continuous, from a square of side S: k = ⌊(S − 2s)/(w√2)⌋ whole strips make
 * k√2(S − 2s); the customary S²/w promises more than that. On the bias in single strips: what their
 * middles measure, less 2s√2 a join. Sides of squares are the least on the grid that are enough; nothing
 * else is rounded.
 *
 * @throws EighthsError `missing-field`, `unknown-field`, `not-positive`, `out-of-range`,
 *   `strip-too-wide`, `unknown-choice` and others
 * @example
 * const { perimeter, strips, length, fabric } = binding({ quilt: { width: 70, height: 86 } });
 * perimeter.toString(); // '312'
 * strips; // 9
 * length.toString(); // '340'
 * fabric.toString(); // '22 1/2'
 */
export function binding(spec: BindingSpec & { readonly cut?: 'straight' }): StraightBinding;
export function binding(spec: BindingSpec): Binding;
export function binding(spec: BindingSpec): Binding {
  const task = readBinding(spec);
  switch (task.cut) {
    case 'straight':
      return straight(task);
    case 'bias-strips':
      return biasStrips(task);
    case 'bias-continuous':
      return continuousBias(task);
  }
}
