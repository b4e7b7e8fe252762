import { areaOf, type Piece } from '../../plan/piece.js';
import { type FabricRectangle, type PackedFabric, packFabric } from '../pack/packFabric.js';
import { uncutPieces } from '../pack/uncut.js';
import type { ReadFabric } from './readOnHand.js';

/** A packing, and the rectangles it was made from. */
export interface PackedOnHand extends PackedFabric {
  readonly from: readonly FabricRectangle[];
}

/** The rectangles that fabric is cut into, by which way each piece of it is cut. */
export const rectanglesOf = (
  fabrics: readonly ReadFabric[],
  ways: readonly number[],
): readonly FabricRectangle[] => fabrics.flatMap(({ ways: known }, i) => known[ways[i] ?? 0] ?? []);

/** So many pieces of fabric with missing corners are looked at one by one. */
const MOST_CHANGED = 6;

/**
 * Cuts what can be cut from fabric on hand. Where corners are missing, first all are cut apart one
 * way, then all the other way, then one after another is changed where more can be cut so.
 */
export function packOnHand(
  fabrics: readonly ReadFabric[],
  pieces: readonly Piece[],
  effort: number,
): PackedOnHand {
  const corners = fabrics.flatMap(({ ways }, i) => (ways.length > 1 ? [i] : []));
  const changed = corners.length > 1 ? corners.slice(0, MOST_CHANGED) : [];
  const share = effort / (corners.length === 0 ? 1 : changed.length + 2);
  const tried = (ways: readonly number[]) => {
    const from = rectanglesOf(fabrics, ways);
    const packed = packFabric(from, pieces, share);
    return { ways, packed: { ...packed, from }, missing: areaOf(uncutPieces(pieces, packed)) };
  };
  let best = tried(fabrics.map(() => 0));
  const offer = (ways: readonly number[]): void => {
    if (best.missing.sign() === 0) return;
    const other = tried(ways);
    if (other.missing.compareTo(best.missing) < 0) best = other;
  };
  if (corners.length > 0) offer(fabrics.map(() => 1));
  for (const corner of changed) {
    offer(best.ways.map((way, i) => (i === corner ? 1 - way : way)));
  }
  // Where fabric could be cut apart another way, nothing is proven but that all is cut.
  const all = best.missing.sign() === 0;
  return { ...best.packed, leastLeft: all || (corners.length === 0 && best.packed.leastLeft) };
}
