import type { LengthInput } from '../../length/length.js';
import type { MoneyInput } from '../money/money.js';
import type { FabricOptions } from '../pattern/planFabrics.js';
import type { QuiltRecipe, QuiltSize } from '../recipe/schema.js';

/** Blocks that each person makes. */
export interface BlocksEach {
  /** The id of a block of the recipe. */
  readonly block: string;
  /** From 1 to 1,000. */
  readonly count: number;
}

/** A class, and the kits for it. */
export interface KitsSpec extends FabricOptions {
  readonly recipe: QuiltRecipe;
  /** The name of one of the recipe's sizes, or another one; left out, its first. */
  readonly size?: string | QuiltSize;
  /** From 1 to 1,000. */
  readonly people: number;
  /** Quilts that each makes, from 1 to 20, or blocks; default one quilt. */
  readonly each?: number | readonly BlocksEach[];
  /** Kits beyond one for each, in case; from 0 to 1,000, default 0. */
  readonly spares?: number;
  /** Whether a kit holds the binding, where it makes whole quilts; default true. */
  readonly binding?: boolean;
  /** Whether a kit holds the backing, where it makes whole quilts; default false. */
  readonly backing?: boolean;
  /** What is on a bolt; default 15 yards (common practice, no source). */
  readonly bolt?: LengthInput;
  /** What a kit holds besides, at most 50. */
  readonly extras?: readonly { readonly name: string; readonly cost?: MoneyInput }[];
  /** What a kit is sold for. */
  readonly price?: MoneyInput;
  /** In place of a price: the part of it that is left, such as 0.4. */
  readonly margin?: LengthInput;
}
