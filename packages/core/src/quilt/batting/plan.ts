import type { Length } from '../../length/length.js';
import type { Size } from '../../plan/size.js';

/** A package that is large enough. */
export interface BattingPackage {
  readonly size: Size;
  /** Whether it lies across: its width along the quilt's height. */
  readonly turned: boolean;
  /** How much is left over each way, as it lies. */
  readonly leftOver: Size;
}

/** A package that would do with a slightly smaller overhang. */
export interface BattingNearMiss extends BattingPackage {
  /** On every side: on the grid. */
  readonly overhang: Length;
  readonly less: Length;
}

/** One way of laying batting from a roll; panels are butted, which takes no seam allowance. */
export interface BattingRoll {
  readonly runs: 'down' | 'across';
  readonly panels: number;
  readonly panel: Length;
  readonly length: Length;
  /** Up to what the shop cuts. */
  readonly buy: Length;
}

/** Batting in numbers to buy by. Lengths are exact inches. */
export interface Batting {
  readonly quilt: Size;
  readonly overhang: Length;
  /** The quilt and the overhang. */
  readonly target: Size;
  /** Packages that are large enough, the smallest first; empty where none is. */
  readonly packages: readonly BattingPackage[];
  /** Smaller packages that would nearly do, the least smaller overhang first. */
  readonly nearMisses: readonly BattingNearMiss[];
  readonly rollWidth: Length;
  /** Both ways, the lesser first. */
  readonly roll: readonly [BattingRoll, BattingRoll];
}
