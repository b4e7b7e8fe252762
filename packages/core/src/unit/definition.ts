import type { Sign } from '../plan/field.js';
import type { UnitPlan } from './plan.js';
import type { UnitSpec } from './spec.js';

/** One input of a unit, as data: a form, a table and a test are made from it. */
export type UnitInput =
  | {
      readonly kind: 'length' | 'size';
      readonly name: string;
      readonly sign: Sign;
      /** As a text that `length()` reads; left out where there is none. */
      readonly default?: string;
    }
  | {
      readonly kind: 'count';
      readonly name: string;
      readonly least: number;
      readonly most: number;
      readonly default: number;
    }
  | {
      readonly kind: 'degrees';
      readonly name: string;
      readonly least: number;
      readonly most: number;
      readonly default: number;
    }
  | {
      readonly kind: 'choice';
      readonly name: string;
      readonly choices: readonly string[];
      readonly default: string;
    }
  | { readonly kind: 'lengths'; readonly name: string; readonly most: number }
  | { readonly kind: 'flag'; readonly name: string; readonly default: boolean };

/** One way of making a unit. */
export interface UnitMethod {
  readonly name: string;
  /** Units from one set of cuts, where that is always the same. */
  readonly yield?: number;
  /** Whether it makes a part of the unit only, and so is not compared with the others. */
  readonly part?: boolean;
  /** What it can make, where it can't make all sizes. */
  readonly limit?: 'twice-as-wide' | 'at-least-twice-as-wide' | 'one-round';
}

/** What people name the unit by. */
export type FinishedMeaning = 'side' | 'size' | 'long edge' | 'height' | 'block' | 'subcut';

/**
 * A unit that says of itself what it takes and how it can be made. An element's form, the tables in
 * the documents and the tests are made from it.
 */
export interface UnitDefinition {
  readonly name: string;
  /** What `finished` stands for. */
  readonly finished: FinishedMeaning;
  /** A spec that its first method makes: where a form starts. Bare numbers are inches. */
  readonly example: UnitSpec;
  /** What it takes, besides those that all units take. */
  readonly inputs: readonly UnitInput[];
  /** The first one is the default. */
  readonly methods: readonly [UnitMethod, ...UnitMethod[]];
  /** The parts that fabrics are chosen for. */
  readonly fabrics: readonly string[];
  /** Checks every field of its spec, so a spec from a form can be handed over as it is. */
  plan(spec: UnitSpec): UnitPlan;
}
