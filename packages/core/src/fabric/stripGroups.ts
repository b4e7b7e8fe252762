import type { FractionInput, Length } from '../length/length.js';
import type { Piece } from '../plan/piece.js';
import type { Stock } from './stock/stock.js';
import { fractionOf, inUnits } from './units.js';

/** Pieces that are equally long: to the plan they are the same. */
export interface SameLength {
  readonly length: Length;
  /** Their places in the spec. */
  readonly pieces: readonly number[];
}

/** All pieces that are cut from strips of one width. */
export interface StripGroup {
  readonly width: Length;
  /** Longest first. */
  readonly lengths: readonly SameLength[];
  readonly stock: Stock;
}

interface Place {
  readonly piece: Piece;
  readonly index: number;
}

/** The pieces by the widths of their strips, widest first. Pieces that are needed no times are left out. */
export function stripGroups(room: FractionInput, pieces: readonly Piece[]): readonly StripGroup[] {
  const places = pieces.map((piece, index) => ({ piece, index }));
  const needed = places.filter(({ piece }) => piece.count > 0);
  return grouped(needed, ({ piece }) => piece.width).map(({ value: width, members }) => {
    const lengths = grouped(members, ({ piece }) => piece.length);
    const demands = lengths.map((same) =>
      same.members.reduce((sum, { piece }) => sum + piece.count, 0),
    );
    const fractions = lengths.map(({ value }) => fractionOf(value, 'pieces'));
    return {
      width,
      lengths: lengths.map((same) => ({
        length: same.value,
        pieces: same.members.map(({ index }) => index),
      })),
      stock: inUnits(room, fractions, demands),
    };
  });
}

/** Places with equal lengths together, the greatest length first. */
function grouped(
  places: readonly Place[],
  lengthOf: (place: Place) => Length,
): { readonly value: Length; readonly members: readonly Place[] }[] {
  const groups = new Map<string, { readonly value: Length; readonly members: Place[] }>();
  for (const place of places) {
    const value = lengthOf(place);
    const group = groups.get(`${value}`);
    if (group === undefined) groups.set(`${value}`, { value, members: [place] });
    else group.members.push(place);
  }
  return [...groups.values()].sort((a, b) => b.value.compareTo(a.value));
}
