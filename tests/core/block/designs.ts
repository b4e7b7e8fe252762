import type { Side } from '@eighths/core';
import fc from 'fast-check';
import type { Simulation } from './simulation.js';

const sides = fc.constantFrom<Side>('top', 'right', 'bottom', 'left');

const neighbors = fc.constantFrom<readonly [Side, Side]>(
  ['right', 'bottom'],
  ['bottom', 'right'],
  ['bottom', 'left'],
  ['left', 'top'],
  ['top', 'right'],
);

/** One entry for each round. */
const list = (rounds: number, entry: fc.Arbitrary<number>): fc.Arbitrary<readonly number[]> =>
  fc.oneof(
    entry.map((each) => Array.from({ length: rounds }, () => each)),
    fc.array(entry, { minLength: rounds, maxLength: rounds }),
  );

/** Blocks of every kind, in sixty-fourths, on the grid and off it. */
export const simulations: fc.Arbitrary<Simulation> = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.boolean(), fc.constantFrom(8, 1))
  .chain(([rounds, curved, step]) => {
    const length = (min: number, max: number) =>
      fc.integer({ min, max }).map((n) => Math.max(n - (n % step), step));
    const excess = fc.constantFrom(0, 8, 16, 5, 32);
    return fc.record({
      layout: curved
        ? fc.constantFrom<Simulation['layout']>('spiral', 'courthouse')
        : fc.constantFrom<Simulation['layout']>('spiral', 'courthouse', 'quarter'),
      direction: fc.constantFrom<Simulation['direction']>('clockwise', 'counterclockwise'),
      start: fc.option(sides, { nil: undefined }),
      center: fc.oneof(
        length(1, 400).map((side) => ({ width: side, height: side })),
        fc.record({ width: length(1, 400), height: length(1, 400) }),
      ),
      seam: fc.constantFrom(16, 16, 24, 13, 0),
      grid: fc.constantFrom(8, 8, 4, 16, 3),
      extra: fc.constantFrom(0, 0, 32, 7),
      cornerstones: fc.boolean(),
      trim: fc.constantFrom<Simulation['trim']>('round', 'log', 'never'),
      wide: list(rounds, length(1, 160)),
      narrow: curved ? list(rounds, length(1, 160)) : fc.constant(undefined),
      wideSides: neighbors,
      first: fc.constantFrom<Simulation['first']>('wide', 'narrow'),
      wideExcess: list(rounds, excess),
      narrowExcess: list(rounds, excess),
    });
  });
