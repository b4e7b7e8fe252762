import type { Length } from '../length/length.js';
import type { Step, Warning } from '../plan/notice.js';
import { stripPieces } from '../plan/stripShapes.js';
import { assemble, type UnitParts } from './assemble.js';
import type { Basics } from './basics.js';
import type { StripCuts, UnitPlan } from './plan.js';
import { stepsFrom, warningsFrom } from './say.js';
import type { UnitSentence } from './sentences/all.js';
import { stripSentences } from './sentences/strips.js';

export const sayOfStrips = stepsFrom(stripSentences);
export const warnOfStrips = warningsFrom(stripSentences);

/** What a unit that is cut from strips works out. */
interface StripParts
  extends Pick<UnitParts, 'finished' | 'outline' | 'patches' | 'trimTo' | 'trim' | 'narrowest'> {
  /** The strip's width before it was rounded up. */
  readonly exact: Length;
  readonly strip: StripCuts;
  /** The part whose fabric it is. */
  readonly part: string;
  /** Shapes for one unit; default 1. */
  readonly shapes?: number;
  readonly approximate?: boolean;
  readonly seams?: number;
  readonly steps: readonly Step<UnitSentence>[];
  readonly warnings?: readonly Warning<UnitSentence>[];
}

/** How far rounding enlarges a piece, or what is cut from a strip. */
export function offGrid(
  code: 'strip-off-grid' | 'piece-off-grid',
  exact: Length,
  cut: Length,
): Warning<UnitSentence>[] {
  if (exact.equals(cut)) return [];
  return [warnOfStrips(code, 'finished', { exact, cut, adds: cut.minus(exact) })];
}

/** A plan for shapes cut from strips: one set of cuts is one strip of the usable width. */
export function assembleFromStrips(basics: Basics, parts: StripParts): UnitPlan {
  const { exact, strip, part, shapes = 1, seams = 0, steps, warnings = [], ...rest } = parts;
  return assemble(basics, {
    ...rest,
    strip,
    cuts: [
      {
        label: 'strip',
        part,
        shape: 'strip',
        exact: { width: strip.usable, height: exact },
        // A unit of several shapes may need more of them than one strip yields.
        count: strip.perStrip < shapes ? shapes : 1,
      },
    ],
    yield: strip.perStrip < shapes ? strip.perStrip : Math.floor(strip.perStrip / shapes),
    seams,
    trims: 0,
    pieces: stripPieces(
      { label: 'strip', fabric: basics.fabric(part) },
      basics.count * shapes,
      strip,
      basics.grid,
    ),
    steps,
    warnings: [...offGrid('strip-off-grid', exact, strip.width), ...warnings],
  });
}
