import type { Length } from '../../length/length.js';
import type { Warning } from '../../plan/notice.js';
import type { Piece } from '../../plan/piece.js';
import type { Size } from '../../plan/size.js';
import type { JoinedStrips } from '../joinedStrips.js';
import type { BorderWarningCode } from './sentences.js';
import type { BorderGrain, BorderStyle } from './spec.js';

/** A strip: how wide, and how long. */
export interface StripSize {
  readonly width: Length;
  readonly length: Length;
}

/** Strips or squares of a border that are alike. */
export interface BorderPart {
  readonly part: 'sides' | 'top-and-bottom' | 'corners';
  readonly count: 2 | 4;
  /** As it shows; a mitered strip along the outer edge. */
  readonly finished: StripSize;
  /** What to cut, from the measured top where it is given: on the grid, rounded up from `exact`. */
  readonly cut: StripSize;
  readonly exact: StripSize;
  /** What would be cut by the plan alone; the same where nothing was measured. */
  readonly planned: StripSize;
  /** How much longer the cut length is than the planned one; below 0, how much shorter. */
  readonly differs: Length;
  /** In a pieced border: repeat units in each strip. */
  readonly units?: number;
}

/** One border in numbers to cut and sew by. */
export interface QuiltBorder {
  readonly width: Length;
  readonly style: BorderStyle;
  readonly corners: 'none' | 'squares';
  readonly cut: BorderGrain;
  readonly fabricWidth: Length;
  /** In the order of sewing. A border of corner squares sews top and bottom with the squares on. */
  readonly parts: readonly BorderPart[];
  /** Where strips across the fabric are shorter than the border. */
  readonly joined?: JoinedStrips;
  /** Along a mitered border: the least that its strips may measure. */
  readonly least?: Size;
  /** In a pieced border: all its repeat units. */
  readonly units?: number;
  /** The quilt's finished size with this border. */
  readonly finished: Size;
  /** What to cut, without fabrics; nothing for the units of a pieced border. */
  readonly pieces: readonly Piece[];
}

/** A quilt with its borders. Lengths are exact inches. */
export interface QuiltBorders {
  /** The finished size that the borders go round. */
  readonly quilt: Size;
  readonly seam: Length;
  readonly grid: Length;
  /** The innermost first. */
  readonly borders: readonly QuiltBorder[];
  readonly finished: Size;
  readonly unfinished: Size;
  /** Of all borders, in their order. */
  readonly pieces: readonly Piece[];
  readonly warnings: readonly Warning<BorderWarningCode>[];
}
