import type { LengthInput } from '../../length/length.js';
import type { SizeInput } from '../../plan/size.js';

/** How binding is cut: across the fabric, in strips on the bias, or as one tube on the bias. */
export type BindingCut = 'straight' | 'bias-strips' | 'bias-continuous';

/** Binding for the edge of a quilt. */
export interface BindingSpec {
  /** The quilt's size as it is bound. */
  readonly quilt: SizeInput;
  /** The width of the strips as they are cut; default 2 1/2. */
  readonly strip?: LengthInput;
  /** Default `straight`. */
  readonly cut?: BindingCut;
  /** The usable width of the fabric; default 40. */
  readonly fabricWidth?: LengthInput;
  /** What corners and ends take beyond the perimeter; default 10 (sources say from 8 to 24). */
  readonly extra?: LengthInput;
  /** The seam allowance of the joins on the bias; default 1/4. */
  readonly seam?: LengthInput;
  /** What the sides of squares to cut are whole multiples of; default 1/8. */
  readonly grid?: LengthInput;
}
