import { type LengthInput, length } from '../../length/length.js';
import { checkFields, countField, missing } from '../../plan/field.js';
import { notice, type Step, type Warning, warningsFrom } from '../../plan/notice.js';
import type { Piece, PieceInput } from '../../plan/piece.js';
import { type CutRectangle, PACKING_EFFORT, packFabric } from '../pack/packFabric.js';
import type { PackStepCode } from '../pack/sentences.js';
import { nameOf, type UncutPiece, uncutPieces } from '../pack/uncut.js';
import { MOST_PACKED, readPieces } from '../readPieces.js';
import {
  type PrecutKind,
  type PrecutName,
  type PrecutSizeInput,
  precutKind,
  readPrecutSize,
} from './kinds.js';
import { type PrecutStepCode, type PrecutWarningCode, precutSentences } from './sentences.js';

/** What to cut from which precuts. */
export interface PrecutSpec {
  /** Pieces of one fabric; a piece is turned where it is square or says `turnable`. */
  readonly pieces: readonly PieceInput[];
  /** A name, or the usable size of something else. */
  readonly kind: PrecutName | PrecutSizeInput;
  /** The usable size of each; by default half an inch less each way for fat quarters and eighths. */
  readonly usable?: PrecutSizeInput;
  /** What the fabric is sold in, selvage to selvage; default 42. A fat quarter has half of it. */
  readonly fabricWidth?: LengthInput;
  /** How many are sold together; default 1. */
  readonly packOf?: number;
  /** How much work may be done, in elementary steps; the same number gives the same plan. */
  readonly effort?: number;
}

/** How many precuts a list of pieces takes, and how each is cut. */
export interface Precuts extends PrecutKind {
  readonly pieces: readonly Piece[];
  /** Whether every piece can be cut from such a precut. */
  readonly possible: boolean;
  /** Pieces that do not fit into one; the plan is for the others. */
  readonly unfit: readonly UncutPiece[];
  readonly needed: number;
  /** So many are needed at least; guillotine cuts alone are reckoned with. */
  readonly fewest: number;
  /** Whether it is proven that fewer would not do. */
  readonly optimal: boolean;
  readonly packs: number;
  /** Precuts left over of the last pack. */
  readonly spare: number;
  /** How they are cut, those that are cut alike together. */
  readonly rectangles: readonly CutRectangle[];
  readonly steps: readonly Step<PackStepCode | PrecutStepCode>[];
  readonly warnings: readonly Warning<PrecutWarningCode>[];
}

const warning = warningsFrom(precutSentences);

const FIELDS = ['pieces', 'kind', 'usable', 'fabricWidth', 'packOf', 'effort'] as const;

/**
 * How many fat quarters, strips or squares a list of pieces takes, and how each is cut: every cut
 * from edge to edge. Exact: lengths are never rounded. A piece's `length` lies along the width that
 * the fabric had.
 *
 * @throws EighthsError `unknown-choice` for a kind that is not known, `not-positive`, `out-of-range`,
 *   `no-pieces`, `too-many-pieces` beyond 10,000, `not-a-fraction`, `several-fabrics` and others, with
 *   the path of the field.
 * @example
 * const plan = precuts({
 *   kind: 'fat-quarter',
 *   pieces: [{ width: 5, length: 5, count: 30 }],
 *   packOf: 2,
 * });
 * [plan.needed, plan.optimal, plan.packs]; // [3,true,2]
 */
export function precuts(spec: PrecutSpec): Precuts {
  checkFields(spec, '', FIELDS);
  const pieces = readPieces(spec.pieces ?? missing('pieces'));
  const kind = precutKind(spec.kind ?? missing('kind'), spec.fabricWidth);
  const usable = spec.usable === undefined ? kind.usable : readPrecutSize(spec.usable, 'usable');
  const packOf = countField(spec.packOf ?? 1, 'packOf', 1, MOST_PACKED);
  const effort = countField(spec.effort ?? PACKING_EFFORT, 'effort', 0, Number.MAX_SAFE_INTEGER);
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const from = { from: 0, x: length(0), y: length(0), ...usable, count };
  const packed = packFabric([from], pieces, effort);

  const unfit = uncutPieces(pieces, packed);
  const { rectangles, fewest } = packed;
  const needed = rectangles.reduce((sum, each) => sum + each.count, 0);
  const optimal = needed === fewest;
  const packs = Math.ceil(needed / packOf);
  const size = { width: usable.width, height: usable.length };
  return {
    ...kind,
    usable,
    pieces,
    possible: unfit.length === 0,
    unfit,
    needed,
    fewest,
    optimal,
    packs,
    spare: packs * packOf - needed,
    rectangles,
    steps: [
      ...(kind.pinked && needed > 0 ? [notice(precutSentences, 'find-edge', size)] : []),
      ...rectangles.flatMap(({ steps }) => steps),
    ],
    warnings: [
      ...unfit.map((piece) =>
        warning('does-not-fit', `pieces[${piece.piece}]`, {
          piece: nameOf(piece),
          count: piece.count,
          ...size,
        }),
      ),
      ...(optimal ? [] : [warning('fewer-not-ruled-out', 'effort', { needed, fewest })]),
    ],
  };
}
