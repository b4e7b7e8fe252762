/** A piece, in small whole numbers. */
export interface Tile {
  readonly width: number;
  readonly height: number;
  readonly turnable: boolean;
}

/**
 * Whether all pieces can be cut from a rectangle by cuts from edge to edge: tries every way to share
 * the pieces out between the two sides of every cut. Independent of the packer, and slow.
 */
export function canCut(width: number, height: number, pieces: readonly Tile[]): boolean {
  const [only] = pieces;
  if (only === undefined) return true;
  if (pieces.reduce((sum, each) => sum + each.width * each.height, 0) > width * height)
    return false;
  if (pieces.length === 1) {
    return (
      (only.width <= width && only.height <= height) ||
      (only.turnable && only.height <= width && only.width <= height)
    );
  }
  for (let chosen = 1; chosen < 2 ** pieces.length - 1; chosen += 1) {
    const [one, other] = [true, false].map((side) =>
      pieces.filter((_, i) => ((chosen >> i) & 1) === Number(side)),
    );
    for (let x = 1; x < width; x += 1) {
      if (canCut(x, height, one ?? []) && canCut(width - x, height, other ?? [])) return true;
    }
    for (let y = 1; y < height; y += 1) {
      if (canCut(width, y, one ?? []) && canCut(width, height - y, other ?? [])) return true;
    }
  }
  return false;
}

/** The fewest rectangles that give all pieces: every way to deal them out is tried. */
export function fewestByHand(width: number, height: number, pieces: readonly Tile[]): number {
  const deal = (at: number, dealt: readonly (readonly Tile[])[]): number => {
    const piece = pieces[at];
    if (piece === undefined) {
      return dealt.every((each) => canCut(width, height, each)) ? dealt.length : 99;
    }
    const into = dealt.map((_, i) =>
      deal(
        at + 1,
        dealt.map((each, j) => (i === j ? [...each, piece] : each)),
      ),
    );
    return Math.min(...into, deal(at + 1, [...dealt, [piece]]));
  };
  return deal(0, []);
}
