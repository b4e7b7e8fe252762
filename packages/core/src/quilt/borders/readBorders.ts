import { fail } from '../../errors/error.js';
import type { Length } from '../../length/length.js';
import { shorterOf } from '../../length/longer.js';
import {
  checkFields,
  choiceField,
  countField,
  listField,
  missing,
  rationalField,
} from '../../plan/field.js';
import type { Size, SizeInput } from '../../plan/size.js';
import { boundedLength, boundedSize } from '../whole.js';
import type { BorderGrain, BorderSpec, BorderStyle, QuiltBordersSpec } from './spec.js';

/** A border's spec that was read. */
export interface BorderTask {
  readonly width: Length;
  readonly style: BorderStyle;
  readonly corners: 'none' | 'squares';
  readonly cut: BorderGrain;
  readonly fabricWidth: Length;
  readonly extra: Length;
  readonly unit: Length | undefined;
  /** The path of its fields. */
  readonly field: string;
}

/** The spec of a quilt's borders that was read. */
export interface BordersTask {
  readonly quilt: Size;
  readonly borders: readonly BorderTask[];
  readonly measured: Size | undefined;
  readonly seam: Length;
  readonly grid: Length;
}

const FIELDS: readonly (keyof QuiltBordersSpec)[] = [
  'quilt',
  'borders',
  'measured',
  'seam',
  'grid',
];
const BORDER_FIELDS: readonly (keyof BorderSpec)[] = [
  'width',
  'style',
  'corners',
  'cut',
  'fabricWidth',
  'extra',
  'unit',
];
const MOST_BORDERS = 20;

function conflict(field: string, one: string, other: string): never {
  return fail(
    'conflicting-fields',
    field,
    { one, other },
    'A {one} border has no “{other}”. Leave it out, or choose another style.',
  );
}

function readBorder(spec: BorderSpec, field: string): BorderTask {
  checkFields(spec, field, BORDER_FIELDS);
  const at = (name: keyof BorderSpec): string => `${field}.${name}`;
  const style = choiceField(spec.style ?? 'straight', at('style'), [
    'straight',
    'mitered',
    'pieced',
  ]);
  const corners = choiceField(spec.corners ?? 'none', at('corners'), ['none', 'squares']);
  if (style === 'mitered' && corners === 'squares') conflict(at('corners'), style, 'squares');
  if (style !== 'mitered' && spec.extra !== undefined) conflict(at('extra'), style, 'extra');
  if (style !== 'pieced' && spec.unit !== undefined) conflict(at('unit'), style, 'unit');
  if (style === 'pieced' && spec.cut !== undefined) conflict(at('cut'), style, 'cut');
  if (style === 'pieced' && spec.unit === undefined) missing(at('unit'));
  const fabricWidth = boundedLength(spec.fabricWidth ?? 40, at('fabricWidth'));
  return {
    width: rationalField(
      boundedLength(spec.width ?? missing(at('width')), at('width')),
      at('width'),
    ),
    style,
    corners,
    cut: choiceField(spec.cut ?? 'crosswise', at('cut'), ['crosswise', 'lengthwise']),
    fabricWidth: rationalField(fabricWidth, at('fabricWidth')),
    extra: boundedLength(spec.extra ?? 4, at('extra'), 'zero or more'),
    unit: spec.unit === undefined ? undefined : boundedLength(spec.unit, at('unit')),
    field,
  };
}

/** A top as it was measured, of which more than its seam allowances shows. */
function readMeasured(input: SizeInput, seam: Length): Size {
  const measured = boundedSize(input, 'measured');
  const shorter = shorterOf(measured.width, measured.height);
  if (shorter.compareTo(seam.times(2)) > 0) return measured;
  return fail(
    'seam-too-wide',
    'measured',
    { seam, finished: shorter },
    'A top is measured raw edge to raw edge and has a seam allowance of {seam} on every side: {finished} is not enough.',
  );
}

/**
 * What a spec of borders asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readBorders(spec: QuiltBordersSpec): BordersTask {
  checkFields(spec, '', FIELDS);
  const borders = listField(spec.borders ?? missing('borders'), 'borders', 'borders');
  countField(borders.length, 'borders', 1, MOST_BORDERS);
  const seam = rationalField(spec.seam ?? '1/4', 'seam');
  return {
    quilt: boundedSize(spec.quilt ?? missing('quilt'), 'quilt'),
    borders: borders.map((border, index) => readBorder(border, `borders[${index}]`)),
    measured: spec.measured === undefined ? undefined : readMeasured(spec.measured, seam),
    seam,
    grid: rationalField(spec.grid ?? '1/8', 'grid'),
  };
}
