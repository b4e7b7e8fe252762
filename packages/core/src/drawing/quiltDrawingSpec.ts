import type { LengthInput } from '../length/length.js';
import type { QuiltBorders } from '../quilt/borders/plan.js';
import type { LayoutPart, QuiltLayout } from '../quilt/layout/plan.js';
import type { BlockFace } from './blockFace.js';

/** The fabrics of what is sewn round the blocks. */
export interface QuiltFabrics extends Readonly<Partial<Record<LayoutPart | 'binding', string>>> {
  /** For each border, the innermost first. */
  readonly borders?: readonly string[];
  /** For the corner squares of each border; left out, the border's own. */
  readonly borderCorners?: readonly string[];
}

/** What a quilt is drawn from. */
export interface QuiltDrawingSpec {
  readonly layout: QuiltLayout;
  /** The blocks in it, at least one, each of the layout's block size. */
  readonly blocks: readonly BlockFace[];
  /** Which of the blocks stands in each place, in the order of the cells; left out, they take turns. */
  readonly places?: readonly number[];
  readonly borders?: QuiltBorders;
  /** The fabrics' names; left out, a fabric is called after its part. */
  readonly fabrics?: QuiltFabrics;
  /** How wide the binding shows beyond the finished edge; default 3/8, and 0 for none. */
  readonly binding?: LengthInput;
}
