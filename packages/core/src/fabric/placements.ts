import { type Length, type LengthInput, length } from '../length/length.js';

/** A piece where it lies on the fabric. */
export interface Placement {
  /** Its place in the spec. */
  readonly piece: number;
  /** From the selvage, along the width of the fabric. */
  readonly x: Length;
  /** From the squared-up end, down the fabric. */
  readonly y: Length;
  /** Along the width of the fabric. */
  readonly width: Length;
  /** Down the fabric. */
  readonly height: Length;
}

/** What placements are told from: a cutting plan, or one that was JSON in between. */
export interface PlacedPlan {
  readonly pieces: readonly { readonly count: number }[];
  readonly strips: readonly {
    readonly width: LengthInput;
    readonly count: number;
    readonly cuts: readonly PlacedCut[];
    readonly ends?: readonly {
      readonly length: LengthInput;
      readonly count: number;
      readonly rows: readonly {
        readonly width: LengthInput;
        readonly count: number;
        readonly cuts: readonly PlacedCut[];
      }[];
    }[];
  }[];
}

interface PlacedCut {
  readonly length: LengthInput;
  readonly count: number;
  readonly pieces: readonly number[];
}

/** Where a piece of some size lies in its strip. */
type Cut = Omit<Placement, 'piece'> & { readonly pieces: readonly number[] };

/**
 * Every piece of a plan where it lies on the fabric, in the order of the cuts: strips from the
 * squared-up end down, and in each strip from the selvage on, in each end row by row. Pieces of one
 * size are dealt in the order of the spec.
 *
 * @example
 * const plan = cuttingPlan({ width: 42, pieces: [{ width: 5, length: 5, count: 8 }] });
 * placementsOf(JSON.parse(JSON.stringify(plan)))[7]?.x.toString(); // '35'
 */
export function placementsOf(plan: PlacedPlan): readonly Placement[] {
  const left = plan.pieces.map(({ count }) => count);
  /** How far the dealing has come in each size's pieces, by the first of them. */
  const dealt = new Map<number | undefined, number>();
  const deal = (pieces: readonly number[]): number => {
    let place = dealt.get(pieces[0]) ?? 0;
    while (place < pieces.length && (left[pieces[place] ?? -1] ?? 0) === 0) place += 1;
    dealt.set(pieces[0], place);
    const piece = pieces[place] ?? -1;
    left[piece] = (left[piece] ?? 0) - 1;
    return piece;
  };
  const placements: Placement[] = [];
  let y = length(0);
  for (const strip of plan.strips) {
    const height = length(strip.width);
    const cuts = placesIn(strip);
    for (let n = 0; n < strip.count; n += 1) {
      for (const { pieces, ...place } of cuts) {
        placements.push({ piece: deal(pieces), ...place, y: y.plus(place.y) });
      }
      y = y.plus(height);
    }
  }
  return placements;
}

/** Where each piece lies in a strip: the same in all strips that are cut alike. */
function placesIn(strip: PlacedPlan['strips'][number]): readonly Cut[] {
  const placed: Cut[] = [];
  const cutAlong = (
    cuts: readonly PlacedCut[],
    from: Length,
    y: Length,
    height: Length,
  ): Length => {
    let x = from;
    for (const { length: input, count, pieces } of cuts) {
      const width = length(input);
      for (let n = 0; n < count; n += 1) {
        placed.push({ x, y, width, height, pieces });
        x = x.plus(width);
      }
    }
    return x;
  };
  let x = cutAlong(strip.cuts, length(0), length(0), length(strip.width));
  for (const end of strip.ends ?? []) {
    for (let n = 0; n < end.count; n += 1) {
      let y = length(0);
      for (const { width, count, cuts } of end.rows) {
        const height = length(width);
        for (let row = 0; row < count; row += 1) {
          cutAlong(cuts, x, y, height);
          y = y.plus(height);
        }
      }
      x = x.plus(end.length);
    }
  }
  return placed;
}
