import { type Length, length } from '../../length/length.js';
import type { Piece } from '../../plan/piece.js';
import { type CutRectangle, packFabric } from '../pack/packFabric.js';
import type { Placement } from '../placements.js';
import type { CuttingPlan } from '../plan.js';
import { MOST_PACKED } from '../readPieces.js';
import { type JoinedLengths, type JoinSpec, joinStrips } from './joinStrips.js';
import type { Lengthwise } from './lengthwise.js';

/** A piece, or a strip that is joined to others, where it lies on the fabric. */
export type FabricPlacement =
  | (Placement & { readonly kind: 'piece' })
  | (Omit<Placement, 'piece'> & {
      readonly kind: 'strip';
      /** Which of the joined lengths it is part of. */
      readonly run: number;
    });

/** A piece that is cut across or beside, and what it is. */
export interface Part {
  readonly piece: Piece;
  readonly is:
    | { readonly kind: 'piece'; readonly piece: number }
    | { readonly kind: 'strip'; readonly run: number };
}

export interface Draft {
  readonly joined: JoinedLengths | undefined;
  /** What is cut beside the lengthwise pieces, and from what. */
  readonly besideParts: readonly Part[];
  readonly beside: readonly CutRectangle[];
  readonly acrossParts: readonly Part[];
  readonly across: CuttingPlan | undefined;
}

/** How pieces are cut from the rest of the fabric, for comparing drafts. */
type Planner = (parts: readonly Part[]) => CuttingPlan | undefined;

/**
 * The plan that takes least, of those that join few or all of the joinable pieces, and offer the room
 * beside lengthwise pieces to none, to all or to some of the others; of equals the simplest.
 *
 * @param pieces without those that are cut along the length.
 */
export function bestDraft(
  pieces: readonly Piece[],
  along: Lengthwise | undefined,
  joining: Omit<JoinSpec, 'pieces'>,
  isLong: (piece: Piece) => boolean,
  planOf: Planner,
): Draft {
  const drafts = joinedWays(pieces, isLong).flatMap((joinedPieces) => {
    const joined = some(joinedPieces)
      ? joinStrips({ ...joining, pieces: joinedPieces })
      : undefined;
    const parts: readonly Part[] = [
      ...pieces.flatMap((piece, at): Part[] =>
        piece.count > 0 && joinedPieces[at]?.count === 0
          ? [{ piece, is: { kind: 'piece', piece: at } }]
          : [],
      ),
      ...(joined?.runs ?? []).flatMap(({ strips }, run) =>
        strips.map((piece): Part => ({ piece, is: { kind: 'strip', run } })),
      ),
    ];
    const draft = (besideParts: readonly Part[], beside: readonly CutRectangle[]): Draft => {
      const acrossParts = without(parts, besideParts, beside);
      return { joined, besideParts, beside, acrossParts, across: planOf(acrossParts) };
    };
    const others = (along === undefined ? [] : besideWays(parts)).flatMap((chosen) => {
      const cut = along === undefined ? [] : besides(along, chosen);
      return cut.length === 0 ? [] : [draft(chosen, cut)];
    });
    return [draft([], []), ...others];
  });
  return drafts.reduce((one, other) =>
    lengthOf(other).compareTo(lengthOf(one)) < 0 ? other : one,
  );
}

const lengthOf = ({ across }: Draft): Length => across?.length ?? length(0);

export const some = (pieces: readonly Piece[]): boolean => pieces.some(({ count }) => count > 0);

/** A placement told of the piece in the spec, or of the joined length. */
export function told({ piece, ...where }: Placement, parts: readonly Part[]): FabricPlacement {
  const is = parts[piece]?.is;
  return is?.kind === 'strip'
    ? { kind: 'strip', run: is.run, ...where }
    : { kind: 'piece', piece: is?.piece ?? piece, ...where };
}

/** Which joinable pieces are joined: those that do not fit across, or all of them. */
function joinedWays(
  pieces: readonly Piece[],
  isLong: (piece: Piece) => boolean,
): readonly (readonly Piece[])[] {
  const way = (wanted: (piece: Piece) => boolean): readonly Piece[] =>
    pieces.map((piece) =>
      piece.joinable === true && wanted(piece) ? piece : { ...piece, count: 0 },
    );
  const few = way(isLong);
  const all = way(() => true);
  return few.every(({ count }, i) => count === all[i]?.count) ? [few] : [few, all];
}

/** Beyond so many widths of strips not each is tried alone. */
const MOST_WAYS = 6;

/** What is offered the room beside lengthwise pieces: everything, or what one width of strips takes. */
function besideWays(parts: readonly Part[]): readonly (readonly Part[])[] {
  const few = parts.filter(({ piece }) => piece.count <= MOST_PACKED);
  const widths = new Map<string, Part[]>();
  for (const part of few) {
    const key = `${part.piece.width}`;
    widths.set(key, [...(widths.get(key) ?? []), part]);
  }
  const alone = widths.size > 1 ? [...widths.values()].slice(0, MOST_WAYS) : [];
  return few.length === 0 ? [] : [few, ...alone];
}

/** Work for filling the room beside lengthwise pieces, in elementary steps. */
const EFFORT = 600_000;

const besides = (along: Lengthwise, parts: readonly Part[]): readonly CutRectangle[] =>
  packFabric(
    along.leftOver.map(({ x, y, width, height }, from) => ({
      from,
      x,
      y,
      width,
      length: height,
      count: 1,
    })),
    parts.map(({ piece }) => piece),
    EFFORT,
  ).rectangles;

/** The parts that are not cut beside. */
function without(
  parts: readonly Part[],
  chosen: readonly Part[],
  beside: readonly CutRectangle[],
): readonly Part[] {
  const cut = new Map<Part | undefined, number>();
  for (const { placements } of beside) {
    for (const { piece } of placements) {
      cut.set(chosen[piece], (cut.get(chosen[piece]) ?? 0) + 1);
    }
  }
  return parts.flatMap((part) => {
    const count = part.piece.count - (cut.get(part) ?? 0);
    return count > 0 ? [{ ...part, piece: { ...part.piece, count } }] : [];
  });
}
