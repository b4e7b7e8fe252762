import { EighthsError, type Length, length } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  shapesPerStrip,
  stepsIn,
  stripPieces,
} from '../../../packages/core/src/plan/stripShapes.js';

const inches = (value: Length): string => value.toString();
const eighths = (count: number): Length => length('1/8').times(count);

describe('steps in a room', () => {
  it.each([
    ['40', '2 1/2', 16],
    ['40', '3', 13],
    ['39 7/8', '2 1/2', 15],
    ['2 1/2', '2 1/2', 1],
    ['2 3/8', '2 1/2', 0],
    ['0', '2 1/2', 0],
    ['-1', '2 1/2', 0],
    // 5√2 is 7.07….
    ['7', '5√2', 0],
    ['15', '5√2', 2],
  ])('%s has space for %s so often: %i', (room, step, steps) => {
    expect(stepsIn(length(room), length(step))).toBe(steps);
  });

  it('are as many as fit, and one more would not', () => {
    fc.assert(
      fc.property(fc.nat(5000), fc.integer({ min: 1, max: 60 }), (room, step) => {
        expect(stepsIn(eighths(room), eighths(step))).toBe(Math.floor(room / step));
      }),
    );
  });
});

describe('shapes from strips', () => {
  // Of 40, 1 1/2 goes to the first cut: fifteen shapes of 2 1/2 take 37 1/2, and a sixteenth has no room.
  const strip = {
    width: length('2 1/2'),
    usable: length(40),
    first: length('1 1/2'),
    step: length('2 1/2'),
  };
  const grid = length('1/8');

  it('are as many as the strip has room for behind the first cut', () => {
    expect(shapesPerStrip(strip, grid, 'width')).toBe(15);
    expect(shapesPerStrip({ ...strip, usable: length(4) }, grid, 'width')).toBe(1);
  });

  it('that do not fit once are refused with the length that would do', () => {
    const short = () =>
      shapesPerStrip(
        { usable: length('3 7/8'), first: length('1 1/2'), step: length('2 9/16') },
        grid,
        'usableWidth',
      );
    expect(short).toThrow(EighthsError);
    expect(short).toThrow(
      expect.objectContaining({
        code: 'strip-too-short',
        field: 'usableWidth',
        message: 'A strip 3 7/8 long is too short for one piece. It must be at least 4 1/8 long.',
      }),
    );
  });

  const cut = (count: number): string[] =>
    stripPieces({ label: 'diamond', fabric: 'sky' }, count, { ...strip, perStrip: 15 }, grid).map(
      (piece) =>
        `${piece.count} ${piece.label} of ${piece.fabric}, ${inches(piece.width)} by ${inches(piece.length)}`,
    );

  it.each<[number, string[]]>([
    [30, ['2 diamond of sky, 2 1/2 by 39']],
    [32, ['2 diamond of sky, 2 1/2 by 39', '1 diamond of sky, 2 1/2 by 6 1/2']],
    [1, ['1 diamond of sky, 2 1/2 by 4']],
    [15, ['1 diamond of sky, 2 1/2 by 39']],
    [0, []],
  ])('%i are whole strips, and one as long as the rest needs', (count, strips) => {
    expect(cut(count)).toEqual(strips);
  });

  it('take no longer strip than the fabric is wide, though the grid would', () => {
    const step = length('2 9/16');
    const usable = length('6 5/8').minus('1/32');
    const [piece] = stripPieces({}, 2, { ...strip, usable, step, perStrip: 2 }, length('1/4'));
    // 1 1/2 and two steps are 6 5/8, which is 6 3/4 on the grid.
    expect(piece?.length.equals(usable)).toBe(true);
  });
});
