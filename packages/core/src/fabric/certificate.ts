import type { Length, LengthInput } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import type { CuttingMethod } from './spec.js';
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

/**
 * Why the strips of a thrifty plan cannot be lower, in plain numbers: each piece has a price, and so
 * has each row of wide pieces that the other certificates ask for. A strip of each width is worth so
 * much at most; no choice of strips that is lower is worth as much as is asked for by every
 * certificate.
 */
export interface WorthCertificate {
  /** A whole price for each piece of the spec. */
  readonly prices: readonly number[];
  /** A whole price for a row of each of the other certificates; none where it is empty. */
  readonly rows: readonly number[];
}

/** A plan's lower bound and what proves it. */
export interface CertifiedPlan {
  readonly method?: CuttingMethod;
  readonly lowerBound: LengthInput;
  readonly certificate: readonly BoundCertificate[];
  readonly worths?: readonly WorthCertificate[];
}

/** What a certificate was found to prove. */
export interface CertificateCheck {
  /** Whether it proves the lower bound that the plan claims, complete searches taken on trust. */
  readonly holds: boolean;
  /** What the prices prove alone: no plan of the method takes less than this. */
  readonly proven: Length;
  /** How many widths of strips owe their last strip to a complete search, which is not repeated. */
  readonly searched: number;
}

/** A bound on lengths, told of the pieces in the spec. */
export const certificateOf = (
  { lengths }: StripGroup,
  { prices, most, strips }: Bound,
  searched: boolean,
): BoundCertificate => ({
  pieces: lengths.flatMap(({ pieces }) => pieces),
  prices: lengths.flatMap(({ pieces }, i) => pieces.map(() => entryAt(prices, i))),
  most,
  strips: strips + (searched ? 1 : 0),
  searched,
});
