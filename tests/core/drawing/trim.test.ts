import {
  type Drawing,
  drawTrim,
  type Hand,
  type Line,
  type LogCabin,
  logCabin,
  type PerSide,
  SIDES,
  type Side,
  trimCuts,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulations } from '../block/designs.js';
import { specOf } from '../block/simulation.js';
import { refusal, sixtyFourths } from '../block/support.js';
import {
  areaOf,
  areasOf,
  type Box,
  boxOf,
  type Fabric,
  fabricsIn,
  isWithin,
  linesOf,
  outlineOf,
  roundOf,
} from './shapes.js';

/** One lay of the ruler on a block, with its drawing. */
interface Lay {
  readonly plan: LogCabin;
  readonly round: LogCabin['rounds'][number];
  readonly hand: Hand;
  readonly placement: ReturnType<typeof trimCuts>[number];
  /** Its place among the placements of the round, from 1. */
  readonly number: number;
  readonly drawing: Drawing;
}

function laysOf(plan: LogCabin, roundNumber: number, hand: Hand): readonly Lay[] {
  const round = roundOf(plan, roundNumber);
  return trimCuts(plan, round, hand).map((placement, index) => {
    const number = index + 1;
    const drawing = drawTrim(plan, { round: roundNumber, placement: number, hand });
    return { plan, round, hand, placement, number, drawing };
  });
}

const hands: readonly Hand[] = ['left', 'right'];

const trimmedPlans: fc.Arbitrary<LogCabin> = simulations
  .filter(({ trim }) => trim !== 'never')
  .map((simulation) => logCabin(specOf(simulation)));

/** Every lay of the ruler for one hand in one round. */
const lays: fc.Arbitrary<readonly Lay[]> = trimmedPlans.chain((plan) =>
  fc
    .tuple(fc.integer({ min: 1, max: plan.rounds.length }), fc.constantFrom(...hands))
    .map(([round, hand]) => laysOf(plan, round, hand)),
);

/** Turned clockwise about the origin by quarter turns. */
function turned<Place extends Box>(place: Place, quarters: number): Place {
  let result = place;
  for (let turn = 0; turn < ((quarters % 4) + 4) % 4; turn += 1) {
    const { left, top, right, bottom } = result;
    // + 0: no negative zero, which toEqual tells apart.
    result = { ...result, left: -bottom + 0, top: left, right: -top + 0, bottom: right };
  }
  return result;
}

/** The part of a place that lies in another one. */
const clipped = <Place extends Box>(place: Place, to: Box): Place => ({
  ...place,
  left: Math.max(place.left, to.left),
  top: Math.max(place.top, to.top),
  right: Math.min(place.right, to.right),
  bottom: Math.min(place.bottom, to.bottom),
});

/** The block's polygons as it faced the sewer, cut to what the round is trimmed to. */
function blockIn({ drawing, placement, plan, round }: Lay): string[] {
  const n = sixtyFourths;
  const { centerSeamToEdge: reach } = round;
  const { width, height } = plan.center.finished;
  const trimmed: Box = {
    left: -n(reach.left),
    top: -n(reach.top),
    right: n(width) + n(reach.right),
    bottom: n(height) + n(reach.bottom),
  };
  return fabricsIn(drawing)
    .map((place) => JSON.stringify(clipped(turned(place, -placement.turn), trimmed)))
    .sort();
}

describe('a block under the ruler', () => {
  it('is filled by its parts to the raw edge as it is before this lay’s cuts', () => {
    fc.assert(
      fc.property(lays, (all) => {
        for (const { drawing, plan, round, number, placement } of all) {
          const outline = outlineOf(drawing);
          const fabrics = fabricsIn(drawing);
          expect(fabrics.every((place) => isWithin(place, outline))).toBe(true);
          expect(fabrics.reduce((sum, place) => sum + areaOf(place), 0)).toBe(areaOf(outline));
          if (plan.trimAfter === 'log' || number > 1) continue;
          const size = turned(outline, -placement.turn);
          expect([size.right - size.left, size.bottom - size.top]).toEqual(
            [round.untrimmed.width, round.untrimmed.height].map(sixtyFourths),
          );
        }
      }),
    );
  });

  it('has one round more a drawing, and where each log is trimmed one log more', () => {
    fc.assert(
      fc.property(lays, (all) => {
        for (const { drawing, plan, round, number } of all) {
          const newest = plan.trimAfter === 'log' ? round.logs[number - 1] : round.logs.at(-1);
          const sewn = newest?.order ?? Number.NaN;
          const stones = plan.cornerstones.filter(({ log }) => log <= sewn);
          expect(fabricsIn(drawing)).toHaveLength(1 + sewn + stones.length);
        }
      }),
    );
  });

  it('loses just the waste that lies beyond the trim lines', () => {
    fc.assert(
      fc.property(lays, (all) => {
        for (const [index, { drawing, placement }] of all.entries()) {
          const outline = outlineOf(drawing);
          const waste = areasOf(drawing, 'waste').map(({ points }) => boxOf(points));
          expect(waste).toHaveLength(placement.cuts.length);
          expect(waste.every((place) => isWithin(place, outline))).toBe(true);
          const next = all[index + 1];
          if (next === undefined || next.plan.trimAfter === 'log') continue;
          // What is left lies under the ruler at the next lay.
          const [ruler] = areasOf(drawing, 'ruler').map(({ points }) => boxOf(points));
          const left = clipped(outline, ruler ?? outline);
          const back = next.placement.turn - placement.turn;
          expect(turned(left, back)).toEqual(outlineOf(next.drawing));
        }
      }),
    );
  });
});

