import { type Length, type LengthInput, length } from '../../length/length.js';
import { longerOf } from '../../length/longer.js';
import { checkFields, missing } from '../../plan/field.js';
import { type Step, type Warning, warningsFrom } from '../../plan/notice.js';
import type { Piece, PieceInput } from '../../plan/piece.js';
import { cuttingPlan } from '../cuttingPlan.js';
import type { CutRectangle } from '../pack/packFabric.js';
import { fabricSide } from '../pack/readFabric.js';
import type { PackStepCode } from '../pack/sentences.js';
import { nameOf } from '../pack/uncut.js';
import type { CuttingPlan } from '../plan.js';
import { readPieces } from '../readPieces.js';
import type { CuttingStepCode } from '../sentences.js';
import { type CuttingMethod, type CuttingSpec, MOST_PIECES } from '../spec.js';
import { bestDraft, type FabricPlacement, type Part, some, told } from './drafts.js';
import { boundByArea } from './fabricBound.js';
import { type Join, readJoin, readSeam } from './join.js';
import type { JoinedLengths } from './joinStrips.js';
import { type Lengthwise, lengthwise } from './lengthwise.js';
import { type FabricWarningCode, type JoinStepCode, joinSentences } from './sentences.js';

/** All that is cut from one fabric: of any length, joined or not. */
export interface FabricSpec {
  /** The usable width of the fabric. */
  readonly width: LengthInput;
  /**
   * Pieces of one fabric. `joinable` ones may be joined from strips; others that are longer than the
   * fabric is wide are cut along its length.
   */
  readonly pieces: readonly PieceInput[];
  /** How strips are joined; default `diagonal`. */
  readonly join?: Join;
  /** The seam allowance of joins, default 1/4. */
  readonly seam?: LengthInput;
  /** As for `cuttingPlan`, for what is cut across. */
  readonly method?: CuttingMethod;
  readonly effort?: number;
  readonly layers?: number;
}

/** How to cut everything from one fabric. */
export interface FabricPlan {
  readonly width: Length;
  readonly pieces: readonly Piece[];
  /** How much fabric it takes. */
  readonly length: Length;
  /** No plan of this method takes less than this. */
  readonly lowerBound: Length;
  /** Whether that is proven to be the least: the length is the lower bound. */
  readonly optimal: boolean;
  /** The block for pieces cut along the length, at the end of the fabric; its pieces by their place in the spec. */
  readonly along?: Lengthwise;
  /** What else is cut from that block. */
  readonly beside: readonly CutRectangle[];
  /** The strips that are joined. */
  readonly joined?: JoinedLengths;
  /** What is cut across the rest of the fabric, the strips that are joined among it. */
  readonly across?: CuttingPlan;
  readonly steps: readonly Step<CuttingStepCode | PackStepCode | JoinStepCode>[];
  readonly warnings: readonly Warning<FabricWarningCode>[];
  /** Every piece and joined strip where it lies on the fabric. */
  placements(): readonly FabricPlacement[];
}

const warning = warningsFrom(joinSentences);

const FIELDS = ['width', 'pieces', 'join', 'seam', 'method', 'effort', 'layers'] as const;

/**
 * One plan for everything that is cut from a fabric: first the block for pieces that are too long for
 * its width, with others beside them where that shortens the whole; then strips across, those among
 * them that are joined, and what is cut from these.
 *
 * Joinable pieces that fit across are joined only where that takes less. Exact: lengths are never
 * rounded. `lowerBound` holds for all plans of this kind; without long and joinable pieces the plan is
 * that of `cuttingPlan`.
 *
 * @throws EighthsError as `cuttingPlan`, `joinStrips` and `lengthwise`, with the path of the field.
 * @example
 * const plan = fabricPlan({
 *   width: 40,
 *   pieces: [
 *     { label: 'border', width: '5 1/2', length: 70, count: 4 },
 *     { label: 'square', width: 6, length: 6, count: 30 },
 *     { label: 'binding', width: '2 1/2', length: 312, count: 1, joinable: true },
 *   ],
 * });
 * plan.length.toString(); // '90'
 * plan.beside[0]?.placements.length; // 31
 */
