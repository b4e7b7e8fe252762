import {
  type Hand,
  type LogCabin,
  type LogCabinSpec,
  logCabin,
  type PerSide,
  type Side,
  type TrimCut,
  trimCuts,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulations } from './designs.js';
import { specOf } from './simulation.js';
import { inches, refusal } from './support.js';

const nine = logCabin({
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
});

const roundOf = (plan: LogCabin, number: number): LogCabin['rounds'][number] => {
  const round = plan.rounds[number - 1];
  if (round === undefined) throw new Error(`There is no round ${number}.`);
  return round;
};

const cutText = ({ order, side, at, lines }: TrimCut): string =>
  `${order}: ${side} at the ${at}, ${lines.map(({ on, distance }) => `${on} ${inches(distance)}`).join(', ')}`;

/** A round's placements in words: the turn, the cuts, and the diagonal. */
const inWords = (plan: LogCabin, number: number, hand: Hand): string[] =>
  trimCuts(plan, roundOf(plan, number), hand).map(({ turn, cuts, diagonal }) =>
    [`turned ${turn}`, ...cuts.map(cutText), `diagonal ${inches(diagonal)}`].join('; '),
  );

// Two sides by the seams, the block turned half round, the trimmed edges on the unfinished size for the
// other two: common practice, no source. Distances are those worked out by hand in curved.test.ts.
describe('with a plain square ruler', () => {
  it('the right hand cuts right and top, then left and bottom on the unfinished size', () => {
    expect(inWords(nine, 2, 'right')).toEqual([
      'turned 0; 1: right at the right, center-seam 2 3/4, last-seam 1 1/2; 2: top at the top, center-seam 1 1/4, last-seam 3/4; diagonal nothing',
      'turned 2; 3: left at the right, trimmed-edge 6, center-seam 1 1/4, last-seam 3/4; 4: bottom at the top, trimmed-edge 6, center-seam 2 3/4, last-seam 1 1/2; diagonal nothing',
    ]);
  });

  it('the left hand cuts left and top, then right and bottom, with the same numbers', () => {
    expect(inWords(nine, 2, 'left')).toEqual([
      'turned 0; 1: left at the left, center-seam 1 1/4, last-seam 3/4; 2: top at the top, center-seam 1 1/4, last-seam 3/4; diagonal 1 1/4',
      'turned 2; 3: right at the left, trimmed-edge 6, center-seam 2 3/4, last-seam 1 1/2; 4: bottom at the top, trimmed-edge 6, center-seam 2 3/4, last-seam 1 1/2; diagonal 2 3/4',
    ]);
  });

  it('a plain block has the 45-degree line in both placements', () => {
    const plain = logCabin({ rounds: 2, center: 2, log: 1, strips: { log: 2 } });
    const diagonals = trimCuts(plain, roundOf(plain, 2), 'right').map(({ diagonal }) =>
      inches(diagonal),
    );
    expect(diagonals).toEqual(['2 1/4', '2 1/4']);
  });

  it('a block that is no square lays each trimmed edge on the size that runs its way', () => {
    const spec = { rounds: 1, center: { width: 3, height: 2 }, log: 1, strips: { log: 2 } };
    expect(inWords(logCabin(spec), 1, 'right')[1]).toBe(
      'turned 2; 3: left at the right, trimmed-edge 5 1/2, center-seam 1 1/4, last-seam 1 1/4; 4: bottom at the top, trimmed-edge 4 1/2, center-seam 1 1/4, last-seam 1 1/4; diagonal 1 1/4',
    );
  });

  it.each<[Side, Hand, string]>([
    ['top', 'right', 'turned 0; right at the right; top at the top'],
    ['top', 'left', 'turned 3; top at the left; right at the top'],
    ['right', 'right', 'turned 3; bottom at the right; right at the top'],
    ['right', 'left', 'turned 2; right at the left; bottom at the top'],
    ['bottom', 'right', 'turned 2; left at the right; bottom at the top'],
    ['bottom', 'left', 'turned 1; bottom at the left; left at the top'],
    ['left', 'right', 'turned 1; top at the right; left at the top'],
    ['left', 'left', 'turned 0; left at the left; top at the top'],
  ])('a quarter block begun at the %s is laid once for the %s hand: %s', (start, hand, words) => {
    const plan = logCabin({
      rounds: 2,
      layout: 'quarter',
      center: 2,
      log: 1,
      start,
      strips: { log: 2 },
    });
    const placements = trimCuts(plan, roundOf(plan, 1), hand);
    expect(
      placements.map(({ turn, cuts }) =>
        [`turned ${turn}`, ...cuts.map(({ side, at }) => `${side} at the ${at}`)].join('; '),
      ),
    ).toEqual([words]);
  });

  it.each<[Hand, readonly string[]]>([
    [
      'right',
      [
        'turned 0; 1: right at the right, center-seam 1 1/2, last-seam 1 1/2; diagonal nothing',
        'turned 3; 2: bottom at the right, center-seam 1 1/2, last-seam 1 1/2; diagonal nothing',
        'turned 2; 3: left at the right, trimmed-edge 4 1/4, center-seam 3/4, last-seam 3/4; diagonal nothing',
        'turned 1; 4: top at the right, trimmed-edge 4 1/4, center-seam 3/4, last-seam 3/4; diagonal nothing',
      ],
    ],
    [
      'left',
      [
        'turned 2; 1: right at the left, center-seam 1 1/2, last-seam 1 1/2; diagonal nothing',
        'turned 1; 2: bottom at the left, center-seam 1 1/2, last-seam 1 1/2; diagonal nothing',
        'turned 0; 3: left at the left, trimmed-edge 4 1/4, center-seam 3/4, last-seam 3/4; diagonal nothing',
        'turned 3; 4: top at the left, trimmed-edge 4 1/4, center-seam 3/4, last-seam 3/4; diagonal nothing',
      ],
    ],
  ])('trimmed after each log, the %s hand makes one cut a log, in sewing order', (hand, words) => {
    const plan = logCabin({
      rounds: 2,
      center: 2,
      wide: '1 1/4',
      narrow: '1/2',
      strips: { wide: 2, narrow: '1 1/2' },
      trim: { after: 'log' },
    });
    expect(inWords(plan, 1, hand)).toEqual(words);
  });

  it.each<Hand>(['left', 'right'])('a block that is never trimmed is not cut (%s hand)', (hand) => {
    const plan = logCabin({ rounds: 1, center: 2, log: 1 });
    expect(trimCuts(plan, roundOf(plan, 1), hand)).toEqual([]);
  });

  it('a hand is left or right', () => {
    expect(refusal(() => trimCuts(nine, roundOf(nine, 1), 'both' as Hand))).toMatchObject({
      code: 'unknown-choice',
      field: 'hand',
      message: '“both” is not known here. Use one of: left, right.',
    });
  });
});

