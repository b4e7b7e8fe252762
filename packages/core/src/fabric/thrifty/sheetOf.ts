import type { FractionInput, Length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import type { Piece } from '../../plan/piece.js';
import { type StripGroup, stripGroups } from '../stripGroups.js';
import { fractionOf, inUnits } from '../units.js';
import type { Level, Sheet } from './sheet.js';

/** Pieces that are the same to a thrifty plan. */
export interface SameSize {
  readonly width: Length;
  readonly length: Length;
  /** Their places in the spec. */
  readonly pieces: readonly number[];
}

/** A sheet, and what its numbers stand for. */
export interface ThriftyTask {
  readonly sheet: Sheet;
  readonly sizes: readonly SameSize[];
  /** The widths of the levels. */
  readonly widths: readonly Length[];
  /** What one unit of height is. */
  readonly unit: Length;
  /** The rows of all pieces that are so wide at least however they lie, as a problem by itself. */
  readonly tall: readonly StripGroup[];
}

/** Beyond so many units across, or rows in a strip, a thrifty plan is not looked for. */
const FINEST = 4096;
const MOST_ROWS = 256;

/** How a piece may lie: its width, down the fabric, and its length, as given first. */
const waysToLie = ({ width, length, turnable }: Piece, fabric: Length) => [
  { width, length },
  ...(turnable === true && !width.equals(length) && width.compareTo(fabric) <= 0
    ? [{ width: length, length: width }]
    : []),
];

/** The pieces of a spec as a thrifty plan's problem; `findable` is false where it is too fine for one. */
export function thriftyTask(
  pieces: readonly Piece[],
  fabric: Length,
): ThriftyTask & { readonly findable: boolean } {
  const room: FractionInput = fractionOf(fabric, 'width');
  const bySize = new Map<string, { readonly piece: Piece; readonly pieces: number[] }>();
  pieces.forEach((piece, index) => {
    if (piece.count === 0) return;
    const key = `${piece.width} ${piece.length} ${piece.turnable === true}`;
    const known = bySize.get(key);
    if (known === undefined) bySize.set(key, { piece, pieces: [index] });
    else known.pieces.push(index);
  });
  const sizes = [...bySize.values()].sort(
    (a, b) =>
      b.piece.width.compareTo(a.piece.width) ||
      b.piece.length.compareTo(a.piece.length) ||
      Number(b.piece.turnable === true) - Number(a.piece.turnable === true),
  );
  const demands = sizes.map((size) =>
    size.pieces.reduce((sum, index) => sum + entryAt(pieces, index).count, 0),
  );
  const places = sizes.flatMap(({ piece }, item) =>
    waysToLie(piece, fabric).map((way) => ({ ...way, item })),
  );
  const along = inUnits(
    room,
    places.map(({ length }) => fractionOf(length, 'pieces')),
    places.map(({ item }) => entryAt(demands, item)),
  );
  const widths = places
    .map(({ width }) => width)
    .sort((a, b) => b.compareTo(a))
    .filter((width, i, all) => !all[i - 1]?.equals(width));
  // Only the sizes are asked for: nothing limits how high strips are together.
  const down = inUnits(
    { s: 1n, n: 0n, d: 1n },
    widths.map((width) => fractionOf(width, 'pieces')),
    [],
  );
  const levels = widths.map((width, level): Level => {
    const here = places
      .map((place, i) => ({ ...place, size: entryAt(along.sizes, i) }))
      .filter((place) => place.width.equals(width))
      .sort((a, b) => b.size - a.size);
    return {
      height: entryAt(down.sizes, level),
      items: here.map(({ item }) => item),
      sizes: here.map(({ size }) => size),
    };
  });
  const tall = widths.flatMap((width) => stripGroups(room, tallPieces(pieces, fabric, width)));
  const highest = entryAt(down.sizes, 0);
  return {
    sheet: {
      capacity: along.capacity,
      demands,
      levels,
      tall: tall.map(({ width }) =>
        entryAt(
          down.sizes,
          widths.findIndex((one) => one.equals(width)),
        ),
      ),
    },
    sizes: sizes.map(({ piece: { width, length }, pieces: own }) => ({
      width,
      length,
      pieces: own,
    })),
    widths,
    unit: entryAt(widths, 0).dividedBy(highest),
    tall,
    findable: along.capacity <= FINEST && highest <= MOST_ROWS * (down.sizes.at(-1) ?? 0),
  };
}

/** The pieces that lie at least so high in every way, in rows of that height, as short as they may be. */
export const tallPieces = (
  pieces: readonly Piece[],
  fabric: Length,
  width: Length,
): readonly Piece[] =>
  pieces.map((piece) => {
    const ways = waysToLie(piece, fabric);
    const isTall = ways.every((way) => way.width.compareTo(width) >= 0);
    const [length] = ways.map((way) => way.length).sort((a, b) => a.compareTo(b));
    return { ...piece, width, length: length ?? piece.length, count: isTall ? piece.count : 0 };
  });
