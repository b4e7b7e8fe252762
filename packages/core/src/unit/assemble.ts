import type { Length } from '../length/length.js';
import { shorterOf } from '../length/longer.js';
import type { Step, Warning } from '../plan/notice.js';
import type { Piece } from '../plan/piece.js';
import { type Size, sidesOf } from '../plan/size.js';
import type { Basics } from './basics.js';
import { biasEdges } from './bias.js';
import type {
  BonusTriangles,
  CutLabel,
  CutShape,
  StripCuts,
  TrimMark,
  UnitCut,
  UnitPatch,
  UnitPlan,
} from './plan.js';
import { rectangle, type UnitPoint } from './point.js';
import { stepsFrom, warningsFrom } from './say.js';
import type { UnitSentence } from './sentences/all.js';
import { commonSentences } from './sentences/common.js';

/** One kind of piece, exact. */
export interface ExactCut {
  readonly label: CutLabel;
  /** The part whose fabric it is cut from. */
  readonly part: string;
  readonly shape: CutShape;
  readonly exact: Size;
  readonly count: number;
  readonly diagonalCuts?: 0 | 1 | 2;
}

/** What a unit works out; the rest of its plan follows from it. */
export interface UnitParts {
  readonly finished: Size;
  readonly cuts: readonly ExactCut[];
  readonly yield: number;
  readonly trimTo: Size;
  readonly trim?: readonly TrimMark[];
  /** Left out: the rectangle of the finished size. */
  readonly outline?: readonly UnitPoint[];
  /** `fabric` names the part. */
  readonly patches: readonly UnitPatch[];
  readonly sewnFirst?: boolean;
  readonly seams: number;
  readonly trims: number;
  readonly strip?: StripCuts;
  readonly bonus?: BonusTriangles;
  readonly approximate?: boolean;
  /** Left out: the cuts of all sets. */
  readonly pieces?: readonly Piece[];
  /** The narrowest patch, where that is not the finished unit's shorter side. */
  readonly narrowest?: Length;
  /** What is done after cutting. */
  readonly steps: readonly Step<UnitSentence>[];
  readonly warnings?: readonly Warning<UnitSentence>[];
}

const square = (side: Length): Size => ({ width: side, height: side });

/** A square to cut, exact. */
export const squareCut = (
  label: CutLabel,
  part: string,
  side: Length,
  count: number,
  diagonalCuts: 0 | 1 | 2 = 0,
): ExactCut => ({ label, part, shape: 'square', exact: square(side), count, diagonalCuts });

/** Rounded up to the grid, once; a strip is as long as the fabric is wide. */
function roundUp({ part, exact, diagonalCuts = 0, ...rest }: ExactCut, basics: Basics): UnitCut {
  const up = (side: Length): Length => side.toGrid(basics.grid, 'up');
  return {
    ...rest,
    fabric: basics.fabric(part),
    width: rest.shape === 'strip' ? exact.width : up(exact.width),
    height: up(exact.height),
    exact,
    diagonalCuts,
  };
}

const pieceOf = (cut: UnitCut, sets: number): Piece => ({
  label: cut.label,
  fabric: cut.fabric,
  width: cut.height,
  length: cut.width,
  count: cut.count * sets,
});

const say = stepsFrom(commonSentences);
const warn = warningsFrom(commonSentences);

const isStrip = (cuts: readonly UnitCut[], piece: Piece): boolean =>
  cuts.some(({ shape, label }) => shape === 'strip' && label === piece.label);

/** What to cut, in words: strips of one fabric and width together, whole ones and a shorter last one. */
function cutSteps(pieces: readonly Piece[], cuts: readonly UnitCut[]): Step<UnitSentence>[] {
  return pieces.flatMap((piece, index) => {
    const { fabric = '', width, length, count } = piece;
    if (!isStrip(cuts, piece))
      return say('cut', { fabric, count, size: { width: length, height: width } });
    const alike = (other: Piece): boolean =>
      other.label === piece.label && other.fabric === fabric && other.width.equals(width);
    if (pieces.findIndex(alike) !== index) return [];
    const all = pieces.filter(alike).reduce((sum, other) => sum + other.count, 0);
    return say('cut-strips', { fabric, width, count: all });
  });
}

function commonWarnings(
  { finished, trimTo, narrowest, trims }: UnitParts,
  { seam, grid }: Basics,
  bias: UnitPlan['bias'],
): Warning<UnitSentence>[] {
  const warnings: Warning<UnitSentence>[] = [];
  const narrow = narrowest ?? shorterOf(finished.width, finished.height);
  if (narrow.compareTo(seam.times(2)) < 0) {
    warnings.push(warn('narrow-unit', 'finished', { finished: narrow }));
  }
  if (trims > 0) {
    for (const side of sidesOf(trimTo)) {
      const by = side.minus(side.toGrid(grid, 'down'));
      if (by.sign() > 0)
        warnings.push(warn('trim-off-grid', 'finished', { trimTo: side, by, grid }));
    }
  }
  if (bias.outside > 0) warnings.push(warn('bias-outside', 'method'));
  return warnings;
}

/** A plan from what a unit worked out: rounded cuts, sets, pieces, bias, steps and warnings. */
export function assemble(basics: Basics, parts: UnitParts): UnitPlan {
  const { definition, method, seam, grid, oversize, count } = basics;
  const { finished, trimTo, trim = [], outline, sewnFirst = false } = parts;
  const cuts = parts.cuts.map((cut) => roundUp(cut, basics));
  const sets = Math.ceil(count / parts.yield);
  const leftOver = sets * parts.yield - count;
  const corners = outline ?? rectangle(finished.width, finished.height);
  const bias = biasEdges(parts.patches, corners, sewnFirst);
  const pieces = parts.pieces ?? cuts.map((cut) => pieceOf(cut, sets));
  return {
    unit: definition.name,
    method,
    finished,
    seam,
    grid,
    oversize,
    count,
    cuts,
    yield: parts.yield,
    sets,
    leftOver,
    trimTo,
    trim,
    outline: corners,
    patches: parts.patches.map((patch) => ({ ...patch, fabric: basics.fabric(patch.fabric) })),
    bias,
    seams: parts.seams,
    trims: parts.trims,
    ...(parts.strip && { strip: parts.strip }),
    ...(parts.bonus && { bonus: parts.bonus }),
    approximate: parts.approximate ?? false,
    pieces,
    steps: [
      ...cutSteps(pieces, cuts),
      ...parts.steps,
      ...(leftOver > 0 && parts.strip === undefined ? [say('left-over', { leftOver, count })] : []),
    ],
    warnings: [...commonWarnings(parts, basics, bias), ...(parts.warnings ?? [])],
  };
}
