import { type Drawing, drawLogCabin, type Label, type LogCabin, logCabin } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulations } from '../block/designs.js';
import { specOf } from '../block/simulation.js';
import { inches, refusal, sixtyFourths } from '../block/support.js';
import {
  areaOf,
  areasOf,
  boxOf,
  doubleArea,
  fabricsIn,
  isWithin,
  linesOf,
  outlineOf,
  roundOf,
} from './shapes.js';

const plans: fc.Arbitrary<LogCabin> = simulations.map((simulation) => logCabin(specOf(simulation)));

/** A plan and one of its rounds. */
const plansAndRounds = plans.chain((plan) =>
  fc.record({ plan: fc.constant(plan), round: fc.integer({ min: 1, max: plan.rounds.length }) }),
);

const labelsOf = (drawing: Drawing): readonly Label[] =>
  drawing.shapes.filter((shape): shape is Label => shape.kind === 'label');

const nine = logCabin({
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
});

describe('a block drawn as sewn and trimmed', () => {
  it('is filled by its parts to the raw edge: their areas add up to the unfinished block’s', () => {
    fc.assert(
      fc.property(plansAndRounds, ({ plan, round }) => {
        const drawing = drawLogCabin(plan, { round });
        const outline = outlineOf(drawing);
        const { trimTo } = roundOf(plan, round);
        expect(outline.right - outline.left).toBe(sixtyFourths(trimTo.width));
        expect(outline.bottom - outline.top).toBe(sixtyFourths(trimTo.height));
        for (const { points } of areasOf(drawing, 'fabric')) {
          expect(isWithin(boxOf(points), outline)).toBe(true);
          expect(doubleArea(points)).toBe(2 * areaOf(boxOf(points)));
        }
        const areas = fabricsIn(drawing).map(areaOf);
        expect(areas.reduce((sum, area) => sum + area, 0)).toBe(areaOf(outline));
      }),
    );
  });

  it('has a center, and of its rounds so far each log with its number and its fabric', () => {
    fc.assert(
      fc.property(plansAndRounds, ({ plan, round }) => {
        const drawing = drawLogCabin(plan, { round });
        const logs = plan.logs.filter((log) => log.round <= round);
        const stones = plan.cornerstones.filter((stone) => stone.round <= round);
        expect(
          fabricsIn(drawing)
            .map(({ fabric }) => fabric)
            .sort(),
        ).toEqual([plan.center, ...logs, ...stones].map(({ fabric }) => fabric).sort());
        expect(labelsOf(drawing).map(({ text }) => text)).toEqual(
          logs.map(({ order }) => ({ count: order })),
        );
        for (const { at } of labelsOf(drawing)) {
          const outline = outlineOf(drawing);
          const [x, y] = [at.x.toNumber() * 64, at.y.toNumber() * 64];
          expect(isWithin({ left: x, right: x, top: y, bottom: y }, outline)).toBe(true);
        }
      }),
    );
  });

  it('has its finished edge one seam allowance inside the raw edge, all round', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const drawing = drawLogCabin(plan);
        const [edge, ...more] = linesOf(drawing, 'finished-edge');
        expect(more).toEqual([]);
        const finished = boxOf(edge?.points ?? []);
        const raw = outlineOf(drawing);
        const seam = sixtyFourths(plan.seam);
        expect([
          finished.left - raw.left,
          finished.top - raw.top,
          raw.right - finished.right,
          raw.bottom - finished.bottom,
        ]).toEqual([seam, seam, seam, seam]);
        expect(edge?.points.at(0)).toEqual(edge?.points.at(-1));
      }),
    );
  });

  const measures = (drawing: Drawing): string[] =>
    drawing.shapes.flatMap((shape) =>
      shape.kind === 'dimension'
        ? [`${shape.away} ${shape.row}: ${shape.word} ${inches(shape.measure)}`]
        : [],
    );

  it('names both its sizes and its center’s', () => {
    expect(measures(drawLogCabin(nine))).toEqual([
      'bottom 0: center 2',
      'bottom 1: finished 9',
      'bottom 2: trim to 9 1/2',
    ]);
    expect(drawLogCabin(nine).title.text).toBe('The block as sewn: 9 finished, trim to 9 1/2');
    expect(drawLogCabin(nine).description.text).toContain(
      'A center that finishes 2 with 16 logs in 4 rounds',
    );
  });

  it('names them both ways where it is no square', () => {
    const long = logCabin({ rounds: 1, center: { width: 3, height: 2 }, log: 1 });
    expect(measures(drawLogCabin(long))).toEqual([
      'bottom 0: center 3',
      'bottom 1: finished 5',
      'bottom 2: trim to 5 1/2',
      'right 0: center 2',
      'right 1: finished 4',
      'right 2: trim to 4 1/2',
    ]);
  });

  it('measures what it draws: each dimension line is as long as it says', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        for (const shape of drawLogCabin(plan).shapes) {
          if (shape.kind !== 'dimension') continue;
          const { left, top, right, bottom } = boxOf([shape.from, shape.to]);
          expect(right - left + bottom - top).toBe(sixtyFourths(shape.measure));
        }
      }),
    );
  });

  it.each([0, 5, 1.5, Number.NaN])('has no round %d of four', (round) => {
    expect(refusal(() => drawLogCabin(nine, { round }))).toMatchObject({
      code: 'not-a-count',
      field: 'round',
      values: { least: 1, most: 4 },
    });
  });
});
