import type { BlockSetting, QuarterTurns } from '../../block/turns.js';
import type { Length } from '../../length/length.js';
import type { Warning } from '../../plan/notice.js';
import type { Piece } from '../../plan/piece.js';
import type { Size } from '../../plan/size.js';
import type { UnitPoint } from '../../unit/point.js';
import type { LayoutWarningCode } from './sentences.js';
import type { QuiltSetting } from './spec.js';

/** What is sewn between and round the blocks. */
export type LayoutPart = 'alternate' | 'sash' | 'cornerstone' | 'side-triangle' | 'corner-triangle';

/** What a cell of a quilt top is. */
export type CellKind = 'block' | LayoutPart;

/** One block, sash, square or triangle, where it lies on the finished top. */
export interface Cell {
  readonly kind: CellKind;
  /**
   * Rows of blocks count from 0, on point those in between as well; what lies between two rows carries
   * the row above, what lies before the first carries −1. The same with columns, from the left.
   */
  readonly row: number;
  readonly column: number;
  /** Quarter turns clockwise; 0 but for blocks. */
  readonly turn: QuarterTurns;
  /**
   * Finished, exact, from the top's upper left corner, one after the other round the cell. A block's
   * four begin where its own upper left corner lies unturned (on point: above) and go round clockwise.
   */
  readonly corners: readonly UnitPoint[];
}

/** How many of each a quilt top holds. */
export interface LayoutCounts {
  readonly blocks: number;
  readonly alternates: number;
  /** Those as long as a block. */
  readonly sashes: number;
  /** Those from edge to edge, where there are no cornerstones. */
  readonly longSashes: number;
  /** Whole ones. */
  readonly cornerstones: number;
  /** On point with sashing: those at the edge, of which one half shows. */
  readonly halfCornerstones: number;
  readonly sideTriangles: number;
  readonly cornerTriangles: number;
}

/** Pieces of one kind and size, besides the blocks. */
export interface QuiltPart {
  readonly part: LayoutPart;
  /** One as it shows. A triangle's: along its longest edge that lies straight, and across it. */
  readonly finished: Size;
  /** The rectangle or square to cut: on the grid, rounded up from `exact`. */
  readonly cut: Size;
  readonly exact: Size;
  /** Rectangles or squares to cut. */
  readonly count: number;
  /** How many parts come from one. */
  readonly yield: number;
  /** How many parts the top holds. */
  readonly needed: number;
  /** How often each is cut from corner to corner. */
  readonly diagonalCuts: 0 | 1 | 2;
}

/** A quilt top without its borders, in numbers to cut and sew by. Lengths are exact inches. */
export interface QuiltLayout {
  readonly setting: QuiltSetting;
  readonly across: number;
  readonly down: number;
  readonly turns: BlockSetting | 'none';
  readonly block: Size;
  /** The sashes' finished width, where there are any. */
  readonly sash?: Length;
  readonly seam: Length;
  readonly grid: Length;
  readonly finished: Size;
  /** Raw edge to raw edge. */
  readonly unfinished: Size;
  /** Blocks to sew; alternates are none. */
  readonly blocks: number;
  readonly counts: LayoutCounts;
  /** Blocks stand in their order: row by row from the top, each from the left. */
  readonly cells: readonly Cell[];
  readonly parts: readonly QuiltPart[];
  /** The parts as rectangles to cut, without fabrics. */
  readonly pieces: readonly Piece[];
  readonly warnings: readonly Warning<LayoutWarningCode>[];
}
