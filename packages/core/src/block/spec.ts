import type { LengthInput } from '../length/length.js';
import type { Side } from '../plan/side.js';
import type { SizeInput } from '../plan/size.js';

/**
 * How logs go round the center: `spiral`, each log turning the corner onto the last; `courthouse`,
 * opposite sides in pairs; `quarter`, two sides only, the center in a corner.
 */
export type Layout = 'spiral' | 'courthouse' | 'quarter';

/** The direction in which logs are sewn round the block as it faces the sewer. */
export type Direction = 'clockwise' | 'counterclockwise';

/** Logs of a plain block, or the two widths of a curved one. */
export type LogKind = 'log' | 'wide' | 'narrow';

/** When the block is trimmed: after each round, after each log, or not at all. */
export type TrimAfter = 'round' | 'log' | 'never';

/** One value for all rounds, or one for each. */
export type PerRound<Value> = Value | readonly Value[];

/**
 * Which fabric is where. A side's fabric comes before its kind's: in a courthouse block with two
 * widths the same fabric is cut in both. Left out: `center`, `cornerstone` and one for each kind.
 */
export interface LogCabinFabrics {
  readonly center?: string;
  readonly cornerstone?: string;
  readonly log?: PerRound<string>;
  readonly wide?: PerRound<string>;
  readonly narrow?: PerRound<string>;
  readonly top?: PerRound<string>;
  readonly right?: PerRound<string>;
  readonly bottom?: PerRound<string>;
  readonly left?: PerRound<string>;
}

interface CommonSpec {
  /** From 1 to 50. */
  readonly rounds: number;
  /** Default `clockwise`. */
  readonly direction?: Direction;
  /** The side where each round begins. */
  readonly start?: Side;
  /** The center's finished size; left out, it is solved from `finished`. */
  readonly center?: SizeInput;
  /** The block's finished size; left out, it is solved from `center`. */
  readonly finished?: SizeInput;
  /** The seam allowance; default 1/4. */
  readonly seam?: LengthInput;
  /** Left out: trimmed after each round where `strips` are given, else never. */
  readonly trim?: {
    /** Default `round`. */
    readonly after?: TrimAfter;
    /** What strips are cut beyond the exact width, where `strips` does not say; default 1/4. */
    readonly oversize?: LengthInput;
  };
  /** Length added to each log, to be cut off after sewing; default 0. */
  readonly extra?: LengthInput;
  readonly fabrics?: LogCabinFabrics;
  /** The finest line people cut to; default 1/8. */
  readonly grid?: LengthInput;
  /** A square at the end of each log, where it meets a log of the same round. */
  readonly cornerstones?: boolean;
}

/** A block whose sides are all alike. */
export interface PlainLogCabinSpec extends CommonSpec {
  /** Default `spiral`. */
  readonly layout?: Layout;
  /** The logs' finished width. */
  readonly log: PerRound<LengthInput>;
  /** The width that strips are cut. */
  readonly strips?: { readonly log?: PerRound<LengthInput> };
  readonly wide?: never;
  readonly narrow?: never;
  readonly wideSides?: never;
  readonly first?: never;
}

/** A curved block: wide logs on two sides next to each other, narrow logs on the other two. */
export interface CurvedLogCabinSpec extends CommonSpec {
  /** Default `spiral`. */
  readonly layout?: Exclude<Layout, 'quarter'>;
  /** The wide logs' finished width. */
  readonly wide: PerRound<LengthInput>;
  /** The narrow logs' finished width. */
  readonly narrow: PerRound<LengthInput>;
  /** Default right and bottom. */
  readonly wideSides?: readonly [Side, Side];
  /** The pair that each round begins with, where `start` does not say; default `wide`. */
  readonly first?: 'wide' | 'narrow';
  /** The widths that strips are cut. */
  readonly strips?: {
    readonly wide?: PerRound<LengthInput>;
    readonly narrow?: PerRound<LengthInput>;
  };
  readonly log?: never;
}

/** A log cabin block, as plain data. */
export type LogCabinSpec = PlainLogCabinSpec | CurvedLogCabinSpec;
