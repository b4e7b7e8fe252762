import {
  Length,
  type LogCabin,
  type LogCabinSpec,
  length,
  logCabin,
  type PerSide,
  SIDES,
  type Side,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logCabinPlaces, type Place } from '../../../packages/core/src/block/places.js';
import { simulations } from './designs.js';
import { specOf } from './simulation.js';
import { inches, sixtyFourths } from './support.js';

const specs: fc.Arbitrary<LogCabinSpec> = simulations.map(specOf);
const plans: fc.Arbitrary<LogCabin> = specs.map(logCabin);

const sum = (lengths: readonly Length[]): Length =>
  lengths.reduce((total, each) => total.plus(each), length(0));

/** A plan, or any part of it, in texts as it goes into JSON. */
const written = (part: unknown): unknown => JSON.parse(JSON.stringify(part));

describe('a log cabin block', () => {
  it('finishes what its center and its logs add up to, across and down', () => {
    fc.assert(
      fc.property(plans, ({ center, logs, finished, unfinished, seam, rounds }) => {
        const added = (sides: readonly Side[]): Length =>
          sum(logs.filter(({ side }) => sides.includes(side)).map((log) => log.finished.width));
        const across = center.finished.width.plus(added(['left', 'right']));
        const down = center.finished.height.plus(added(['top', 'bottom']));
        expect([finished.width, finished.height].map(inches)).toEqual([across, down].map(inches));
        expect(inches(unfinished.width)).toBe(inches(across.plus(seam).plus(seam)));
        expect(inches(unfinished.height)).toBe(inches(down.plus(seam).plus(seam)));
        expect(written(rounds.at(-1)?.trimTo)).toEqual(written(unfinished));
      }),
    );
  });

  it('is never smaller before a trim than after it, on any side, and loses what is trimmed away', () => {
    fc.assert(
      fc.property(plans, ({ rounds, trimAfter }) => {
        for (const { untrimmed, trimTo, trimAway } of rounds) {
          for (const side of SIDES) expect(trimAway[side].sign()).toBeGreaterThanOrEqual(0);
          if (trimAfter === 'log') continue;
          const { top, right, bottom, left } = trimAway;
          expect(inches(trimTo.width.plus(left).plus(right))).toBe(inches(untrimmed.width));
          expect(inches(trimTo.height.plus(top).plus(bottom))).toBe(inches(untrimmed.height));
        }
      }),
    );
  });

  it('from exact strips has nothing to trim', () => {
    fc.assert(
      fc.property(simulations, (simulation) => {
        const none = simulation.wide.map(() => 0);
        const exact = { ...simulation, grid: 1, wideExcess: none, narrowExcess: none };
        for (const { trimAway, untrimmed, trimTo } of logCabin(specOf(exact)).rounds) {
          expect(SIDES.map((side) => inches(trimAway[side]))).toEqual(['0', '0', '0', '0']);
          if (simulation.trim !== 'log') expect(written(untrimmed)).toEqual(written(trimTo));
        }
      }),
    );
  });

  it('is the same whether its center is given, or solved from its finished size, or both', () => {
    fc.assert(
      fc.property(specs, (spec) => {
        const { center: _, ...rest } = spec;
        const { finished, center } = logCabin(spec);
        const solved = logCabin({ ...rest, finished });
        expect(written(solved.center.finished)).toEqual(written(center.finished));
        expect(written(solved)).toEqual(written(logCabin(spec)));
        expect(written(logCabin({ ...spec, finished }))).toEqual(written(solved));
      }),
    );
  });
});

