import type { Bound } from './stock/bound.js';
import type { StripGroup } from './stripGroups.js';

/**
 * Why the strips of one width cannot be fewer, in plain numbers: each piece has a price, no strip
 * can hold pieces of more than `most` together, and all pieces together cost more than one strip
 * less could hold.
 */
export interface BoundCertificate {
  /** The places in the spec of the pieces that are cut from strips of this width. */
  readonly pieces: readonly number[];
  /** A whole price for each of them, in the same order. */
  readonly prices: readonly number[];
  /** The greatest price of a strip. */
  readonly most: number;
  /** So many strips are needed at least. */
  readonly strips: number;
  /**
   * Whether the last of these strips is owed to a complete search instead: by the prices alone one
   * strip less would do.
   */
  readonly searched: boolean;
}

/** A bound on lengths, told of the pieces in the spec. */
export const certificateOf = (
  { lengths }: StripGroup,
  { prices, most, strips }: Bound,
  searched: boolean,
): BoundCertificate => ({
  pieces: lengths.flatMap(({ pieces }) => pieces),
  prices: lengths.flatMap(({ pieces }, i) => pieces.map(() => prices[i] ?? 0)),
  most,
  strips: strips + (searched ? 1 : 0),
  searched,
});
