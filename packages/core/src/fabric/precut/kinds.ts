import { fail } from '../../errors/error.js';
import { type Length, type LengthInput, length } from '../../length/length.js';
import { checkFields, choiceField } from '../../plan/field.js';
import { fabricSide, LONGEST } from '../pack/readFabric.js';

/** The sizes that fabric is sold in besides by the yard. */
export type PrecutName = 'fat-quarter' | 'fat-eighth' | 'strip-2-1/2' | 'square-5' | 'square-10';

/** `width` lies along the width of the fabric it came from, `length` down that fabric. */
export interface PrecutSizeInput {
  readonly width: LengthInput;
  readonly length: LengthInput;
}

/** A precut's size. */
export interface PrecutSize {
  readonly width: Length;
  readonly length: Length;
}

/** A kind of precut, as sold and as it can be used. */
export interface PrecutKind {
  readonly nominal: PrecutSize;
  readonly usable: PrecutSize;
  /** Whether it has edges that may be pinked and are not squared up. */
  readonly pinked: boolean;
}

/** What squaring up takes of a fat quarter or a fat eighth, each way. */
const SQUARING = '1/2';
/** What both selvages take of a strip. */
const SELVAGES = 2;

/** All kinds by name, from the width that the fabric is sold in. */
const KINDS: Readonly<Record<PrecutName, (width: Length) => PrecutKind>> = {
  'fat-quarter': (width) => squaredUp({ width: width.dividedBy(2), length: length(18) }),
  'fat-eighth': (width) => squaredUp({ width: width.dividedBy(2), length: length(9) }),
  'strip-2-1/2': (width) => ({
    nominal: { width, length: length('2 1/2') },
    usable: { width: width.minus(SELVAGES), length: length('2 1/2') },
    pinked: true,
  }),
  'square-5': () => square(5),
  'square-10': () => square(10),
};

const squaredUp = (nominal: PrecutSize): PrecutKind => ({
  nominal,
  usable: { width: nominal.width.minus(SQUARING), length: nominal.length.minus(SQUARING) },
  pinked: false,
});

function square(side: number): PrecutKind {
  const size = { width: length(side), length: length(side) };
  return { nominal: size, usable: size, pinked: true };
}

/** The names of the kinds that are known. */
export const PRECUT_NAMES = Object.keys(KINDS) as readonly PrecutName[];

/**
 * A kind of precut at its sizes: a fat quarter is 18 by half the width of the fabric and a fat eighth
 * 9 by that, half an inch less each way usable; a strip is 2 1/2 by the width, its selvages off (2
 * inches together); squares are usable as they are. Common practice, no source.
 *
 * @param kind a name, or the usable size of something else.
 * @param fabricWidth what the fabric is sold in, selvage to selvage: 42 where it is not said.
 * @throws EighthsError `unknown-choice`, `out-of-range` and what is wrong with a length
 * @example
 * precutKind('fat-quarter').usable.width.toString(); // '20 1/2'
 * precutKind('fat-quarter', 44).nominal.width.toString(); // '22'
 */
export function precutKind(
  kind: PrecutName | PrecutSizeInput,
  fabricWidth: LengthInput = 42,
): PrecutKind {
  if (typeof kind === 'object') {
    const size = readPrecutSize(kind, 'kind');
    return { nominal: size, usable: size, pinked: false };
  }
  const width = fabricSide(fabricWidth, 'fabricWidth');
  if (width.compareTo(NARROWEST) < 0) {
    fail(
      'out-of-range',
      'fabricWidth',
      { value: width, least: length(NARROWEST), most: length(LONGEST) },
      'Fabric {value} wide is not sold in precuts. Give its width from selvage to selvage, such as 42.',
    );
  }
  return KINDS[choiceField(kind, 'kind', PRECUT_NAMES)](width);
}

const NARROWEST = 10;

/** @throws EighthsError where a side is missing or cannot be so */
export function readPrecutSize(size: PrecutSizeInput, field: string): PrecutSize {
  checkFields(size, field, ['width', 'length']);
  return {
    width: fabricSide(size.width, `${field}.width`),
    length: fabricSide(size.length, `${field}.length`),
  };
}