describe('the lines on the ruler', () => {
  /** Where an upright or level line lies, on the axis across it. */
  function levelOf({ points }: Line): { readonly axis: 'x' | 'y'; readonly at: number } {
    const { left, top, right, bottom } = boxOf(points);
    if (left === right) return { axis: 'x', at: left };
    expect(top).toBe(bottom);
    return { axis: 'y', at: top };
  }
  const outward: PerSide<{ readonly axis: 'x' | 'y'; readonly sign: 1 | -1 }> = {
    top: { axis: 'y', sign: -1 },
    right: { axis: 'x', sign: 1 },
    bottom: { axis: 'y', sign: 1 },
    left: { axis: 'x', sign: -1 },
  };

  it('the trim line lies as far from the center’s seam as the trim chart says', () => {
    fc.assert(
      fc.property(lays, (all) => {
        for (const { drawing, placement, round } of all) {
          const seams = linesOf(drawing, 'center-seam');
          expect(seams).toHaveLength(4);
          const center = boxOf(seams.flatMap(({ points }) => points));
          const trims = linesOf(drawing, 'trim-line').map(levelOf);
          expect(trims).toHaveLength(placement.cuts.length);
          for (const [index, { side, at }] of placement.cuts.entries()) {
            const { axis, sign } = outward[at];
            const trim = trims[index];
            expect(trim?.axis).toBe(axis);
            expect(((trim?.at ?? Number.NaN) - center[at]) * sign).toBe(
              sixtyFourths(round.centerSeamToEdge[side]),
            );
          }
        }
      }),
    );
  });

  it('lie on the center’s seam, on the last seam and on the edge that is trimmed already', () => {
    fc.assert(
      fc.property(lays, (all) => {
        for (const { drawing, placement, plan, round } of all) {
          const center = boxOf(linesOf(drawing, 'center-seam').flatMap(({ points }) => points));
          const rulerLines = linesOf(drawing, 'ruler-line').map(levelOf);
          const expected = placement.cuts.flatMap(({ side, at, lines }) => {
            const { axis, sign } = outward[at];
            const opposite = SIDES[(SIDES.indexOf(at) + 2) % 4] ?? at;
            const edge = center[at] + sign * sixtyFourths(round.centerSeamToEdge[side]);
            const places = {
              'center-seam': center[at],
              'last-seam': edge - sign * sixtyFourths(round.lastSeamToEdge[side]),
              'trimmed-edge': outlineOf(drawing)[opposite],
            };
            return lines.map(({ on }) => ({ axis, at: places[on] }));
          });
          expect(rulerLines).toEqual(expected);
          // The last seam is where the newest log of that side begins.
          if (plan.cornerstones.length > 0) continue;
          const fabrics = fabricsIn(drawing);
          for (const [index, { at, lines }] of placement.cuts.entries()) {
            const line = lines.findIndex(({ on }) => on === 'last-seam');
            const before = placement.cuts.slice(0, index).flatMap((cut) => cut.lines).length;
            const seam = rulerLines[before + line]?.at;
            const raw = outlineOf(drawing)[at];
            const inner = SIDES[(SIDES.indexOf(at) + 2) % 4] ?? at;
            expect(fabrics.some((place) => place[at] === raw && place[inner] === seam)).toBe(true);
          }
        }
      }),
    );
  });

  it('the 45-degree line runs from the ruler’s corner through the center’s corner', () => {
    fc.assert(
      fc.property(lays, (all) => {
        for (const { drawing, placement } of all) {
          const [diagonal] = linesOf(drawing, 'diagonal');
          expect(diagonal !== undefined).toBe(placement.diagonal !== undefined);
          if (diagonal === undefined) continue;
          const center = boxOf(linesOf(drawing, 'center-seam').flatMap(({ points }) => points));
          const [start, end] = diagonal.points.map(({ x, y }) => [
            x.toNumber() * 64,
            y.toNumber() * 64,
          ]);
          const [one, other] = placement.cuts.map(({ at }) => at);
          const corner = [one, other].includes('left') ? center.left : center.right;
          const [x0 = Number.NaN, y0 = Number.NaN] = start ?? [];
          const [x1 = Number.NaN, y1 = Number.NaN] = end ?? [];
          expect(Math.abs(x1 - x0)).toBe(Math.abs(y1 - y0));
          expect(Math.abs(corner - x0)).toBe(Math.abs(center.top - y0));
          expect(Math.min(x0, x1) <= corner && corner <= Math.max(x0, x1)).toBe(true);
        }
      }),
    );
  });
});

