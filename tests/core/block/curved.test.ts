import { logCabin, type PerSide, SIDES } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { inches } from './support.js';

/** Top, right, bottom, left. */
const around = (values: PerSide<Parameters<typeof inches>[0]>): string =>
  SIDES.map((side) => inches(values[side])).join(', ');

/*
 * Worked out by hand, seams of 1/4. A 2-inch strip reaches 1 1/2 beyond the raw edge it is sewn to
 * (2 less two allowances) and its log finishes 1 1/4: 1/4 too much. A 1 1/2-inch strip reaches 1 and
 * finishes 1/2: 1/2 too much. Sewn right, bottom (wide), left, top (narrow) and trimmed each round.
 *
 * A round begins with E: the center is cut 2 1/2, and each round adds 1 1/4 + 1/2 = 1 3/4. Its logs
 * are as long as the raw edge then: E, E + 1 1/2, E + 1 1/2, and with the narrow strip's 1 across,
 * E + 2 1/2. Untrimmed it measures E + 1 1/2 + 1, trimmed E + 1 3/4.
 */
describe('a nine-inch curved block of four rounds, worked out by hand', () => {
  const block = logCabin({
    rounds: 4,
    center: 2,
    wide: '1 1/4',
    narrow: '1/2',
    strips: { wide: 2, narrow: '1 1/2' },
  });

  it('finishes 9 and is trimmed to 9 1/2', () => {
    expect(inches(block.finished.width)).toBe('9');
    expect(inches(block.unfinished.height)).toBe('9 1/2');
    expect(inches(block.center.cut.width)).toBe('2 1/2');
    expect(block.warnings).toEqual([]);
  });

  const cuts: readonly (readonly [round: number, side: string, width: string, length: string])[] = [
    [1, 'right', '2', '2 1/2'],
    [1, 'bottom', '2', '4'],
    [1, 'left', '1 1/2', '4'],
    [1, 'top', '1 1/2', '5'],
    [2, 'right', '2', '4 1/4'],
    [2, 'bottom', '2', '5 3/4'],
    [2, 'left', '1 1/2', '5 3/4'],
    [2, 'top', '1 1/2', '6 3/4'],
    [3, 'right', '2', '6'],
    [3, 'bottom', '2', '7 1/2'],
    [3, 'left', '1 1/2', '7 1/2'],
    [3, 'top', '1 1/2', '8 1/2'],
    [4, 'right', '2', '7 3/4'],
    [4, 'bottom', '2', '9 1/4'],
    [4, 'left', '1 1/2', '9 1/4'],
    [4, 'top', '1 1/2', '10 1/4'],
  ];
  it('has these logs, in this order', () => {
    expect(
      block.logs.map(({ round, side, cut }) => [
        round,
        side,
        inches(cut.width),
        inches(cut.length),
      ]),
    ).toEqual(cuts);
  });

  // From the center's seam: 1/4 and a log more each round, 1 1/4 on the right, 1/2 on the left.
  it.each([
    [1, '5', '4 1/4', '3/4, 1 1/2, 1 1/2, 3/4'],
    [2, '6 3/4', '6', '1 1/4, 2 3/4, 2 3/4, 1 1/4'],
    [3, '8 1/2', '7 3/4', '1 3/4, 4, 4, 1 3/4'],
    [4, '10 1/4', '9 1/2', '2 1/4, 5 1/4, 5 1/4, 2 1/4'],
  ])('round %i comes out %s and is trimmed to %s, %s from the center’s seams', (...chart) => {
    const [number, untrimmed, trimTo, centerSeamToEdge] = chart;
    const round = block.rounds[number - 1];
    if (round === undefined) throw new Error(`There is no round ${number}.`);
    for (const [size, expected] of [
      [round.untrimmed, untrimmed],
      [round.trimTo, trimTo],
    ] as const) {
      expect([size.width, size.height].map(inches)).toEqual([expected, expected]);
    }
    expect(around(round.centerSeamToEdge)).toBe(centerSeamToEdge);
    expect(around(round.lastSeamToEdge)).toBe('3/4, 1 1/2, 1 1/2, 3/4');
    expect(around(round.trimAway)).toBe('1/2, 1/4, 1/4, 1/2');
  });

  // Right and bottom: 2(2 1/2 + 4 1/4 + 6 + 7 3/4) + 4 · 1 1/2; left and top: 41 + 4(1 1/2 + 2 1/2).
  it('takes 47 inches of 2-inch strip and 57 inches of 1 1/2-inch strip', () => {
    expect(block.strips.map(({ fabric, width, length }) => `${fabric} ${width} ${length}`)).toEqual(
      ['wide 2 47', 'narrow 1 1/2 57'],
    );
  });
});