describe('every trim', () => {
  const trimmed = simulations
    .filter(({ trim }) => trim !== 'never')
    .map((simulation): LogCabinSpec => specOf(simulation));
  const hands = fc.constantFrom<Hand>('left', 'right');

  it('cuts each side with a log once, in order, and by the numbers of the trim chart', () => {
    fc.assert(
      fc.property(trimmed, hands, (spec, hand) => {
        const plan = logCabin(spec);
        for (const round of plan.rounds) {
          const cuts = trimCuts(plan, round, hand).flatMap((placement) => placement.cuts);
          expect(cuts.map(({ order }) => order)).toEqual(cuts.map((_, index) => index + 1));
          expect(cuts.map(({ side }) => side).sort()).toEqual([...plan.sides].sort());
          for (const { side, lines } of cuts) {
            const seams = lines.filter(({ on }) => on !== 'trimmed-edge');
            expect(seams.map(({ distance }) => inches(distance))).toEqual([
              inches(round.centerSeamToEdge[side]),
              inches(round.lastSeamToEdge[side]),
            ]);
          }
        }
      }),
    );
  });

  it('after a round takes two placements, half a turn apart, or one for a quarter block', () => {
    fc.assert(
      fc.property(trimmed, hands, (spec, hand) => {
        const plan = logCabin({ ...spec, trim: { after: 'round' } });
        for (const round of plan.rounds) {
          const placements = trimCuts(plan, round, hand);
          const [first, second] = placements;
          expect(placements).toHaveLength(plan.layout === 'quarter' ? 1 : 2);
          expect(placements.map(({ cuts }) => cuts.map(({ at }) => at))).toEqual(
            placements.map(() => [hand, 'top']),
          );
          if (first === undefined || second === undefined) continue;
          expect(second.turn - first.turn).toBe(2);
          const onEdges = second.cuts.map(({ side, lines }) => [side, lines[0]] as const);
          for (const [side, line] of onEdges) {
            const across = side === 'left' || side === 'right';
            expect(line?.on).toBe('trimmed-edge');
            expect(inches(line?.distance)).toBe(
              inches(across ? round.trimTo.width : round.trimTo.height),
            );
          }
        }
      }),
    );
  });

  it('with the left hand is the right hand’s on the mirrored block: sides turned over, numbers kept', () => {
    const MIRRORED: PerSide<Side> = { top: 'top', right: 'left', bottom: 'bottom', left: 'right' };
    const lines = (cut: TrimCut): string => cut.lines.map(({ on }) => on).join(', ');
    fc.assert(
      fc.property(trimmed, (spec) => {
        const plan = logCabin({ ...spec, trim: { after: 'round' } });
        fc.pre(plan.layout !== 'quarter');
        for (const round of plan.rounds) {
          const cutsOf = (hand: Hand) =>
            trimCuts(plan, round, hand).flatMap(({ turn, cuts }) =>
              cuts.map((cut) => ({ ...cut, turn })),
            );
          const [left, right] = [cutsOf('left'), cutsOf('right')];
          expect(left.map((cut) => [cut.order, cut.turn, lines(cut), cut.side, cut.at])).toEqual(
            right.map((cut) => [
              cut.order,
              cut.turn,
              lines(cut),
              MIRRORED[cut.side],
              MIRRORED[cut.at],
            ]),
          );
        }
      }),
    );
  });
});
