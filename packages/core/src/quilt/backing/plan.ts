import type { Length } from '../../length/length.js';
import type { Notice } from '../../plan/notice.js';
import type { Piece } from '../../plan/piece.js';
import type { Size } from '../../plan/size.js';
import type { BackingNoteCode } from './sentences.js';

/** One way of making a backing. */
export interface BackingWay {
  /** The usable width of its fabric. */
  readonly width: Length;
  /** Whether that is one of the wide fabrics. */
  readonly wide: boolean;
  /** Which way the fabric's length runs on the quilt; seams run the same way. */
  readonly runs: 'down' | 'across';
  /** The seams' direction; `none` in one panel. */
  readonly seams: 'vertical' | 'horizontal' | 'none';
  readonly panels: number;
  /** How long each panel is: on the grid. */
  readonly panel: Length;
  /** All panels one after the other: what this way takes of the fabric's length. */
  readonly length: Length;
  /** That, up to what the shop cuts. */
  readonly buy: Length;
  /** The sewn backing before it is trimmed. */
  readonly made: Size;
}

/** A slightly smaller overhang that one panel less would do for, where that saves something to buy. */
export interface BackingNearMiss {
  readonly way: BackingWay;
  /** On every side: on the grid. */
  readonly overhang: Length;
  /** How much less that is than was asked for. */
  readonly less: Length;
  /** Inches of the fabric's length, against the best way of the same fabric with the full overhang. */
  readonly saves: Length;
  /** The same, of what is bought. */
  readonly savesToBuy: Length;
  readonly note: Notice<BackingNoteCode>;
}

/** The back of a quilt in numbers to buy and sew by. Lengths are exact inches. */
export interface Backing {
  readonly quilt: Size;
  readonly overhang: Length;
  /** The quilt and the overhang. */
  readonly target: Size;
  readonly seam: Length;
  readonly increment: Length;
  /** Of every fabric both ways; the fabric of ordinary width first, and of each the lesser first. */
  readonly ways: readonly BackingWay[];
  /** What takes least of the fabric of ordinary width; of equals the one with fewer panels. */
  readonly best: BackingWay;
  /** What takes least of a wide fabric, by area. */
  readonly bestWide?: BackingWay;
  /** The greatest saving first. */
  readonly nearMisses: readonly BackingNearMiss[];
  /** The best way's panels, without a fabric. */
  readonly pieces: readonly Piece[];
}
