import { beyond, finishedPlace, movedOut, type Place } from '../block/places.js';
import type { LogCabin, LogCabinRound } from '../block/plan.js';
import { type Hand, type RulerLine, type RulerPlacement, trimCuts } from '../block/trimCuts.js';
import { fail } from '../errors/error.js';
import { type Length, length } from '../length/length.js';
import { countField } from '../plan/field.js';
import { notice } from '../plan/notice.js';
import { opposite, perSide, runsAcross, SIDES, type Side } from '../plan/side.js';
import { blockParts, fabricsOf, reachOut } from './blockParts.js';
import { blockDrawingSentences } from './blockSentences.js';
import type { Drawing, DrawingWord, Line, LineRole, Point, Shape } from './drawing.js';
import { cornerOf, edgeOf, grown, middleOf, sideOf, sizeOf, turnPlace } from './points.js';
import { area, fabricArea, line } from './shapes.js';

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
  readonly finished: Place;
  readonly raw: Place;
}

function onTheMat(
  plan: LogCabin,
  round: LogCabinRound,
  done: number,
  cut: readonly Side[],
): OnTheMat {
  // Where each log is trimmed by itself, the logs after it are not on yet.
  const logs = plan.trimAfter === 'log' ? round.logs.slice(0, done + 1) : round.logs;
  const before = finishedPlace(plan, round.number - 1);
  const after = finishedPlace(plan, round.number);
  const isOn = (side: Side): boolean => logs.some((log) => log.side === side);
  const finished = perSide((side) => (isOn(side) ? after : before)[side]);
  return {
    sewn: Math.max(...logs.map(({ order }) => order)),
    finished,
    raw: perSide((side) => {
      const untrimmed = isOn(side) && !cut.includes(side);
      const beyondSeam = untrimmed ? plan.seam.plus(round.trimAway[side]) : plan.seam;
      return movedOut(finished, side, beyondSeam);
    }),
  };
}

/** The same place with one side moved inward. */
const movedIn = (place: Place, side: Side, distance: Length): Place => ({
  ...place,
  [side]: movedOut(place, side, distance.negated()),
});

const lineAlong = (role: LineRole, place: Place, side: Side): Line =>
  line(role, sideOf(place, side));

/** The ruler: its edges on the trim lines of the cuts, reaching beyond the block elsewhere. */
function rulerPlace(cutSides: readonly Side[], trimmed: Place, raw: Place): Place {
  const reaching = grown(raw, OVERHANG);
  return perSide((side) => (cutSides.includes(side) ? trimmed : reaching)[side]);
}

function drawCut(
  { at, lines, order }: RulerPlacement['cuts'][number],
  hand: Hand,
  ruler: Place,
  raw: Place,
): Shape[] {
  const [start, end] = sideOf(ruler, at);
  // Counted from the corner that both cuts share, or from the end away from the person.
  const [from, to] = at === 'top' && hand === 'right' ? [end, start] : [start, end];
  const away = runsAcross(at) ? opposite(hand) : 'bottom';
  return [
    area('waste', beyond(at, ruler, raw)),
    lineAlong('trim-line', { ...grown(raw, OVERHANG), [at]: ruler[at] }, at),
    { kind: 'scale', from, to, toward: opposite(at) },
    ...lines.flatMap(({ on, distance }, row): Shape[] => {
      const laid = movedIn(ruler, at, distance);
      const measured = { from: cornerOf(laid, at, away), to: cornerOf(ruler, at, away) };
      return [
        lineAlong('ruler-line', laid, at),
        { kind: 'dimension', ...measured, away, row, measure: distance, word: wordFor[on] },
      ];
    }),
    { kind: 'label', role: 'cut', at: middleOf(edgeOf(raw, at)), text: { count: order } },
  ];
}

/** The ruler's 45-degree line from its corner through the center's corner, and as far again. */
function drawDiagonal({ cuts, diagonal }: RulerPlacement, ruler: Place): Shape[] {
  const [one, other] = cuts;
  if (diagonal === undefined || one === undefined || other === undefined) return [];
  const inside = grown(ruler, diagonal.times('-3/2'));
  return [
    line(
      'diagonal',
      [ruler, inside].map((place) => cornerOf(place, one.at, other.at)),
    ),
  ];
}

/** Where the other hand holds the ruler: well inside, away from the edges that are cut along. */
function holdPoint(ruler: Place, hand: Hand): Point {
  const { width, height } = sizeOf(ruler);
  const far = opposite(hand);
  return cornerOf(
    movedIn(movedIn(ruler, far, width.dividedBy(3)), 'bottom', height.dividedBy(4)),
    far,
    'bottom',
  );
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
  const raw = turned(mat.raw);
  const trimmed = turned(grown(mat.finished, plan.seam));
  const cutSides = laid.cuts.map(({ at }) => at);
  const ruler = rulerPlace(cutSides, trimmed, raw);
  const center = turned(finishedPlace(plan, 0));

  const shapes: Shape[] = [
    ...blockParts(plan, mat.sewn).map(({ place, fabric }) =>
      fabricArea(fabric, turned(reachOut(place, mat.finished, mat.raw))),
    ),
    area('outline', raw),
    ...SIDES.map((side) => lineAlong('center-seam', center, side)),
    area('ruler', ruler),
    ...drawDiagonal(laid, ruler),
    ...laid.cuts.flatMap((cut) => drawCut(cut, hand, ruler, raw)),
    { kind: 'label', role: 'hold', at: holdPoint(ruler, hand), text: { word: 'hold' } },
  ];
  return {
    title: notice(blockDrawingSentences, 'trim-title', {
      round: round.number,
      placement,
      placements: placements.length,
      trimTo: round.trimTo,
    }),
    description: notice(blockDrawingSentences, 'trim-description', {
      sides: laid.cuts.map(({ side }) => side).join(', '),
    }),
    fabrics: fabricsOf(plan),
    shapes,
  };
}