describe('turning clockwise into counterclockwise', () => {
  const MIRRORED: PerSide<Side> = { top: 'top', right: 'left', bottom: 'bottom', left: 'right' };

  function mirroredSpec(spec: LogCabinSpec, plan: LogCabin): LogCabinSpec {
    const direction = plan.direction === 'clockwise' ? 'counterclockwise' : 'clockwise';
    const start = spec.start === undefined ? {} : { start: MIRRORED[spec.start] };
    if (spec.log !== undefined) {
      // A plain block begins on the right where nobody says; its mirror image on the left.
      return { ...spec, direction, start: MIRRORED[spec.start ?? 'right'] };
    }
    const [one, other] = spec.wideSides ?? ['right', 'bottom'];
    return { ...spec, direction, wideSides: [MIRRORED[one], MIRRORED[other]], ...start };
  }

  const swapped = (values: PerSide<Length>): PerSide<Length> => ({
    ...values,
    left: values.right,
    right: values.left,
  });

  it('mirrors the plan: the same cuts in the same order, left and right exchanged', () => {
    fc.assert(
      fc.property(specs, (spec) => {
        const plan = logCabin(spec);
        const mirrored = logCabin(mirroredSpec(spec, plan));
        const log = ({ side, ...rest }: LogCabin['logs'][number], exchange: boolean) => ({
          ...rest,
          side: exchange ? MIRRORED[side] : side,
        });
        expect(written(mirrored.logs.map((each) => log(each, true)))).toEqual(
          written(plan.logs.map((each) => log(each, false))),
        );
        const round = (each: LogCabin['rounds'][number], exchange: boolean) => {
          const turn = exchange ? swapped : (values: PerSide<Length>) => values;
          return {
            sizes: [each.untrimmed, each.trimTo],
            sides: [each.centerSeamToEdge, each.lastSeamToEdge, each.trimAway].map(turn),
          };
        };
        expect(written(mirrored.rounds.map((each) => round(each, true)))).toEqual(
          written(plan.rounds.map((each) => round(each, false))),
        );
        // A log's two cornerstones have no order.
        const cut = ({ pieces }: LogCabin): string[] =>
          pieces.map((piece) => JSON.stringify(piece)).sort();
        expect(cut(mirrored)).toEqual(cut(plan));
        expect(written(mirrored.strips)).toEqual(written(plan.strips));
      }),
    );
  });
});

describe('the parts of a finished block', () => {
  /** In sixty-fourths, so that areas are whole numbers. */
  const box = (place: Place) => ({
    left: sixtyFourths(place.left),
    top: sixtyFourths(place.top),
    right: sixtyFourths(place.right),
    bottom: sixtyFourths(place.bottom),
  });

  it('fill it without overlap, each as large as its finished size', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { center, logs, cornerstones } = logCabinPlaces(plan);
        const parts = [
          { place: center, size: plan.center.finished },
          ...cornerstones.map(({ cornerstone, place }) => ({ place, size: cornerstone.finished })),
        ].map(({ place, size }) => ({ ...box(place), size }));
        for (const { left, top, right, bottom, size } of parts) {
          expect([right - left, bottom - top]).toEqual([size.width, size.height].map(sixtyFourths));
        }
        const places = [center, ...[...logs, ...cornerstones].map(({ place }) => place)].map(box);
        const area = places.reduce((all, { left, top, right, bottom }) => {
          expect(right).toBeGreaterThan(left);
          expect(bottom).toBeGreaterThan(top);
          return all + (right - left) * (bottom - top);
        }, 0);
        expect(area).toBe(sixtyFourths(plan.finished.width) * sixtyFourths(plan.finished.height));
        for (const [index, one] of places.entries()) {
          for (const other of places.slice(index + 1)) {
            const apart =
              one.right <= other.left ||
              other.right <= one.left ||
              one.bottom <= other.top ||
              other.bottom <= one.top;
            expect(apart).toBe(true);
          }
        }
      }),
    );
  });

  it('have their logs where they were sewn, as wide as they finish', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        for (const { log, place } of logCabinPlaces(plan).logs) {
          const { left, top, right, bottom } = box(place);
          const across = log.side === 'top' || log.side === 'bottom';
          expect(across ? bottom - top : right - left).toBe(sixtyFourths(log.finished.width));
          const { width, height } = plan.center.finished;
          const outside = {
            top: bottom <= 0,
            left: right <= 0,
            right: left >= sixtyFourths(width),
            bottom: top >= sixtyFourths(height),
          };
          expect(outside[log.side]).toBe(true);
          if (!plan.cornerstones.length) {
            expect(across ? right - left : bottom - top).toBe(sixtyFourths(log.finished.length));
          }
        }
      }),
    );
  });
});

