import type { Length } from '../length/length.js';
import { assemble, type ExactCut, squareCut } from './assemble.js';
import type { Basics } from './basics.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import { stripSetCuts } from './stripSets.js';
import { sayOfStrips } from './stripUnit.js';
import { offGridStrips } from './stripWarnings.js';
import { withSeams } from './trimMarks.js';

/** The parts by turns, `dark` in the corners. */
const partAt = (row: number, column: number): 'dark' | 'light' =>
  (row + column) % 2 === 0 ? 'dark' : 'light';

function patchesOf(patch: Length, across: number): readonly UnitPatch[] {
  const places = Array.from({ length: across }, (_, index) => index);
  return places.flatMap((row) =>
    places.map((column): UnitPatch => {
      const [left, top] = [patch.times(column), patch.times(row)];
      const [right, bottom] = [left.plus(patch), top.plus(patch)];
      const points = [at(left, top), at(right, top), at(right, bottom), at(left, bottom)];
      return { fabric: partAt(row, column), points, grain: 'straight' };
    }),
  );
}

/** Segments of each kind that one unit takes: rows that begin dark, and rows that begin light. */
const rowsOf = (across: number): readonly [dark: number, light: number] => [
  Math.ceil(across / 2),
  Math.floor(across / 2),
];

function squares(patch: Length, across: number): readonly ExactCut[] {
  const all = across * across;
  const dark = Math.ceil(all / 2);
  return [
    squareCut('square', 'dark', patch, dark),
    squareCut('square', 'light', patch, all - dark),
  ];
}

const times = (cuts: readonly ExactCut[], sets: number): readonly ExactCut[] =>
  cuts.map((cut) => ({ ...cut, count: cut.count * sets }));

/** A four-patch or nine-patch of equal squares, from strip sets or from single squares. */
export function checkered(basics: Basics, side: Length, across: 2 | 3, usable: Length): UnitPlan {
  const { seam, method, count } = basics;
  const patch = side.dividedBy(across);
  const finished = { width: side, height: side };
  const trimTo = withSeams(finished, seam);
  const trim = stepsFrom(commonSentences)('trim', { trimTo });
  const shared = {
    finished,
    trimTo,
    patches: patchesOf(patch, across),
    narrowest: patch,
    warnings: offGridStrips([patch], basics),
  };
  if (method === 'cut-squares') {
    return assemble(basics, {
      ...shared,
      cuts: squares(patch.plus(seam.times(2)), across),
      yield: 1,
      seams: across * (across - 1) + across - 1,
      trims: 1,
      steps: [sayOfStrips('sew-squares'), trim],
    });
  }
  const [darkRows, lightRows] = rowsOf(across);
  const row = (first: number) =>
    Array.from({ length: across }, (_, column) => ({
      part: partAt(first, column),
      finished: patch,
    }));
  const first = stripSetCuts(
    { label: 'first strip set', strips: row(0), subcut: patch },
    usable,
    basics,
  );
  const second = stripSetCuts(
    { label: 'second strip set', strips: row(1), subcut: patch },
    usable,
    basics,
  );
  const { subcut } = first;
  const say = [
    sayOfStrips('sew-strip-set', { seam, set: subcut.width }),
    sayOfStrips('subcut', { subcut: subcut.step, perSet: subcut.perStrip }),
  ];
  // The rows of a four-patch are alike once one of them is turned: one set makes them all.
  if (across === 2) {
    const made = Math.floor(subcut.perStrip / 2);
    return assemble(basics, {
      ...shared,
      cuts: times(first.cuts, made === 0 ? 2 : 1),
      yield: Math.max(1, made),
      sewnFirst: true,
      seams: 1 + Math.max(1, made),
      trims: Math.max(1, made),
      strip: subcut,
      pieces: first.pieces(2 * count),
      steps: [...say, sayOfStrips('sew-two'), trim],
    });
  }
  return assemble(basics, {
    ...shared,
    cuts: [...times(first.cuts, darkRows), ...times(second.cuts, lightRows)],
    yield: subcut.perStrip,
    sewnFirst: true,
    seams: 6 + 2 * subcut.perStrip,
    trims: subcut.perStrip,
    strip: subcut,
    pieces: [...first.pieces(darkRows * count), ...second.pieces(lightRows * count)],
    steps: [...say, sayOfStrips('sew-three'), trim],
  });
}
