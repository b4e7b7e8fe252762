import { logCabin } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulations } from './designs.js';
import { numbersOf, type Simulation, sewOnPaper, specOf } from './simulation.js';

describe('a block sewn on paper, seam by seam and cut by cut', () => {
  it('has the logs, cornerstones, trims and trimmings of the plan', () => {
    fc.assert(
      fc.property(simulations, (simulation) => {
        expect(numbersOf(logCabin(specOf(simulation)))).toEqual(sewOnPaper(simulation));
      }),
      { numRuns: 1000 },
    );
  });

  const nine: Simulation = {
    layout: 'spiral',
    direction: 'clockwise',
    start: undefined,
    center: { width: 128, height: 128 },
    seam: 16,
    grid: 8,
    extra: 0,
    cornerstones: false,
    trim: 'round',
    wide: [80, 80, 80, 80],
    narrow: [32, 32, 32, 32],
    wideSides: ['right', 'bottom'],
    first: 'wide',
    wideExcess: [16, 16, 16, 16],
    narrowExcess: [32, 32, 32, 32],
  };

  // The oracle is checked too: the first and last figures of the block worked out by hand.
  it('comes to the figures worked out by hand', () => {
    const { logs, rounds } = sewOnPaper(nine);
    expect(logs[0]).toBe('1 right cut 128 160 from 128 160 finishes 80 128');
    expect(logs[15]).toBe('4 top cut 96 656 from 96 656 finishes 32 576');
    expect(rounds[3]).toBe(
      'untrimmed 656 656 trim to 608 608 center 144 336 336 144 last 48 96 96 48 away 32 16 16 32',
    );
  });

  // Sewing order as DESIGN words it: clockwise is top, right, bottom, left as the block faces the sewer.
  it.each<[Partial<Simulation>, string]>([
    [{}, 'right bottom left top'],
    [{ layout: 'courthouse' }, 'right left bottom top'],
    [{ first: 'narrow' }, 'left top right bottom'],
    [{ direction: 'counterclockwise' }, 'bottom right top left'],
    [{ direction: 'counterclockwise', first: 'narrow' }, 'top left bottom right'],
    [{ wideSides: ['left', 'top'] }, 'left top right bottom'],
    [{ wideSides: ['top', 'left'], layout: 'courthouse' }, 'left right top bottom'],
    [{ start: 'top' }, 'top right bottom left'],
    [{ narrow: undefined }, 'right bottom left top'],
    [{ narrow: undefined, direction: 'counterclockwise' }, 'right top left bottom'],
    [{ narrow: undefined, layout: 'quarter' }, 'right bottom'],
    [{ narrow: undefined, layout: 'quarter', direction: 'counterclockwise' }, 'right top'],
  ])('%j is sewn %s', (change, order) => {
    const simulation = { ...nine, ...change };
    const { sides, logs } = logCabin(specOf(simulation));
    expect(sides.join(' ')).toBe(order);
    expect(logs.slice(0, sides.length).map(({ side }) => side)).toEqual(sides);
    expect(sewOnPaper(simulation).logs.map((log) => log.split(' ')[1])).toEqual([
      ...sides,
      ...sides,
      ...sides,
      ...sides,
    ]);
  });
});
