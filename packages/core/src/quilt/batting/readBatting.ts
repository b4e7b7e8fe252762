import type { Length } from '../../length/length.js';
import {
  checkFields,
  countField,
  lengthBetween,
  listField,
  missing,
  rationalField,
} from '../../plan/field.js';
import type { Size, SizeInput } from '../../plan/size.js';
import { boundedLength, boundedSize } from '../whole.js';
import { BATTING_PACKAGES } from './packages.js';
import type { BattingSpec } from './spec.js';

/** A batting's spec that was read. */
export interface BattingTask {
  readonly quilt: Size;
  readonly overhang: Length;
  readonly packages: readonly Size[];
  readonly rollWidth: Length;
  readonly increment: Length;
  readonly near: Length;
  readonly grid: Length;
}

const FIELDS: readonly (keyof BattingSpec)[] = [
  'quilt',
  'overhang',
  'packages',
  'rollWidth',
  'increment',
  'near',
  'grid',
];
const MOST_PACKAGES = 100;

function readPackages(input: readonly SizeInput[]): readonly Size[] {
  const sizes = listField(input, 'packages', 'sizes');
  countField(sizes.length, 'packages', 0, MOST_PACKAGES);
  return sizes.map((size, index) => boundedSize(size, `packages[${index}]`));
}

/**
 * What a batting's spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readBatting(spec: BattingSpec): BattingTask {
  checkFields(spec, '', FIELDS);
  const rollWidth = lengthBetween(spec.rollWidth ?? 96, 'rollWidth', 1, 1000);
  return {
    quilt: boundedSize(spec.quilt ?? missing('quilt'), 'quilt'),
    overhang: boundedLength(spec.overhang ?? 4, 'overhang', 'zero or more'),
    packages: readPackages(spec.packages ?? BATTING_PACKAGES),
    rollWidth: rationalField(rollWidth, 'rollWidth'),
    increment: rationalField(spec.increment ?? '1/8 yd', 'increment'),
    near: boundedLength(spec.near ?? 1, 'near', 'zero or more'),
    grid: rationalField(spec.grid ?? '1/8', 'grid'),
  };
}
