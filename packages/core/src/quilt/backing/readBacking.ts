import { fail } from '../../errors/error.js';
import type { Length, LengthInput } from '../../length/length.js';
import {
  checkFields,
  countField,
  lengthBetween,
  listField,
  missing,
  rationalField,
} from '../../plan/field.js';
import type { Size } from '../../plan/size.js';
import { boundedLength, boundedSize } from '../whole.js';
import type { BackingSpec } from './spec.js';

/** A fabric to compare. */
export interface BackingFabric {
  readonly width: Length;
  readonly wide: boolean;
}

/** A backing's spec that was read. */
export interface BackingTask {
  readonly quilt: Size;
  readonly overhang: Length;
  readonly ordinary: BackingFabric;
  readonly wide: readonly BackingFabric[];
  readonly seam: Length;
  readonly increment: Length;
  readonly near: Length;
  readonly grid: Length;
}

const FIELDS: readonly (keyof BackingSpec)[] = [
  'quilt',
  'overhang',
  'width',
  'seam',
  'wide',
  'increment',
  'near',
  'grid',
];
const MOST_WIDTHS = 20;
const WIDE: readonly LengthInput[] = [108];

function readWidth(input: LengthInput, field: string, seam: Length): Length {
  const width = rationalField(lengthBetween(input, field, 1, 1000), field);
  if (width.compareTo(seam.times(2)) > 0) return width;
  return fail(
    'seam-too-wide',
    'seam',
    { seam, finished: width },
    'Fabric {finished} wide needs a seam allowance of less than half of that, not {seam}.',
  );
}

function readWide(input: readonly LengthInput[], seam: Length): readonly BackingFabric[] {
  const widths = listField(input, 'wide', 'widths');
  countField(widths.length, 'wide', 0, MOST_WIDTHS);
  return widths.map((each, index) => ({
    width: readWidth(each, `wide[${index}]`, seam),
    wide: true,
  }));
}

/**
 * What a backing's spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readBacking(spec: BackingSpec): BackingTask {
  checkFields(spec, '', FIELDS);
  const quilt = boundedSize(spec.quilt ?? missing('quilt'), 'quilt');
  const seam = rationalField(spec.seam ?? '1/2', 'seam');
  const width = readWidth(spec.width ?? 40, 'width', seam);
  return {
    quilt,
    overhang: boundedLength(spec.overhang ?? 4, 'overhang', 'zero or more'),
    ordinary: { width, wide: false },
    wide: readWide(spec.wide ?? WIDE, seam),
    seam,
    increment: rationalField(spec.increment ?? '1/8 yd', 'increment'),
    near: boundedLength(spec.near ?? 1, 'near', 'zero or more'),
    grid: rationalField(spec.grid ?? '1/8', 'grid'),
  };
}
