import type { PieceInput } from '../plan/piece.js';

/** The pieces that are cut from one fabric. */
export interface FabricPieces<Cut extends Pick<PieceInput, 'fabric'> = PieceInput> {
  /** Undefined for pieces that name no fabric. */
  readonly fabric: string | undefined;
  readonly pieces: readonly Cut[];
}

/**
 * Pieces grouped by their fabric, in the order in which the fabrics first come up: a cutting plan is
 * for one fabric.
 *
 * @example
 * byFabric([
 *   { fabric: 'blue', width: 2, length: 2, count: 4 },
 *   { fabric: 'white', width: 2, length: 3, count: 8 },
 *   { fabric: 'blue', width: 2, length: 5, count: 4 },
 * ]).map(({ fabric, pieces }) => [fabric, pieces.length]); // [['blue', 2], ['white', 1]]
 */
export function byFabric<Cut extends Pick<PieceInput, 'fabric'>>(
  pieces: readonly Cut[],
): readonly FabricPieces<Cut>[] {
  const groups = new Map<string | undefined, Cut[]>();
  for (const piece of pieces) {
    const group = groups.get(piece.fabric);
    if (group === undefined) groups.set(piece.fabric, [piece]);
    else group.push(piece);
  }
  return [...groups].map(([fabric, members]) => ({ fabric, pieces: members }));
}
