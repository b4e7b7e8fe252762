import type { Length } from '../../length/length.js';
import {
  checkFields,
  choiceField,
  lengthBetween,
  missing,
  rationalField,
} from '../../plan/field.js';
import { boundedLength, boundedSize } from '../whole.js';
import type { BindingCut, BindingSpec } from './spec.js';

/** A binding's spec that was read. */
export interface BindingTask {
  readonly perimeter: Length;
  readonly extra: Length;
  /** The perimeter and the extra. */
  readonly needed: Length;
  readonly strip: Length;
  readonly cut: BindingCut;
  readonly fabricWidth: Length;
  readonly seam: Length;
  readonly grid: Length;
}

const FIELDS: readonly (keyof BindingSpec)[] = [
  'quilt',
  'strip',
  'cut',
  'fabricWidth',
  'extra',
  'seam',
  'grid',
];

/**
 * What a binding's spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readBinding(spec: BindingSpec): BindingTask {
  checkFields(spec, '', FIELDS);
  const { width, height } = boundedSize(spec.quilt ?? missing('quilt'), 'quilt');
  const perimeter = width.plus(height).times(2);
  const extra = boundedLength(spec.extra ?? 10, 'extra', 'zero or more');
  return {
    perimeter,
    extra,
    needed: perimeter.plus(extra),
    strip: rationalField(lengthBetween(spec.strip ?? '2 1/2', 'strip', '1/2', 12), 'strip'),
    cut: choiceField(spec.cut ?? 'straight', 'cut', ['straight', 'bias-strips', 'bias-continuous']),
    fabricWidth: rationalField(
      lengthBetween(spec.fabricWidth ?? 40, 'fabricWidth', 1, 1000),
      'fabricWidth',
    ),
    seam: rationalField(spec.seam ?? '1/4', 'seam'),
    grid: rationalField(spec.grid ?? '1/8', 'grid'),
  };
}