export function fabricPlan(spec: FabricSpec): FabricPlan {
  checkFields(spec, '', FIELDS);
  const width = fabricSide(spec.width, 'width');
  const pieces = readPieces(spec.pieces ?? missing('pieces'), 'pieces', MOST_PIECES);
  const join = readJoin(spec.join);
  const seam = readSeam(spec.seam);
  const isLong = (piece: Piece): boolean => piece.length.compareTo(width) > 0;
  /** The pieces that are so; of the others none, so that places in the spec stay what they are. */
  const only = (wanted: (piece: Piece) => boolean): readonly Piece[] =>
    pieces.map((piece) => (wanted(piece) ? piece : { ...piece, count: 0 }));
  const isAlong = (piece: Piece): boolean => isLong(piece) && piece.joinable !== true;
  const longOnes = only(isAlong);
  const along = some(longOnes) ? lengthwise({ width, pieces: longOnes }) : undefined;

  const { method, effort, layers } = spec;
  const planOf = (parts: readonly Part[], by: Partial<CuttingSpec>): CuttingPlan | undefined =>
    parts.length === 0
      ? undefined
      : cuttingPlan({ width, pieces: parts.map(({ piece }) => piece), ...by });
  const working = { ...(effort !== undefined && { effort }) };
  const asAsked = {
    ...working,
    ...(method !== undefined && { method }),
    ...(layers !== undefined && { layers }),
  };
  const others = only((piece) => !isAlong(piece));
  const { joined, beside, besideParts, acrossParts } = bestDraft(
    others,
    along,
    { width, join, seam },
    isLong,
    (parts) => planOf(parts, { ...working, method: 'plain' }),
  );
  const across = planOf(acrossParts, asAsked);
  const blockLength = along?.length ?? length(0);
  const total = blockLength.plus(across?.length ?? 0);

  const joinable = (piece: Piece): boolean => piece.joinable === true;
  const bound = (): Length => {
    if (along === undefined && !some(only(joinable)) && across !== undefined) {
      return across.lowerBound;
    }
    const byArea = boundByArea(pieces, width, join, seam, isAlong);
    if (along !== undefined) return longerOf(byArea, along.lowerBound);
    const ordinary = only((piece) => !joinable(piece)).flatMap((piece, at): Part[] =>
      piece.count > 0 ? [{ piece, is: { kind: 'piece', piece: at } }] : [],
    );
    return longerOf(byArea, planOf(ordinary, asAsked)?.lowerBound ?? byArea);
  };
  const lowerBound = bound();
  const optimal = total.equals(lowerBound);
  return {
    width,
    pieces,
    length: total,
    lowerBound,
    optimal,
    ...(along !== undefined && { along }),
    beside,
    ...(joined !== undefined && { joined }),
    ...(across !== undefined && { across }),
    steps: [
      ...(along?.steps ?? []),
      ...beside.flatMap(({ steps }) => steps),
      ...(across?.steps ?? []),
      ...(joined?.steps ?? []),
    ],
    warnings: [
      ...pieces.flatMap((piece, at) =>
        piece.count > 0 && isAlong(piece) && piece.turnable === false
          ? [warning('lies-along', `pieces[${at}]`, { piece: nameOf(piece) })]
          : [],
      ),
      ...(joined?.warnings ?? []),
      ...(optimal ? [] : [warning('length-not-proven', 'pieces', { length: total, lowerBound })]),
    ],
    placements: () => [
      ...(along?.placements ?? []).map((placed) => ({ kind: 'piece' as const, ...placed })),
      ...beside.flatMap(({ placements }) => placements.map((placed) => told(placed, besideParts))),
      ...(across?.placements() ?? []).map((placed) =>
        told({ ...placed, y: placed.y.plus(blockLength) }, acrossParts),
      ),
    ],
  };
}
