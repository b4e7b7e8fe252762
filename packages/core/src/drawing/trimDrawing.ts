import { beyond, finishedReach, type Place, placeWithin } from '../block/places.js';
import type { LogCabin, LogCabinRound } from '../block/plan.js';
import { type Hand, type RulerLine, type RulerPlacement, trimCuts } from '../block/trimCuts.js';
import { fail } from '../errors/error.js';
import { type Length, length } from '../length/length.js';
import { countField } from '../plan/field.js';
import { notice } from '../plan/notice.js';
import { opposite, type PerSide, perSide, runsAcross, SIDES, type Side } from '../plan/side.js';
import { blockParts, fabricsOf, reachOut } from './blockParts.js';
import type { Drawing, DrawingWord, Line, LineRole, Point, Shape } from './drawing.js';
import { cornersOf, middleOf, point, sideOf, turnPlace } from './points.js';
import { drawingSentences } from './sentences.js';

/** Which of a block's trims is drawn, and for whom. */
export interface TrimDrawingOptions {
  /** From 1. */
  readonly round: number;
  /** Which placement of the ruler in that round, from 1; default 1. */
  readonly placement?: number;
  /** The hand that holds the cutter; default `right`. */
  readonly hand?: Hand;
}

/** How far a ruler and a trim line are drawn beyond the block. */
const OVERHANG = length('1/2');

const wordFor: Readonly<Record<RulerLine['on'], DrawingWord>> = {
  'center-seam': 'center seam',
  'last-seam': 'last seam',
  'trimmed-edge': 'trimmed edge',
};

/** The block as it lies on the mat: what is sewn, how far it reaches, and what has been trimmed. */
interface OnTheMat {
  /** The order of the last log sewn. */
  readonly sewn: number;
  readonly finished: PerSide<Length>;
  readonly raw: PerSide<Length>;
}

function onTheMat(
  plan: LogCabin,
  round: LogCabinRound,
  done: number,
  cut: readonly Side[],
): OnTheMat {
  // Where each log is trimmed by itself, the logs after it are not on yet.
  const logs = plan.trimAfter === 'log' ? round.logs.slice(0, done + 1) : round.logs;
  const before = finishedReach(plan, round.number - 1);
  const after = finishedReach(plan, round.number);
  const isOn = (side: Side): boolean => logs.some((log) => log.side === side);
  const finished = perSide((side) => (isOn(side) ? after[side] : before[side]));
  return {
    sewn: Math.max(...logs.map(({ order }) => order)),
    finished,
    raw: perSide((side) => {
      const edge = finished[side].plus(plan.seam);
      return isOn(side) && !cut.includes(side) ? edge.plus(round.trimAway[side]) : edge;
    }),
  };
}

const grow = (place: Place, by: Length): Place => ({
  left: place.left.minus(by),
  top: place.top.minus(by),
  right: place.right.plus(by),
  bottom: place.bottom.plus(by),
});

/** A point at a distance from a side of a place, measured inward. */
const inward = (place: Place, side: Side, distance: Length): Length =>
  side === 'left' || side === 'top' ? place[side].plus(distance) : place[side].minus(distance);

/** A line along `side` of `place`, moved inward by a distance. */
function lineAlong(place: Place, side: Side, distance: Length, role: LineRole): Line {
  const moved = { ...place, [side]: inward(place, side, distance) };
  return { kind: 'line', role, points: sideOf(moved, side) };
}

/** The ruler: its edges on the trim lines of the cuts, reaching beyond the block elsewhere. */
function rulerPlace(cutSides: readonly Side[], trimmed: Place, raw: Place): Place {
  const ruler = { ...grow(raw, OVERHANG) };
  for (const side of cutSides) ruler[side] = trimmed[side];
  return ruler;
}

function drawCut(
  cut: RulerPlacement['cuts'][number],
  hand: Hand,
  ruler: Place,
  raw: Place,
): Shape[] {
  const { at, lines, order } = cut;
  const zero = length(0);
  const [start, end] = sideOf(ruler, at);
  const away = runsAcross(at) ? opposite(hand) : 'bottom';
  const shapes: Shape[] = [
    { kind: 'area', role: 'waste', points: cornersOf(beyond(at, ruler, raw)) },
    lineAlong({ ...grow(raw, OVERHANG), [at]: ruler[at] }, at, zero, 'trim-line'),
    // Counted from the corner that both cuts share, or from the end away from the person.
    at === 'top' && hand === 'right'
      ? { kind: 'scale', from: end, to: start, toward: opposite(at) }
      : { kind: 'scale', from: start, to: end, toward: opposite(at) },
  ];
  for (const [row, { on, distance }] of lines.entries()) {
    shapes.push(lineAlong(ruler, at, distance, 'ruler-line'));
    const [from, to] = measuredPoints(ruler, at, away, distance);
    shapes.push({ kind: 'dimension', from, to, away, row, measure: distance, word: wordFor[on] });
  }
  const outside = sideOf(raw, at);
  const middle = middleOf({
    left: outside[0].x,
    top: outside[0].y,
    right: outside[1].x,
    bottom: outside[1].y,
  });
  shapes.push({ kind: 'label', role: 'cut', at: middle, text: { count: order } });
  return shapes;
}