describe('a left-handed drawing', () => {
  it('has the block of the right-handed one, turned and never mirrored', () => {
    fc.assert(
      fc.property(trimmedPlans, fc.nat(), (plan, seed) => {
        const round = 1 + (seed % plan.rounds.length);
        const [left, right] = hands.map((hand) => laysOf(plan, round, hand));
        expect(left?.map(blockIn)).toEqual(right?.map(blockIn));
      }),
    );
  });

  it('would not have it mirrored: an asymmetrical curved block is not its own mirror image', () => {
    const plan = logCabin({
      rounds: 2,
      center: 2,
      wide: '1 1/4',
      narrow: '1/2',
      strips: { wide: 2, narrow: '1 1/2' },
    });
    const [lay] = laysOf(plan, 2, 'left');
    if (lay === undefined) throw new Error('The ruler is not laid.');
    const mirrored = ({ left, right, ...rest }: Fabric): Fabric => ({
      ...rest,
      left: 128 - right,
      right: 128 - left,
    });
    const own = fabricsIn(lay.drawing).map((place) => JSON.stringify(place));
    const other = fabricsIn(lay.drawing).map((place) => JSON.stringify(mirrored(place)));
    expect(own.sort()).not.toEqual(other.sort());
  });

  it('has the ruler’s edge, the cuts and the other hand on the other side', () => {
    const plan = logCabin({ rounds: 1, center: 2, log: 1, strips: { log: 2 } });
    const sideways = (hand: Hand) => {
      const drawing = drawTrim(plan, { round: 1, hand });
      const labels = drawing.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : []));
      // The block is symmetrical about the middle of its 2-inch center.
      return labels.map(({ role, text, at }) => [role, text, at.x.minus(1).toNumber()]);
    };
    expect(sideways('left')).toEqual(
      sideways('right').map(([role, text, x]) => [role, text, -Number(x) + 0]),
    );
    const hold = sideways('right').find(([role]) => role === 'hold');
    expect(hold?.[2]).toBeLessThan(0);
  });
});

describe('a drawing of a trim', () => {
  const plan = logCabin({ rounds: 2, center: 2, log: 1, strips: { log: 2 } });

  it('says which round and placement it is, and what to trim to', () => {
    const { title, description } = drawTrim(plan, { round: 2, placement: 2, hand: 'left' });
    expect(title.text).toBe('Round 2, placement 2 of 2: trim to 6 1/2');
    expect(description.text).toContain('trim line of the right, bottom side');
  });

  it.each([
    [{ round: 0 }, 'round'],
    [{ round: 3 }, 'round'],
    [{ round: 1, placement: 0 }, 'placement'],
    [{ round: 1, placement: 3 }, 'placement'],
    [{ round: 1, placement: 1.5 }, 'placement'],
  ])('%j is refused', (options, field) => {
    expect(refusal(() => drawTrim(plan, options))).toMatchObject({ code: 'not-a-count', field });
  });

  it('is not made of a block that is never trimmed', () => {
    const untrimmed = logCabin({ rounds: 1, center: 2, log: 1 });
    expect(refusal(() => drawTrim(untrimmed, { round: 1 }))).toMatchObject({
      code: 'not-a-count',
      field: 'placement',
      message: 'The ruler is laid 0 times in this round; there is no placement 1.',
    });
  });

  it('is for the left hand or the right', () => {
    const both = 'both' as Hand;
    expect(refusal(() => drawTrim(plan, { round: 1, hand: both }))).toMatchObject({
      code: 'unknown-choice',
      field: 'hand',
    });
  });

  it('sides are named as the block faced the sewer', () => {
    const at = (side: Side): Side[] =>
      trimCuts(plan, roundOf(plan, 1), 'right')
        .flatMap(({ cuts }) => cuts)
        .filter((cut) => cut.side === side)
        .map((cut) => cut.at);
    expect(SIDES.map(at)).toEqual([['top'], ['right'], ['top'], ['right']]);
  });
});
