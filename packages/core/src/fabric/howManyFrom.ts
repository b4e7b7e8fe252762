import type { LengthInput } from '../length/length.js';
import { checkFields, lengthField, missing } from '../plan/field.js';
import { areaOf } from '../plan/piece.js';
import { cuttingPlan } from './cuttingPlan.js';
import type { CuttingPlan } from './plan.js';
import { readCutting } from './readCutting.js';
import { type CuttingSpec, MOST_OF_ONE_PIECE, MOST_PIECES } from './spec.js';

/** A piece of fabric on hand, and what one set of pieces is. */
export interface OnHandSpec extends CuttingSpec {
  /** The usable length of the fabric, its ends squared up. */
  readonly length: LengthInput;
}

/** How many complete sets a piece of fabric gives. */
export interface OnHand {
  readonly sets: number;
  /** Whether it is proven that no plan of this method gives one set more. */
  readonly proven: boolean;
  /** The plan for all sets; left out where there is not even one. */
  readonly plan?: CuttingPlan;
}

const FIELDS = ['width', 'length', 'pieces', 'method', 'effort', 'layers'] as const;

/**
 * How many complete sets of pieces can be cut from fabric on hand. One piece with a count of 1 asks
 * how often that piece can be cut.
 *
 * A plan takes up to a million pieces and 100,000 of one, so there are never more sets than that;
 * where that limit decides, the answer is not proven. `effort` holds for each plan that is tried.
 * The plans are plain ones where no method is given.
 *
 * @throws EighthsError as `cuttingPlan`
 * @example
 * const pieces = [{ width: 3, length: 3, count: 1 }];
 * howManyFrom({ width: '20 1/2', length: '17 1/2', pieces }).sets; // 30
 */
export function howManyFrom(spec: OnHandSpec): OnHand {
  checkFields(spec, '', FIELDS);
  // Many plans are made here, and thrifty ones take their time.
  const { length: lengthInput, ...oneSet } = { method: 'plain' as const, ...spec };
  const onHand = lengthField(lengthInput ?? missing('length'), 'length');
  const { width, pieces } = readCutting(oneSet);

  const counts = pieces.map(({ count }) => count);
  const most = Math.min(
    Math.floor(MOST_OF_ONE_PIECE / Math.max(...counts)),
    Math.floor(MOST_PIECES / counts.reduce((sum, count) => sum + count, 0)),
  );
  // One more than the area holds, and one for floating point.
  const byArea = Math.floor(width.times(onHand).toNumber() / areaOf(pieces).toNumber()) + 2;

  let best: CuttingPlan | undefined;
  let refused: CuttingPlan | undefined;
  let sets = 0;
  let tooMany = Math.min(byArea, most + 1);
  while (tooMany - sets > 1) {
    const tried = Math.floor((sets + tooMany) / 2);
    const plan = cuttingPlan({
      ...oneSet,
      pieces: pieces.map((piece) => ({ ...piece, count: piece.count * tried })),
    });
    if (plan.length.compareTo(onHand) <= 0) [sets, best] = [tried, plan];
    else [tooMany, refused] = [tried, plan];
  }
  const proven =
    tooMany <= most && (refused === undefined || refused.lowerBound.compareTo(onHand) > 0);
  return { sets, proven, ...(best === undefined ? {} : { plan: best }) };
}
