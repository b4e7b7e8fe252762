import { checkFields, countField, missing } from '../../plan/field.js';
import { type Warning, warningsFrom } from '../../plan/notice.js';
import { areaOf, type PieceInput } from '../../plan/piece.js';
import { byArea, byCount, mostSets } from '../pack/bounds.js';
import { PACKING_EFFORT, unitsOf } from '../pack/packFabric.js';
import { fitsIn } from '../pack/rectangles.js';
import { MOST_PACKED, readPieces } from '../readPieces.js';
import { Effort } from '../stock/effort.js';
import { type PackedOnHand, packOnHand, rectanglesOf } from './packOnHand.js';
import { type FabricOnHand, readOnHand } from './readOnHand.js';
import { type OnHandWarningCode, onHandSentences } from './sentences.js';

/** What is on the shelf, and what one block takes of it. */
export interface BlocksOnHandSpec {
  readonly onHand: readonly FabricOnHand[];
  /** The pieces of one block that are cut from this fabric. */
  readonly block: readonly PieceInput[];
  /** How much work may be done for each number of blocks that is tried, in elementary steps. */
  readonly effort?: number;
}

/** How many whole blocks fabric on hand gives. */
export interface BlocksOnHand {
  readonly blocks: number;
  /** No cutting from edge to edge gives more blocks than this. */
  readonly bound: number;
  /** Whether it is proven that there is not one block more. */
  readonly proven: boolean;
  /** How the fabric is cut for all of them. */
  readonly rectangles: PackedOnHand['rectangles'];
  readonly warnings: readonly Warning<OnHandWarningCode>[];
}

const warning = warningsFrom(onHandSentences);

/**
 * How many whole blocks can be cut from fabric on hand, every cut from edge to edge. `bound` is what
 * the fabric's area holds of the pieces at most, or what it holds of the larger ones in number.
 *
 * One plan takes up to 10,000 pieces, so there are never more blocks than that makes; where that limit
 * decides, the answer is not proven.
 *
 * @throws EighthsError as `cutFromHand`
 * @example
 * const { blocks, proven } = howManyBlocks({
 *   onHand: [{ width: '20 1/2', length: '17 1/2', count: 3 }],
 *   block: [
 *     { width: 5, length: 5, count: 1 },
 *     { width: 2, length: 5, count: 4, turnable: true },
 *   ],
 * });
 * [blocks, proven]; // [15,true]
 */
export function howManyBlocks(spec: BlocksOnHandSpec): BlocksOnHand {
  checkFields(spec, '', ['onHand', 'block', 'effort']);
  const fabrics = readOnHand(spec.onHand ?? missing('onHand'));
  const block = readPieces(spec.block ?? missing('block'), 'block');
  const effort = countField(spec.effort ?? PACKING_EFFORT, 'effort', 0, Number.MAX_SAFE_INTEGER);
  const perBlock = block.reduce((sum, { count }) => sum + count, 0);
  const most = Math.floor(MOST_PACKED / perBlock);

  // A cutting of fabric with a missing corner is a cutting of the whole as well.
  const whole = spec.onHand.flatMap((fabric, from) => {
    const { missingCorner: _, ...uncut } = fabric;
    return readOnHand([uncut]).flatMap((read) =>
      rectanglesOf([read], [0]).map((each) => ({ ...each, from })),
    );
  });
  const { sheets, items } = unitsOf(whole, block);
  const counts = items.map(({ count }) => count);
  const bounds = new Effort(effort);
  const weighed = [byArea(sheets, items, bounds), ...byCount(sheets, items, bounds)];
  const possible = items.every(
    (item) => item.count === 0 || sheets.some((sheet) => fitsIn(item, sheet)),
  );
  const area = areaOf(rectanglesOf(fabrics, [])).toNumber() / areaOf(block).toNumber();
  // A little more than the quotient, so that floating point makes no bound too low.
  let bound = possible ? Math.min(mostSets(weighed, sheets, counts), Math.floor(area + 1e-9)) : 0;

  let best: PackedOnHand | undefined;
  let blocks = 0;
  let tooMany = Math.min(bound, most) + 1;
  let next = tooMany - 1;
  while (tooMany - blocks > 1) {
    const pieces = block.map((piece) => ({ ...piece, count: piece.count * next }));
    const packed = packOnHand(fabrics, pieces, effort);
    if (packed.left.every((count) => count === 0)) [blocks, best] = [next, packed];
    else {
      tooMany = next;
      // What cannot be cut whole for so many blocks cannot for more.
      if (packed.leastLeft) bound = next - 1;
    }
    next = Math.floor((blocks + tooMany) / 2);
  }
  const proven = blocks === bound;
  return {
    blocks,
    bound,
    proven,
    rectangles: best?.rectangles ?? [],
    warnings: proven ? [] : [warning('blocks-not-proven', 'effort', { blocks, bound })],
  };
}
