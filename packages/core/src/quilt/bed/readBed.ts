import { fail } from '../../errors/error.js';
import { type Length, length } from '../../length/length.js';
import { longerOf, shorterOf } from '../../length/longer.js';
import {
  checkFields,
  choiceField,
  countField,
  lengthBetween,
  lengthField,
  missing,
  rationalField,
} from '../../plan/field.js';
import type { Size, SizeInput } from '../../plan/size.js';
import { checkSquare } from '../layout/readLayout.js';
import type { TopMeasures } from '../layout/topSize.js';
import { boundedLength, boundedSize } from '../whole.js';
import { MATTRESSES, type MattressName } from './mattresses.js';
import type { BedQuiltSpec, DropInput } from './spec.js';

/** A bed's spec that was read. */
export interface BedTask {
  readonly mattress: Size;
  readonly tuck: Length;
  /** What the quilt is to measure in use, and before quilting and washing take their part. */
  readonly wanted: Size;
  readonly target: Size;
  /** The part of its size that the quilt keeps. */
  readonly kept: Length;
  readonly top: Omit<TopMeasures, 'across' | 'down'>;
  readonly border: { readonly least: Length; readonly most: Length };
  readonly grid: Length;
  readonly counts: 'any' | 'even' | 'odd';
  readonly within: Length;
  readonly most: number;
}

const FIELDS: readonly (keyof BedQuiltSpec)[] = [
  'mattress',
  'drop',
  'tuck',
  'block',
  'setting',
  'sashing',
  'border',
  'grid',
  'counts',
  'shrinkage',
  'within',
  'most',
];

/** A layout that lies farther from the target than this is for another bed. */
const FARTHEST = 24;

const isName = (input: MattressName | SizeInput): input is MattressName =>
  typeof input === 'string' && Object.hasOwn(MATTRESSES, input);

function readMattress(input: MattressName | SizeInput): Size {
  if (isName(input)) {
    const { width, height } = MATTRESSES[input];
    return { width: length(width), height: length(height) };
  }
  if (typeof input === 'string' && /^\s*\p{L}/u.test(input)) {
    fail(
      'unknown-choice',
      'mattress',
      { value: input, choices: Object.keys(MATTRESSES).join(', ') },
      'There is no mattress “{value}” here. Give one of {choices}, or a width and a height.',
    );
  }
  return boundedSize(input, 'mattress');
}

function readDrop(input: DropInput): { readonly sides: Length; readonly foot: Length } {
  if (typeof input !== 'object' || input === null || !('sides' in input)) {
    const drop = boundedLength(input, 'drop', 'zero or more');
    return { sides: drop, foot: drop };
  }
  checkFields(input, 'drop', ['sides', 'foot']);
  return {
    sides: boundedLength(input.sides, 'drop.sides', 'zero or more'),
    foot: boundedLength(input.foot ?? missing('drop.foot'), 'drop.foot', 'zero or more'),
  };
}

function readKept(input: number | string): Length {
  const value = lengthField(input, 'shrinkage', 'any');
  const limit = length('1/2');
  if (value.sign() >= 0 && value.compareTo(limit) <= 0 && value.toFraction() !== undefined)
    return length(1).minus(value);
  return fail(
    'not-a-shrinkage',
    'shrinkage',
    { value },
    'Shrinkage is a part of the size, from 0 to one half (0.03 for three in a hundred), not {value}.',
  );
}

function readBorder(input: BedQuiltSpec['border'], { width, height }: Size): BedTask['border'] {
  const { least = 0, most } = input ?? {};
  checkFields(input ?? {}, 'border', ['least', 'most']);
  const from = boundedLength(least, 'border.least', 'zero or more');
  const usual = longerOf(from, shorterOf(width, height));
  const to = most === undefined ? usual : boundedLength(most, 'border.most', 'zero or more');
  if (from.compareTo(to) > 0) {
    fail(
      'limits-cross',
      'border',
      { least: from, most: to },
      'Borders of at least {least} cannot be at most {most}. Make the first no more than the second.',
    );
  }
  return { least: from, most: to };
}

function readTop(spec: BedQuiltSpec): BedTask['top'] {
  const block = boundedSize(spec.block ?? missing('block'), 'block');
  const setting = choiceField(spec.setting ?? 'straight', 'setting', ['straight', 'on-point']);
  if (setting === 'on-point') checkSquare(block, setting);
  const { sashing } = spec;
  if (sashing === undefined) return { block, setting, sashing: undefined };
  checkFields(sashing, 'sashing', ['width', 'outer']);
  const width = boundedLength(sashing.width ?? missing('sashing.width'), 'sashing.width');
  return { block, setting, sashing: { width, outer: sashing.outer ?? false } };
}

/**
 * What a bed's spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readBed(spec: BedQuiltSpec): BedTask {
  checkFields(spec, '', FIELDS);
  const mattress = readMattress(spec.mattress ?? missing('mattress'));
  const drop = readDrop(spec.drop ?? 12);
  const tuck = boundedLength(spec.tuck ?? 0, 'tuck', 'zero or more');
  const kept = readKept(spec.shrinkage ?? 0);
  const wanted = {
    width: mattress.width.plus(drop.sides.times(2)),
    height: mattress.height.plus(drop.foot).plus(tuck),
  };
  const top = readTop(spec);
  return {
    mattress,
    tuck,
    wanted,
    target: { width: wanted.width.dividedBy(kept), height: wanted.height.dividedBy(kept) },
    kept,
    top,
    border: readBorder(spec.border, top.block),
    grid: rationalField(spec.grid ?? '1/2', 'grid'),
    counts: choiceField(spec.counts ?? 'any', 'counts', ['any', 'even', 'odd']),
    within: lengthBetween(spec.within ?? 3, 'within', 0, FARTHEST, 'zero or more'),
    most: countField(spec.most ?? 12, 'most', 1, 1000),
  };
}
