import { type Length, length } from '../length/length.js';
import type { Piece } from '../plan/piece.js';
import { stripPieces } from '../plan/stripShapes.js';
import type { ExactCut } from './assemble.js';
import type { Basics } from './basics.js';
import { cutStrip } from './fromStrips.js';
import type { CutLabel, StripCuts } from './plan.js';

/** One strip of a set: the part whose fabric it is, and its finished width. */
export interface SetStrip {
  readonly part: string;
  readonly finished: Length;
}

/** Strips sewn together on their long edges, and how the set is cut across. */
export interface Strips {
  readonly label: CutLabel;
  readonly strips: readonly SetStrip[];
  /** The finished width of a cut across the set. */
  readonly subcut: Length;
}

/** A set, worked out. */
export interface StripSetCuts {
  readonly cuts: readonly ExactCut[];
  readonly subcut: StripCuts;
  /** The strips for a number of cuts across the set. */
  readonly pieces: (count: number) => readonly Piece[];
}

/** Strips of one part and one width, together. */
function alike(strips: readonly SetStrip[]): readonly (SetStrip & { readonly count: number })[] {
  const groups: (SetStrip & { readonly count: number })[] = [];
  for (const strip of strips) {
    const same = groups.findIndex(
      ({ part, finished }) => part === strip.part && finished.equals(strip.finished),
    );
    const group = groups[same];
    if (group === undefined) groups.push({ ...strip, count: 1 });
    else groups[same] = { ...group, count: group.count + 1 };
  }
  return groups;
}

/**
 * A strip that finishes f is cut f + 2s, the set is cut across every subcut + 2s; both rounded up to
 * the grid.
 *
 * @throws EighthsError `strip-too-short` where the usable width has no room for one cut
 */
export function stripSetCuts(set: Strips, usable: Length, basics: Basics): StripSetCuts {
  const { seam, grid } = basics;
  const seams = seam.times(2);
  const step = set.subcut.plus(seams).toGrid(grid, 'up');
  const groups = alike(set.strips);
  const cuts = groups.map(({ part, finished, count }): ExactCut => {
    const exact = { width: usable, height: finished.plus(seams) };
    return { label: set.label, part, shape: 'strip', exact, count };
  });
  const width = set.strips.reduce((sum, { finished }) => sum.plus(finished), seams);
  const subcut = cutStrip({ width, usable, first: length(0), step, rulerLine: step }, grid);
  return {
    cuts,
    subcut,
    pieces: (segments) =>
      groups.flatMap(({ part, finished, count }) => {
        const strip = { ...subcut, width: finished.plus(seams).toGrid(grid, 'up') };
        const named = { label: set.label, fabric: basics.fabric(part) };
        return stripPieces(named, segments, strip, grid).map((piece) => ({
          ...piece,
          count: piece.count * count,
        }));
      }),
  };
}
