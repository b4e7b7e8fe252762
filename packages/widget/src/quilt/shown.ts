import type { Kits, QuiltPlan, QuiltRecipe } from '@eighths/core';
import type { Voice } from '../base/voice.js';
import type { QuiltPicture } from './picture.js';

/** A quilt that was worked out, with all that is shown of it. */
export interface MadeQuilt {
  readonly recipe: QuiltRecipe;
  readonly plan: QuiltPlan;
  /** Undefined where there are too many cells for a drawing. */
  readonly picture: QuiltPicture | undefined;
}

/** How a reader tries other colors. */
export interface Coloring {
  /** Whether any was chosen. */
  readonly any: boolean;
  readonly choose: (tint: number, color: string) => void;
  readonly reset: () => void;
}

/** What every part of the pattern needs to know. */
export interface Shown extends MadeQuilt {
  readonly voice: Voice;
  /** Whether it is a page to read and print, without inputs. */
  readonly readonly: boolean;
  readonly kits: Kits | undefined;
  /** The reader's colors of the drawing; undefined where they cannot be chosen. */
  readonly coloring: Coloring | undefined;
  /** Whether a part that folds away is open. */
  readonly isOpen: (part: string) => boolean;
  readonly setOpen: (part: string, open: boolean) => void;
}

/** What people call the fabrics, by their ids. */
export const fabricNames = ({ fabrics }: QuiltRecipe): ReadonlyMap<string, string> =>
  new Map(fabrics.map(({ id, name = id }) => [id, name]));

/** Fabrics have as many tints as that; more share them. */
export const TINTS = 16;

/** The tint of a fabric: its place in the recipe. */
export const tintOf = ({ fabrics }: QuiltRecipe, fabric: string): number =>
  Math.max(
    0,
    fabrics.findIndex(({ id }) => id === fabric),
  ) % TINTS;
