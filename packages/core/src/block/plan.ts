import type { Length } from '../length/length.js';
import type { Warning } from '../plan/notice.js';
import type { Piece } from '../plan/piece.js';
import type { PerSide, Side } from '../plan/side.js';
import type { Size } from '../plan/size.js';
import type { LogCabinWarningCode } from './sentences.js';
import type { Direction, Layout, LogKind, TrimAfter } from './spec.js';

/** A log's width across its strip, and its length along it. */
export interface LogSize {
  readonly width: Length;
  readonly length: Length;
}

/** One log. */
export interface Log {
  /** Its place in the sewing order, from 1. */
  readonly order: number;
  readonly round: number;
  readonly side: Side;
  readonly kind: LogKind;
  readonly fabric: string;
  readonly finished: LogSize;
  /** What to cut: on the grid. The length is that of the raw edge it is sewn to at that moment. */
  readonly cut: LogSize;
  /** What `cut` was rounded up from, where the exact size is off the grid. */
  readonly exact?: LogSize;
}

/** A square (or rectangle) at the end of a log, sewn to it before the log is sewn to the block. */
export interface Cornerstone {
  readonly round: number;
  /** The order of the log that it is sewn to. */
  readonly log: number;
  /** The end of the log where it lies. */
  readonly side: Side;
  readonly fabric: string;
  readonly finished: Size;
  readonly cut: Size;
  /** What `cut` was rounded up from, where the exact size is off the grid. */
  readonly exact?: Size;
}

/** A round, and what it is trimmed to. */
export interface LogCabinRound {
  /** From 1. */
  readonly number: number;
  /** The logs sewn in this round, in order. */
  readonly logs: readonly Log[];
  /** The block before the round's (last) trim, raw edge to raw edge. */
  readonly untrimmed: Size;
  /** The block after it. */
  readonly trimTo: Size;
  /** From the seam line round the center to the trimmed raw edge: the ruler line laid on that seam. */
  readonly centerSeamToEdge: PerSide<Length>;
  /** From the last seam line on that side to the trimmed raw edge: the line that keeps it square. */
  readonly lastSeamToEdge: PerSide<Length>;
  /** What the trim removes. */
  readonly trimAway: PerSide<Length>;
}

/** All logs of one fabric and one width: how much strip a block takes. */
export interface StripTotal {
  readonly fabric: string;
  readonly width: Length;
  readonly length: Length;
}

/** A piece to cut, and what it becomes. */
export interface LogCabinPiece extends Piece {
  readonly part: 'center' | 'log' | 'cornerstone';
  /** The orders of the logs that are cut like this, or whose ends the cornerstones are. */
  readonly logs: readonly number[];
}

/** A log cabin block in numbers to cut, sew and trim by. */
export interface LogCabin {
  readonly layout: Layout;
  readonly direction: Direction;
  /** The sides of a round in sewing order. */
  readonly sides: readonly Side[];
  readonly seam: Length;
  readonly grid: Length;
  readonly trimAfter: TrimAfter;
  readonly finished: Size;
  /** Finished and two seam allowances: what the last trim leaves. */
  readonly unfinished: Size;
  readonly center: {
    readonly fabric: string;
    readonly finished: Size;
    readonly cut: Size;
    /** What `cut` was rounded up from, where the exact size is off the grid. */
    readonly exact?: Size;
  };
  readonly logs: readonly Log[];
  readonly cornerstones: readonly Cornerstone[];
  readonly rounds: readonly LogCabinRound[];
  readonly strips: readonly StripTotal[];
  /** What one block takes, ready for a cutting plan. */
  readonly pieces: readonly LogCabinPiece[];
  readonly warnings: readonly Warning<LogCabinWarningCode>[];
}