describe('what is cut', () => {
  it('lies on the grid, not under the exact size and less than a step above it', () => {
    fc.assert(
      fc.property(plans, ({ center, logs, cornerstones, grid, pieces }) => {
        const sizes = [
          ...[center, ...cornerstones].flatMap(({ cut, exact = cut }) => [
            [cut.width, exact.width],
            [cut.height, exact.height],
          ]),
          ...logs.flatMap(({ cut, exact = cut }) => [
            [cut.width, exact.width],
            [cut.length, exact.length],
          ]),
        ] as [Length, Length][];
        for (const [cut, exact] of sizes) {
          expect(cut.isOnGrid(grid)).toBe(true);
          expect(cut.compareTo(exact)).toBeGreaterThanOrEqual(0);
          expect(cut.minus(grid).compareTo(exact)).toBe(-1);
        }
        for (const { width, length: extent } of pieces) {
          expect([width, extent].every((each) => each.isOnGrid(grid))).toBe(true);
        }
      }),
    );
  });

  it('keeps the exact size beside it where the two differ, and only there', () => {
    fc.assert(
      fc.property(plans, ({ center, logs, cornerstones }) => {
        for (const { cut, exact } of [center, ...logs, ...cornerstones]) {
          const differs = exact !== undefined;
          expect(JSON.stringify(exact ?? cut) !== JSON.stringify(cut)).toBe(differs);
        }
      }),
    );
  });

  it('adds up to the strips of each fabric and width', () => {
    fc.assert(
      fc.property(plans, ({ logs, strips }) => {
        for (const { fabric, width, length: total } of strips) {
          const own = logs.filter((log) => log.fabric === fabric && log.cut.width.equals(width));
          expect(inches(total)).toBe(inches(sum(own.map(({ cut }) => cut.length))));
        }
        expect(inches(sum(strips.map((strip) => strip.length)))).toBe(
          inches(sum(logs.map(({ cut }) => cut.length))),
        );
        const kinds = strips.map(({ fabric, width }) => `${fabric} ${width}`);
        expect(new Set(kinds).size).toBe(kinds.length);
      }),
    );
  });

  it('is as many pieces as there are logs and cornerstones, and the center', () => {
    fc.assert(
      fc.property(plans, ({ logs, cornerstones, center, pieces }) => {
        const count = pieces.reduce((all, piece) => all + piece.count, 0);
        expect(count).toBe(1 + logs.length + cornerstones.length);
        const area = ({ width, length: extent, count: each }: (typeof pieces)[number]): Length =>
          width.times(extent).times(each);
        const areas = [
          ...[center, ...cornerstones].map(({ cut }) => cut.width.times(cut.height)),
          ...logs.map(({ cut }) => cut.width.times(cut.length)),
        ];
        expect(inches(sum(pieces.map(area)))).toBe(inches(sum(areas)));
      }),
    );
  });

  it('is as many logs a round as the layout has sides, numbered in sewing order', () => {
    fc.assert(
      fc.property(plans, ({ logs, rounds, layout, sides }) => {
        expect(sides).toHaveLength(layout === 'quarter' ? 2 : 4);
        expect(logs.map(({ order }) => order)).toEqual(logs.map((_, index) => index + 1));
        expect(rounds.map(({ number }) => number)).toEqual(rounds.map((_, index) => index + 1));
        expect(rounds.flatMap((round) => round.logs)).toEqual(logs);
        for (const { logs: own, number } of rounds) {
          expect(own.map(({ side }) => side)).toEqual(sides);
          expect(own.every(({ round }) => round === number)).toBe(true);
        }
      }),
    );
  });
});

describe('a plan in JSON', () => {
  /** Pairs of what is in a plan and what is in its JSON, as deep as they go. */
  function* leaves(live: unknown, json: unknown): Generator<[unknown, unknown]> {
    if (live instanceof Length || typeof live !== 'object' || live === null) {
      yield [live, json];
      return;
    }
    const read = new Map(Object.entries(json ?? {}));
    const entries = Object.entries(live);
    expect([...read.keys()]).toEqual(entries.map(([name]) => name));
    for (const [name, value] of entries) yield* leaves(value, read.get(name));
  }

  it('reads back: every length by length(), everything else as it was', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        for (const [live, json] of leaves(plan, written(plan))) {
          if (live instanceof Length) {
            expect(typeof json).toBe('string');
            expect(live.equals(String(json))).toBe(true);
          } else {
            expect(json).toBe(live);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it('reads well, and keeps roots', () => {
    const plan = logCabin({ rounds: 1, center: '10 1/2', log: '√2', cornerstones: true });
    expect(JSON.stringify(plan.center.finished)).toBe('{"width":"10 1/2","height":"10 1/2"}');
    expect(JSON.stringify(plan.finished.width)).toBe('"2√2 + 10 1/2"');
    expect(JSON.stringify(plan.logs[0]?.exact?.width)).toBe('"√2 + 1/2"');
  });

  it('makes the same spec into the same plan', () => {
    fc.assert(
      fc.property(specs, (spec) => {
        const read = JSON.parse(JSON.stringify(spec)) as LogCabinSpec;
        expect(written(logCabin(read))).toEqual(written(logCabin(spec)));
      }),
    );
  });
});
