import { fail } from '../../errors/error.js';
import { type Length, type LengthInput, length } from '../../length/length.js';
import { checkFields, countField } from '../../plan/field.js';
import type { FabricRectangle } from '../pack/packFabric.js';
import { fabricSide } from '../pack/readFabric.js';

/** A piece of fabric on the shelf, its usable part. */
export interface FabricOnHand {
  /** Along the width of the fabric it came from. */
  readonly width: LengthInput;
  /** Down that fabric. */
  readonly length: LengthInput;
  /** How many there are of it; default 1, at most 1,000. */
  readonly count?: number;
  /** A corner that was cut out before; it is planned as the one on the right of the lower edge. */
  readonly missingCorner?: { readonly width: LengthInput; readonly length: LengthInput };
}

/** A piece of fabric as the rectangles that it is cut into: both ways, where a corner is missing. */
export interface ReadFabric {
  readonly ways: readonly (readonly FabricRectangle[])[];
}

/** So many pieces of fabric of different sizes are planned with. */
const MOST_FABRICS = 50;
const MOST_ALIKE = 1_000;

/**
 * What is on hand.
 *
 * @throws EighthsError with the path of the field that cannot be so.
 */
export function readOnHand(onHand: readonly FabricOnHand[]): readonly ReadFabric[] {
  if (!Array.isArray(onHand)) {
    fail(
      'wrong-kind',
      'onHand',
      { expected: 'pieces of fabric' },
      'A list of {expected} is needed here, each with its width and length.',
    );
  }
  if (onHand.length === 0 || onHand.length > MOST_FABRICS) {
    fail(
      'list-length',
      'onHand',
      { entries: onHand.length, needed: onHand.length === 0 ? 1 : MOST_FABRICS },
      `Give from 1 to ${MOST_FABRICS} sizes of fabric on hand, not {entries}.`,
    );
  }
  return onHand.map(readOne);
}

function readOne(fabric: FabricOnHand, from: number): ReadFabric {
  const field = `onHand[${from}]`;
  checkFields(fabric, field, ['width', 'length', 'count', 'missingCorner']);
  const width = fabricSide(fabric.width, `${field}.width`);
  const down = fabricSide(fabric.length, `${field}.length`);
  const count = countField(fabric.count ?? 1, `${field}.count`, 1, MOST_ALIKE);
  const rectangle = (x: Length, y: Length, wide: Length, long: Length): FabricRectangle => ({
    from,
    x,
    y,
    width: wide,
    length: long,
    count,
  });
  const none = length(0);
  if (fabric.missingCorner === undefined) {
    return { ways: [[rectangle(none, none, width, down)]] };
  }
  const corner = `${field}.missingCorner`;
  checkFields(fabric.missingCorner, corner, ['width', 'length']);
  const wide = fabricSide(fabric.missingCorner.width, `${corner}.width`);
  const long = fabricSide(fabric.missingCorner.length, `${corner}.length`);
  for (const [name, lost, side] of [
    ['width', wide, width],
    ['length', long, down],
  ] as const) {
    if (lost.compareTo(side) < 0) continue;
    fail(
      'out-of-range',
      `${corner}.${name}`,
      { value: lost, least: none, most: side },
      'A missing corner is smaller than the fabric: less than {most}, not {value}.',
    );
  }
  const [left, top] = [width.minus(wide), down.minus(long)];
  return {
    ways: [
      [rectangle(none, none, width, top), rectangle(none, top, left, long)],
      [rectangle(none, none, left, down), rectangle(left, none, wide, top)],
    ],
  };
}
