import type { Yardage } from '../../fabric/yardage.js';
import type { Length } from '../../length/length.js';
import type { Warning } from '../../plan/notice.js';
import type { FabricPrice } from '../money/fabricCost.js';
import type { Margin } from '../money/margin.js';
import type { Money } from '../money/money.js';
import type { PatternCut } from '../pattern/cut.js';
import type { KitWarningCode } from './sentences.js';

/** Kits cut from bolts, each kit's piece in one. */
export interface KitBolts {
  /** What is on one bolt. */
  readonly bolt: Length;
  readonly kitsPerBolt: number;
  readonly bolts: number;
  /** What is left over of each full bolt: too short for a kit. */
  readonly remnant: Length;
  /** What is left over of the last bolt. */
  readonly lastRemnant: Length;
  /** Bolts that would do if all were cut from one length. */
  readonly pooledBolts: number;
}

/** One fabric of the kits. */
export interface KitFabric {
  readonly id: string;
  readonly name: string;
  readonly role?: string;
  /** What is cut from one kit's piece; the backing is not in it. */
  readonly cuts: readonly PatternCut[];
  /** One kit's own plan; left out where only backing is cut from this fabric. */
  readonly kit?: Yardage;
  /** One kit's backing. */
  readonly backing?: Yardage;
  /** What is cut off the bolt for one kit: its piece and its backing. */
  readonly perKit: Length;
  /** The same for all kits. */
  readonly separate: Length;
  /** What all kits take when they are cut from one length. */
  readonly pooled: Length;
  /** Whether it is proven that no plan of this method makes the pooled length less. */
  readonly pooledProven: boolean;
  /** What cutting from one length saves. */
  readonly saves: Length;
  readonly bolts: KitBolts;
  readonly price?: FabricPrice;
  /** Of one kit. */
  readonly cost?: Money;
}

/** What a kit holds besides fabric. */
export interface KitExtra {
  readonly name: string;
  readonly cost?: Money;
}

/** What a kit costs, and what it is sold for. */
export interface KitPrice {
  /** Of one kit: fabric by its price, and the extras. */
  readonly cost: Money;
  /** Of all kits, the spares too. */
  readonly total: Money;
  readonly price?: Money;
  /** Of one kit that is sold. */
  readonly margin?: Margin;
  /** What the people pay, less what all kits cost, the spares too. */
  readonly gain?: Money;
}

/** Kits for a class. */
export interface Kits {
  readonly kind: 'kits';
  readonly name: string;
  readonly size: string;
  readonly people: number;
  readonly spares: number;
  /** People and spares. */
  readonly kits: number;
  /** What one kit makes. */
  readonly makes: readonly { readonly name: string; readonly count: number }[];
  readonly fabrics: readonly KitFabric[];
  readonly extras: readonly KitExtra[];
  /** Left out where a fabric has no price. */
  readonly price?: KitPrice;
  readonly warnings: readonly Warning<KitWarningCode>[];
}