/** The ends of a ruler line's distance from the ruler's edge, on the side where it is written. */
function measuredPoints(ruler: Place, at: Side, away: Side, distance: Length): [Point, Point] {
  const edge = ruler[at];
  const line = inward(ruler, at, distance);
  return runsAcross(at)
    ? [point(ruler[away], line), point(ruler[away], edge)]
    : [point(line, ruler[away]), point(edge, ruler[away])];
}

/** The ruler's 45-degree line from its corner through the center's corner, and as far again. */
function drawDiagonal({ cuts, diagonal }: RulerPlacement, ruler: Place): Shape[] {
  const [one, other] = cuts;
  if (diagonal === undefined || one === undefined || other === undefined) return [];
  const far = diagonal.times('3/2');
  const corner = point(ruler[one.at], ruler[other.at]);
  const inner = point(inward(ruler, one.at, far), inward(ruler, other.at, far));
  return [{ kind: 'line', role: 'diagonal', points: [corner, inner] }];
}

/** Where the other hand holds the ruler: well inside, away from the edges that are cut along. */
function holdPoint(ruler: Place, hand: Hand): Point {
  const third = ruler.right.minus(ruler.left).dividedBy(3);
  const x = hand === 'right' ? ruler.left.plus(third) : ruler.right.minus(third);
  return point(x, ruler.bottom.minus(ruler.bottom.minus(ruler.top).dividedBy(4)));
}

/**
 * A block at one of its rounds as it lies under a plain square ruler: raw edges, trim lines, the seam
 * round the center, and the ruler lines that are laid on the seams. One placement of the ruler a
 * drawing; `trimCuts` says how many a round has.
 *
 * The left hand mirrors the ruler, the place of the hand and the order of the cuts, never the block.
 *
 * @throws EighthsError `not-a-count` where the block has no such round, or the round no such placement
 *   (a block that is never trimmed has none).
 * @example
 * const block = logCabin({ rounds: 2, center: 2, log: 1, strips: { log: 2 } });
 * drawTrim(block, { round: 2 }).title.text; // 'Round 2, placement 1 of 2: trim to 6 1/2'
 */
export function drawTrim(plan: LogCabin, options: TrimDrawingOptions): Drawing {
  const { placement = 1, hand = 'right' } = options;
  countField(options.round, 'round', 1, plan.rounds.length);
  const round = plan.rounds.find(({ number }) => number === options.round);
  const placements = round === undefined ? [] : trimCuts(plan, round, hand);
  const laid = placements[placement - 1];
  if (round === undefined || laid === undefined) {
    return fail(
      'not-a-count',
      'placement',
      { value: placement, least: Math.min(1, placements.length), most: placements.length },
      'The ruler is laid {most} times in this round; there is no placement {value}.',
    );
  }
  const earlier = placements.slice(0, placement - 1).flatMap(({ cuts }) => cuts);
  const mat = onTheMat(
    plan,
    round,
    placement - 1,
    earlier.map(({ side }) => side),
  );
  const turned = (place: Place): Place => turnPlace(place, laid.turn);
  const finished = placeWithin(plan, mat.finished);
  const rawBlock = placeWithin(plan, mat.raw);
  const raw = turned(rawBlock);
  const trimmed = turned(grow(finished, plan.seam));
  const cutSides = laid.cuts.map(({ at }) => at);
  const ruler = rulerPlace(cutSides, trimmed, raw);
  const center = turned(placeWithin(plan, finishedReach(plan, 0)));

  const parts = blockParts(plan, mat.sewn);
  const shapes: Shape[] = [
    ...parts.map(({ place, fabric }): Shape => {
      const points = cornersOf(turned(reachOut(place, finished, rawBlock)));
      return { kind: 'area', role: 'fabric', fabric, points };
    }),
    { kind: 'area', role: 'outline', points: cornersOf(raw) },
    ...SIDES.map((side) => lineAlong(center, side, length(0), 'center-seam')),
    { kind: 'area', role: 'ruler', points: cornersOf(ruler) },
    ...drawDiagonal(laid, ruler),
    ...laid.cuts.flatMap((cut) => drawCut(cut, hand, ruler, raw)),
    { kind: 'label', role: 'hold', at: holdPoint(ruler, hand), text: { word: 'hold' } },
  ];
  return {
    title: notice(drawingSentences, 'trim-title', {
      round: round.number,
      placement,
      placements: placements.length,
      trimTo: round.trimTo,
    }),
    description: notice(drawingSentences, 'trim-description', {
      sides: laid.cuts.map(({ side }) => side).join(', '),
    }),
    fabrics: fabricsOf(plan),
    shapes,
  };
}
