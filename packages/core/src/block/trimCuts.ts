import type { Length } from '../length/length.js';
import { choiceField } from '../plan/field.js';
import { HANDS, opposite, runsAcross, type Side, turnSide } from '../plan/side.js';
import type { LogCabin, LogCabinRound } from './plan.js';

/** The hand that holds the cutter. */
export type Hand = 'left' | 'right';

/** A line of the ruler, and what it is laid on. */
export interface RulerLine {
  readonly on: 'center-seam' | 'last-seam' | 'trimmed-edge';
  /** From the ruler's edge that is cut along. */
  readonly distance: Length;
}

/** One cut along an edge of the ruler. */
export interface TrimCut {
  /** Its place among the cuts of the round, from 1. */
  readonly order: number;
  /** The side of the block that is cut, named as the block faced the sewer. */
  readonly side: Side;
  /** Where that side lies as the block is turned. */
  readonly at: Side;
  /** The first sets the size, the others keep it square. */
  readonly lines: readonly RulerLine[];
}

/** One way the ruler lies on the block, and the cuts that are made without moving it. */
export interface RulerPlacement {
  /** Quarter turns clockwise from the block as it faced the sewer. */
  readonly turn: 0 | 1 | 2 | 3;
  readonly cuts: readonly TrimCut[];
  /**
   * Where both cuts lie equally far from the center: the distance at which the ruler's 45-degree line
   * passes through the center's corner.
   */
  readonly diagonal?: Length;
}

const TURNS = [0, 2, 1, 3] as const;

/** With a plain square ruler: the side at the cutting hand, then the side away from the person. */
const reachable = (hand: Hand, turn: number): readonly Side[] => [
  turnSide(hand, -turn),
  turnSide('top', -turn),
];

/** Turns of the block that bring every side under the ruler, the most sides at a time. */
function turnsFor(sides: readonly Side[], hand: Hand): readonly (typeof TURNS)[number][] {
  const turns: (typeof TURNS)[number][] = [];
  let left = sides;
  while (left.length > 0) {
    const gain = (turn: number): number =>
      reachable(hand, turn).filter((side) => left.includes(side)).length;
    const best = TURNS.reduce((one, other) => (gain(other) > gain(one) ? other : one));
    turns.push(best);
    left = left.filter((side) => !reachable(hand, best).includes(side));
  }
  return turns;
}

function linesFor(side: Side, round: LogCabinRound, oppositeTrimmed: boolean): RulerLine[] {
  const lines: RulerLine[] = [
    { on: 'center-seam', distance: round.centerSeamToEdge[side] },
    { on: 'last-seam', distance: round.lastSeamToEdge[side] },
  ];
  if (!oppositeTrimmed) return lines;
  const extent = runsAcross(side) ? round.trimTo.height : round.trimTo.width;
  return [{ on: 'trimmed-edge', distance: extent }, ...lines];
}

function place(
  turn: RulerPlacement['turn'],
  sides: readonly Side[],
  round: LogCabinRound,
  done: readonly Side[],
): RulerPlacement {
  const cuts = sides.map((side, index) => ({
    order: done.length + index + 1,
    side,
    at: turnSide(side, turn),
    lines: linesFor(side, round, done.includes(opposite(side))),
  }));
  const [one, other] = sides.map((side) => round.centerSeamToEdge[side]);
  const diagonal =
    one !== undefined && other !== undefined && one.equals(other) ? { diagonal: one } : {};
  return { turn, cuts, ...diagonal };
}

/**
 * How a round is trimmed with a plain square ruler: two sides with the ruler's lines on the seams,
 * then, the block turned half round, the other two with the unfinished size on the trimmed edges
 * (common practice, no source). Where each log is trimmed by itself there is one cut a placement.
 *
 * The left hand cuts along the ruler's left edge instead of its right one, which mirrors the order;
 * the block and its numbers stay as they are. A block that is never trimmed has no placements.
 *
 * @throws EighthsError `unknown-choice` where the hand is neither
 * @example
 * const block = logCabin({ rounds: 1, center: 2, log: 1, strips: { log: 2 } });
 * trimCuts(block, block.rounds[0], 'left').map(({ turn }) => turn); // [0,2]
 */
export function trimCuts(
  plan: LogCabin,
  round: LogCabinRound,
  hand: Hand,
): readonly RulerPlacement[] {
  choiceField(hand, 'hand', HANDS);
  const placements: RulerPlacement[] = [];
  const done: Side[] = [];
  const lay = (turn: RulerPlacement['turn'], sides: readonly Side[]): void => {
    placements.push(place(turn, sides, round, done));
    done.push(...sides);
  };
  if (plan.trimAfter === 'log') {
    for (const { side } of round.logs) {
      const turn = TURNS.find((quarters) => turnSide(side, quarters) === hand) ?? 0;
      lay(turn, [side]);
    }
  } else if (plan.trimAfter === 'round') {
    for (const turn of turnsFor(plan.sides, hand)) {
      const sides = reachable(hand, turn).filter(
        (side) => plan.sides.includes(side) && !done.includes(side),
      );
      lay(turn, sides);
    }
  }
  return placements;
}
