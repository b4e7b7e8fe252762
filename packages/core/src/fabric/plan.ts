import type { Length } from '../length/length.js';
import type { Step, Warning } from '../plan/notice.js';
import type { Piece } from '../plan/piece.js';
import type { BoundCertificate, WorthCertificate } from './certificate.js';
import type { Placement } from './placements.js';
import type { CuttingStepCode, CuttingWarningCode } from './sentences.js';
import type { CuttingMethod } from './spec.js';

/** Equally long pieces that a strip gives. */
export interface StripCut {
  readonly length: Length;
  /** How many one strip gives. */
  readonly count: number;
  /** The places in the spec of the pieces of this size. */
  readonly pieces: readonly number[];
  /** Whether they lie turned: their width along the width of the fabric. */
  readonly turned?: true;
}

/** Rows of a strip's end that are cut alike. */
export interface EndRow {
  /** Down the fabric, as the strip's own. */
  readonly width: Length;
  /** How many one end gives. */
  readonly count: number;
  /** What is subcut from each. */
  readonly cuts: readonly StripCut[];
}

/** Sections of a strip that are cut alike into lower rows. */
export interface StripEnd {
  /** Along the width of the fabric. */
  readonly length: Length;
  /** How many one strip gives. */
  readonly count: number;
  /** From the upper edge of the strip on. */
  readonly rows: readonly EndRow[];
}

/** Strips that are cut alike. */
export interface Strip {
  readonly width: Length;
  /** How many strips. */
  readonly count: number;
  /** What is subcut from each, longest first. */
  readonly cuts: readonly StripCut[];
  /** What is cut off each after that and cut again; plain plans have none. */
  readonly ends?: readonly StripEnd[];
  /** The length of the end that is left over of each. */
  readonly end: Length;
}

/** How to cut pieces from one fabric, and how little of it they can be cut from. */
export interface CuttingPlan {
  readonly method: CuttingMethod;
  /** The usable width of the fabric. */
  readonly width: Length;
  /** What was asked for, as read. */
  readonly pieces: readonly Piece[];
  /** Widest first. */
  readonly strips: readonly Strip[];
  /** How much fabric the strips take. */
  readonly length: Length;
  /** No plan of this method takes less than this. */
  readonly lowerBound: Length;
  /** Whether that is proven to be the least: the length is the lower bound. */
  readonly optimal: boolean;
  /**
   * Why the lower bound holds, one entry for each width of strips; `checkCertificate` checks it. In a
   * thrifty plan an entry is about the rows of all pieces that are at least so wide.
   */
  readonly certificate: readonly BoundCertificate[];
  /** What else proves the lower bound of a thrifty plan. */
  readonly worths?: readonly WorthCertificate[];
  /** The pieces' share of the fabric's area, from 0 to 1, as the nearest number. */
  readonly used: number;
  /** What to do, in order. */
  readonly steps: readonly Step<CuttingStepCode>[];
  readonly warnings: readonly Warning<CuttingWarningCode>[];
  /** Every piece where it lies on the fabric, in the order of the cuts. */
  placements(): readonly Placement[];
}
