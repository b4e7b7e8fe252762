import type { LengthInput } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import { checkFields, countField, missing } from '../../plan/field.js';
import { notice, type Step, type Warning, warningsFrom } from '../../plan/notice.js';
import type { Piece, PieceInput } from '../../plan/piece.js';
import { type FabricYardage, fabricYardage } from '../joined/fabricYardage.js';
import { type CutRectangle, type FabricRectangle, PACKING_EFFORT } from '../pack/packFabric.js';
import type { PackStepCode } from '../pack/sentences.js';
import { nameOf, type UncutPiece, uncutPieces } from '../pack/uncut.js';
import { readPieces } from '../readPieces.js';
import type { YardageOptions } from '../yardage.js';
import { packOnHand } from './packOnHand.js';
import { type FabricOnHand, readOnHand } from './readOnHand.js';
import { type OnHandStepCode, type OnHandWarningCode, onHandSentences } from './sentences.js';

/** What is on the shelf, and what is to be cut from it. */
export interface CutFromHandSpec extends YardageOptions {
  readonly onHand: readonly FabricOnHand[];
  /** Pieces of one fabric; a piece is turned where it is square or says `turnable`. */
  readonly pieces: readonly PieceInput[];
  /** The usable width of fabric that would be bought for the rest; default 40. */
  readonly fabricWidth?: LengthInput;
  /** How much work may be done, in elementary steps; the same number gives the same plan. */
  readonly effort?: number;
}

/** What fabric on hand gives, and what is still missing. */
export interface CutFromHand {
  readonly pieces: readonly Piece[];
  /** How the fabric is cut; `from` names the piece of fabric. */
  readonly rectangles: readonly CutRectangle[];
  /** How many of each piece are cut. */
  readonly cut: readonly number[];
  /** Pieces that are still missing, each with how many. */
  readonly missing: readonly UncutPiece[];
  /** Whether nothing is missing. */
  readonly complete: boolean;
  /** Whether it is proven that no cutting from edge to edge leaves less area missing. */
  readonly proven: boolean;
  /** What to buy for the missing pieces; left out where nothing is missing. */
  readonly buy?: FabricYardage;
  readonly steps: readonly Step<PackStepCode | OnHandStepCode>[];
  readonly warnings: readonly Warning<OnHandWarningCode>[];
}

const warning = warningsFrom(onHandSentences);

const FIELDS = [
  'onHand',
  'pieces',
  'fabricWidth',
  'effort',
  'increment',
  'shrinkage',
  'straightening',
  'spare',
  'method',
] as const;
const USUAL_WIDTH = 40;

/**
 * What can be cut from fabric on hand, what is still missing, and how much to buy for that. As much
 * area of pieces as can be found is cut, every cut from edge to edge; a piece of fabric with a missing
 * corner is cut into two rectangles, whichever way gives more. Exact: lengths are never rounded.
 *
 * @throws EighthsError `not-positive` for fabric of no size, `out-of-range` for fabric beyond a hundred
 *   yards, `no-pieces`, `too-many-pieces` beyond 10,000, and as `yardage` for what is missing.
 * @example
 * const { cut, missing, buy } = cutFromHand({
 *   onHand: [{ width: 21, length: 18, missingCorner: { width: 6, length: 8 } }],
 *   pieces: [{ label: 'square', width: 5, length: 5, count: 14 }],
 * });
 * cut; // [11]
 * missing[0]?.count; // 3
 * buy?.yards; // '⅜ yd'
 */
export function cutFromHand(spec: CutFromHandSpec): CutFromHand {
  checkFields(spec, '', FIELDS);
  const { onHand, pieces: inputs, fabricWidth = USUAL_WIDTH, effort: steps, ...options } = spec;
  const fabrics = readOnHand(onHand ?? missing('onHand'));
  const pieces = readPieces(inputs ?? missing('pieces'));
  const effort = countField(steps ?? PACKING_EFFORT, 'effort', 0, Number.MAX_SAFE_INTEGER);
  const packed = packOnHand(fabrics, pieces, effort);
  const uncut = uncutPieces(pieces, packed);
  const complete = uncut.length === 0;
  const rest = pieces.map((piece, i) => ({ ...piece, count: entryAt(packed.left, i) }));
  return {
    pieces,
    rectangles: packed.rectangles,
    cut: pieces.map(({ count }, i) => count - entryAt(packed.left, i)),
    missing: uncut,
    complete,
    proven: packed.leastLeft,
    ...(!complete && { buy: fabricYardage({ width: fabricWidth, pieces: rest }, options) }),
    steps: [...cutApart(packed.from), ...packed.rectangles.flatMap((each) => each.steps)],
    warnings: [
      ...uncut.map((piece) =>
        warning('not-cut', `pieces[${piece.piece}]`, { piece: nameOf(piece), count: piece.count }),
      ),
      ...(packed.leastLeft ? [] : [warning('more-not-ruled-out', 'onHand')]),
    ],
  };
}

/** How fabric with missing corners is cut into rectangles. */
const cutApart = (from: readonly FabricRectangle[]): readonly Step<OnHandStepCode>[] =>
  from.flatMap((first, i): Step<OnHandStepCode>[] => {
    const second = from[i + 1];
    if (second?.from !== first.from) return [];
    const sizeOf = ({ width, length: height }: FabricRectangle) => ({ width, height });
    const values = { piece: first.from + 1, first: sizeOf(first), second: sizeOf(second) };
    return [notice(onHandSentences, 'cut-apart', values)];
  });
