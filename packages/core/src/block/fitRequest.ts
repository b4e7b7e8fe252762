import type { LengthInput } from '../length/length.js';
import type { Layout } from './spec.js';

/** One length exactly, or the least and the most it may be; either end may be left open. */
export type FitLimits = LengthInput | { readonly least?: LengthInput; readonly most?: LengthInput };

/** A block whose logs are all alike, or one with wide and narrow logs. */
export type FitKind = 'plain' | 'curved';

/** What is known of a block before its sizes are. */
export interface LogCabinFitRequest {
  /** From 1 to 50. */
  readonly rounds: number;
  /** The finished size, or a range of them; at most 4,096 steps of the grid. */
  readonly finished: FitLimits;
  /**
   * Which blocks to look for. Left out: plain ones where only `log` is spoken of, curved ones where
   * `wide`, `narrow` or a ratio is, else both. A quarter log cabin is plain.
   */
  readonly kind?: FitKind | 'any';
  /** Default `spiral`. */
  readonly layout?: Layout;
  /** The pair of a curved block that each round begins with; default `wide`. */
  readonly first?: 'wide' | 'narrow';
  /** The step that the center and the logs are multiples of; default 1/8. */
  readonly grid?: LengthInput;
  /** The seam allowance; default 1/4. */
  readonly seam?: LengthInput;
  /** Limits of the center's finished size. */
  readonly center?: FitLimits;
  /** Limits of the logs' finished width in a plain block. */
  readonly log?: FitLimits;
  /** Limits of the wide logs' finished width. */
  readonly wide?: FitLimits;
  /** Limits of the narrow logs' finished width. */
  readonly narrow?: FitLimits;
  /** Limits of wide : narrow, as a number such as `5/2`. */
  readonly ratio?: FitLimits;
  /** What decides which fits come first; limits nothing. */
  readonly wish?: { readonly ratio?: LengthInput; readonly center?: LengthInput };
  /** The cut widths of the strips on hand. */
  readonly strips?: {
    readonly log?: LengthInput;
    readonly wide?: LengthInput;
    readonly narrow?: LengthInput;
  };
  /** The least that trimming has to take off each log; default 0. */
  readonly leastTrim?: LengthInput;
  /** How many fits are wanted at most, from 1 to 10,000; default 100. */
  readonly most?: number;
}
