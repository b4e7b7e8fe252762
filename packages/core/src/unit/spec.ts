import type { LengthInput } from '../length/length.js';
import type { SizeInput } from '../plan/size.js';

/** What every unit's spec may say. */
export interface UnitBasics<Role extends string = string> {
  /** How many units are wanted, from 1 to 100,000; default 1. */
  readonly count?: number;
  /** The seam allowance; default 1/4. */
  readonly seam?: LengthInput;
  /** The finest line people cut to; default 1/8. */
  readonly grid?: LengthInput;
  /** The fabrics' names; left out, a fabric is called after its part. */
  readonly fabrics?: Readonly<Partial<Record<Role, string>>>;
}

/** The fields of all units' specs together; a unit refuses those that it does not have. */
export interface UnitSpec extends UnitBasics {
  readonly finished?: SizeInput;
  readonly method?: string;
  readonly oversize?: LengthInput;
  readonly usable?: LengthInput;
  readonly center?: LengthInput;
  readonly rounds?: number;
  readonly corner?: LengthInput;
  readonly corners?: number;
  readonly direction?: string;
  readonly angle?: number;
  readonly slants?: string;
  readonly triangle?: string;
  readonly radius?: LengthInput;
  readonly rails?: number;
  readonly strips?: readonly LengthInput[];
}
