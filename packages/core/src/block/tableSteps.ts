import { type Length, type LengthInput, length } from '../length/length.js';
import { checkFields, choiceField, lengthField } from '../plan/field.js';
import { notice, type Step } from '../plan/notice.js';
import { HANDS, runsAcross, turnSide } from '../plan/side.js';
import type { Log, LogCabin, LogCabinRound } from './plan.js';
import { type TableStepCode, tableSentences } from './tableSentences.js';
import {
  type Hand,
  type RulerLine,
  type RulerPlacement,
  type TrimCut,
  trimCuts,
} from './trimCuts.js';

/**
 * How logs come to the block: cut to length beforehand; sewn to the strip and cut off; or like that,
 * with the first seam of all blocks sewn as a strip set.
 */
export type SewingMethod = 'cut-first' | 'to-strip' | 'strip-set';

/** A mat that lies still, or one whose top turns with the block on it. */
export type CuttingMat = 'fixed' | 'turning';

/** How somebody works. */
export interface TableOptions {
  /** Default `cut-first`. */
  readonly method?: SewingMethod;
  /** The hand that holds the cutter; default `right`. */
  readonly hand?: Hand;
  /** Default `fixed`. */
  readonly mat?: CuttingMat;
  /** What is left beyond the block when a strip is cut off; default 1/2. */
  readonly extra?: LengthInput;
}

/** One thing to do, and the round in which it is done; 0 is the center. */
export interface TableStep extends Step<TableStepCode> {
  readonly round: number;
}

const METHODS: readonly SewingMethod[] = ['cut-first', 'to-strip', 'strip-set'];
const MATS: readonly CuttingMat[] = ['fixed', 'turning'];

interface Way {
  readonly method: SewingMethod;
  readonly hand: Hand;
  readonly mat: CuttingMat;
  readonly extra: Length;
}

const step = (round: number, code: TableStepCode, values: Step['values']): TableStep => ({
  round,
  ...notice(tableSentences, code, values),
});

function beginning({ center, logs }: LogCabin, { method }: Way): TableStep[] {
  const [first] = logs;
  if (method !== 'strip-set' || first === undefined) {
    return [step(0, 'cut-center', { size: center.cut, fabric: center.fabric })];
  }
  // The center's strip is as wide as the center reaches away from the seam.
  const across = runsAcross(first.side);
  const { width, height } = center.cut;
  const { side, fabric, order, cut } = first;
  return [
    step(0, 'sew-strip-set', {
      centerWidth: across ? height : width,
      centerFabric: center.fabric,
      width: cut.width,
      fabric,
    }),
    step(0, 'subcut-strip-set', { length: across ? width : height, order, side }),
  ];
}

function sewing(plan: LogCabin, log: Log, way: Way): TableStep[] {
  const { round, order, side, fabric, cut } = log;
  if (way.method === 'strip-set' && order === 1) return [];
  const stones = plan.cornerstones.filter((stone) => stone.log === order);
  // A log between cornerstones has to be of its length before it is sewn.
  if (way.method === 'cut-first' || stones.length > 0) {
    return [
      ...stones.map((stone) =>
        step(round, 'sew-cornerstone', {
          size: stone.cut,
          fabric: stone.fabric,
          side: stone.side,
          order,
        }),
      ),
      step(round, 'sew-log', { order, width: cut.width, length: cut.length, fabric, side }),
    ];
  }
  return [step(round, 'sew-to-strip', { order, width: cut.width, fabric, side, extra: way.extra })];
}

/** How the block comes to lie for a placement, from how it lay before. */
function turning(
  round: number,
  { turn }: RulerPlacement,
  before: RulerPlacement | undefined,
  mat: CuttingMat,
): TableStep[] {
  // The side that lies away from the person.
  const side = turnSide('top', -turn);
  if (before === undefined) return [step(round, 'lay-block', { side })];
  const quarters = (turn - before.turn) & 3;
  if (quarters === 0) return [];
  const what = mat === 'turning' ? 'turn-mat' : 'turn-block';
  return [
    quarters === 2 ? step(round, `${what}-half`, {}) : step(round, `${what}-quarter`, { side }),
  ];
}

function trimming(round: number, { side, at, lines }: TrimCut): TableStep {
  const distance = (on: RulerLine['on']): Length =>
    lines.find((line) => line.on === on)?.distance ?? length(0);
  const values = {
    side,
    at,
    centerSeam: distance('center-seam'),
    lastSeam: distance('last-seam'),
  };
  return lines.some(({ on }) => on === 'trimmed-edge')
    ? step(round, 'trim-to-edge', { ...values, size: distance('trimmed-edge') })
    : step(round, 'trim-side', values);
}

function placed(
  round: number,
  placement: RulerPlacement,
  before: RulerPlacement | undefined,
  mat: CuttingMat,
): TableStep[] {
  const { cuts, diagonal } = placement;
  return [
    ...turning(round, placement, before, mat),
    ...cuts.map((cut) => trimming(round, cut)),
    ...(diagonal === undefined ? [] : [step(round, 'check-diagonal', { distance: diagonal })]),
  ];
}

function roundSteps(plan: LogCabin, round: LogCabinRound, way: Way): TableStep[] {
  const { number, logs, trimTo } = round;
  const press = step(number, 'press', {});
  const checked = step(number, 'check-size', { round: number, size: trimTo });
  const placements = trimCuts(plan, round, way.hand);
  if (plan.trimAfter === 'log') {
    const sewn = logs.flatMap((log, index) => {
      const placement = placements[index];
      const trim =
        placement === undefined ? [] : placed(number, placement, placements[index - 1], way.mat);
      return [...sewing(plan, log, way), ...(index === 0 ? [press] : []), ...trim];
    });
    return [...sewn, checked];
  }
  return [
    ...logs.flatMap((log) => sewing(plan, log, way)),
    press,
    ...placements.flatMap((placement, index) =>
      placed(number, placement, placements[index - 1], way.mat),
    ),
    checked,
  ];
}

/**
 * The work in words, round by round: which strips, which sides, how to press, what to trim first and
 * where the ruler's lines lie. Sides are named as the block faces the sewer; the left hand trims the
 * mirror image's order along the ruler's other edge, and the block stays as it is. The block (or the
 * mat under it) is turned as seldom as a square ruler allows: once a round, where all four sides are
 * trimmed. The order of work is common practice (no source).
 *
 * @throws EighthsError `unknown-choice`, `not-positive` or `length-syntax`
 * @example
 * const block = logCabin({ rounds: 1, center: 2, log: 1, strips: { log: 2 } });
 * const steps = logCabinSteps(block, { method: 'to-strip', mat: 'turning' });
 * steps[1].text; // 'Sew the right side of the block to a strip 2 wide of log, and cut the strip off 1/2 beyond the block: log 1.'
 * steps.filter(({ code }) => code === 'turn-mat-half').length; // 1
 */
export function logCabinSteps(plan: LogCabin, options: TableOptions = {}): readonly TableStep[] {
  checkFields(options, 'options', ['method', 'hand', 'mat', 'extra']);
  const { method = 'cut-first', hand = 'right', mat = 'fixed', extra = '1/2' } = options;
  const way: Way = {
    method: choiceField(method, 'method', METHODS),
    hand: choiceField(hand, 'hand', HANDS),
    mat: choiceField(mat, 'mat', MATS),
    extra: lengthField(extra, 'extra', 'zero or more'),
  };
  return [...beginning(plan, way), ...plan.rounds.flatMap((round) => roundSteps(plan, round, way))];
}
