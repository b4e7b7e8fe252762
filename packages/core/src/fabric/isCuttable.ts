import { type Length, length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import type { Placement } from './placements.js';

/** Where a piece begins and ends, down the fabric or across it. */
const spans = {
  down: ({ y, height }: Placement): readonly [Length, Length] => [y, y.plus(height)],
  across: ({ x, width }: Placement): readonly [Length, Length] => [x, x.plus(width)],
};

/**
 * Whether pieces can be cut apart by cuts from edge to edge: first across the fabric, then across the
 * strips, and so on in turn, so many times at most. Pieces that overlap cannot.
 */
export function isCuttable(placements: readonly Placement[], cuts: number): boolean {
  const parted = (pieces: readonly Placement[], left: number): boolean => {
    if (pieces.length <= 1) return true;
    if (left === 0) return false;
    // The last cut frees pieces of a row: another would be needed where one is lower than the row.
    if (left === 1 && pieces.some(({ height }) => !height.equals(entryAt(pieces, 0).height)))
      return false;
    const spanOf = (cuts - left) % 2 === 0 ? spans.down : spans.across;
    const inOrder = pieces
      .map((piece) => ({ piece, span: spanOf(piece) }))
      .sort((a, b) => a.span[0].compareTo(b.span[0]));
    let reach = length(0);
    const parts: Placement[][] = [];
    for (const { piece, span } of inOrder) {
      const [from, to] = span;
      const part = parts.at(-1);
      if (part !== undefined && from.compareTo(reach) < 0) part.push(piece);
      else parts.push([piece]);
      if (to.compareTo(reach) > 0) reach = to;
    }
    return parts.every((part) => parted(part, left - 1));
  };
  return parted(placements, cuts);
}
