import {
  compareMethods,
  diamond,
  drunkardsPath,
  EighthsError,
  type ErrorCode,
  eightPointedStar,
  flyingGeese,
  halfRectangleTriangles,
  halfSquareFromSquare,
  halfSquareTriangles,
  hexagon,
  planUnit,
  railFence,
  snowball,
  squareInSquare,
  squareRoot,
  stripSet,
  trapezoid,
  UNITS,
  type UnitName,
  unitNames,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';

function refusal(make: () => unknown): EighthsError {
  try {
    make();
  } catch (error) {
    if (error instanceof EighthsError) return error;
    throw error;
  }
  throw new Error('it was not refused');
}

describe('bad input', () => {
  it.each<[string, () => unknown, ErrorCode, string, string]>([
    [
      'nothing',
      () => planUnit('half-square-triangles', {}),
      'missing-field',
      'finished',
      'The field “finished” is needed.',
    ],
    [
      'zero',
      () => halfSquareTriangles({ finished: 0 }),
      'not-positive',
      'finished',
      'This length must be more than 0, not 0.',
    ],
    [
      'less than zero',
      () => halfSquareTriangles({ finished: -3 }),
      'not-positive',
      'finished',
      'This length must be more than 0, not -3.',
    ],
    [
      'no seam allowance',
      () => halfSquareTriangles({ finished: 3, seam: 0 }),
      'not-positive',
      'seam',
      'This length must be more than 0, not 0.',
    ],
    [
      'a seam as wide as the piece',
      () => halfSquareTriangles({ finished: '1/4' }),
      'seam-too-wide',
      'seam',
      'A piece that finishes 1/4 needs a seam allowance of less than that, not 1/4.',
    ],
    [
      'a text that is no length',
      () => halfSquareTriangles({ finished: 'three' }),
      'length-syntax',
      'finished',
      '',
    ],
    [
      'half a unit',
      () => halfSquareTriangles({ finished: 3, count: 2.5 }),
      'not-a-count',
      'count',
      'A whole number from 1 to 100000 is needed here, not 2.5.',
    ],
    [
      'no units',
      () => halfSquareTriangles({ finished: 3, count: 0 }),
      'not-a-count',
      'count',
      'A whole number from 1 to 100000 is needed here, not 0.',
    ],
    [
      'a method that there is not',
      () => planUnit('half-square-triangles', { finished: 3, method: 'six-at-a-time' }),
      'unknown-choice',
      'method',
      '“six-at-a-time” is not known here. Use one of: two-at-a-time, four-at-a-time, eight-at-a-time, cut-triangles.',
    ],
    [
      'a field of another unit',
      () => planUnit('half-square-triangles', { finished: 3, angle: 45 }),
      'unknown-field',
      'angle',
      '',
    ],
    [
      'a fabric for a part that it has not',
      () => planUnit('flying-geese', { finished: 6, fabrics: { duck: 'blue' } }),
      'unknown-field',
      'fabrics.duck',
      'There is no field “duck” here. The fields are: goose, sky.',
    ],
    [
      'a rectangle for a square unit',
      () => planUnit('half-square-triangles', { finished: { width: 3, height: 4 } }),
      'not-square',
      'finished',
      'One length is needed here, not 3 by 4.',
    ],
    [
      'a grid with a root',
      () => halfSquareTriangles({ finished: 3, grid: squareRoot(2) }),
      'length-with-root',
      'grid',
      'A length without a root is needed here, such as 3 1/2, not √2.',
    ],
    [
      'an oversize below zero',
      () => halfSquareTriangles({ finished: 3, oversize: '-1/8' }),
      'not-positive',
      'oversize',
      'This length must be at least 0, not -1/8.',
    ],
    [
      'geese that four at a time cannot make',
      () => flyingGeese({ finished: { width: 5, height: 2 }, method: 'four-at-a-time' }),
      'goose-ratio',
      'finished',
      'Four at a time makes geese twice as wide as high, not 5 by 2. Make them 4 by 2, or 5 by 2 1/2, or cut triangles.',
    ],
    [
      'geese that stitch and flip cannot make',
      () => flyingGeese({ finished: { width: 3, height: 2 }, method: 'stitch-and-flip' }),
      'goose-ratio',
      'finished',
      'Stitch and flip makes geese at least twice as wide as high, not 3 by 2. Make them 4 by 2, or 3 by 1 1/2, or cut triangles.',
    ],
    [
      'a goose with a root in its slope',
      () => flyingGeese({ finished: { width: squareRoot(2), height: 3 } }),
      'length-with-root',
      'finished.width',
      'A length without a root is needed here, such as 3 1/2, not √2.',
    ],
    [
      'a half rectangle with a root in its slope',
      () => halfRectangleTriangles({ finished: { width: 3, height: squareRoot(7) } }),
      'length-with-root',
      'finished.height',
      'A length without a root is needed here, such as 3 1/2, not √7.',
    ],
    [
      'a center and a finished size',
      () => squareInSquare({ center: 3, finished: 6 }),
      'conflicting-fields',
      'finished',
      'The one follows from the other. Leave “center” or “finished” out.',
    ],
    [
      'stitch and flip in two rounds',
      () => squareInSquare({ center: 3, rounds: 2, method: 'stitch-and-flip' }),
      'not-a-count',
      'rounds',
      'A whole number from 1 to 1 is needed here, not 2.',
    ],
    [
      'a center that is all seam',
      () => squareInSquare({ finished: '1/2', rounds: 4 }),
      'seam-too-wide',
      'seam',
      'A piece that finishes 1/8 needs a seam allowance of less than that, not 1/4.',
    ],
    [
      'corners that do not fit',
      () => snowball({ finished: 6, corner: '3 1/8' }),
      'out-of-range',
      'corner',
      'This must be from 0 to 3, not 3 1/8.',
    ],
    [
      'an angle too sharp',
      () => diamond({ finished: 3, angle: 10 }),
      'angle-out-of-range',
      'angle',
      'An angle from 15 to 90 degrees is needed here, not 10.',
    ],
    [
      'an angle that is no number',
      () => diamond({ finished: 3, angle: Number.NaN }),
      'angle-out-of-range',
      'angle',
      'An angle from 15 to 90 degrees is needed here, not NaN.',
    ],
    [
      'a strip too short for one',
      () => diamond({ finished: 3, usable: 6 }),
      'strip-too-short',
      'usable',
      'A strip 6 long is too short for one piece. It must be at least 6 3/8 long.',
    ],
    [
      'a fabric too narrow for one hexagon',
      () => hexagon({ finished: 9, usable: 18 }),
      'strip-too-short',
      'usable',
      'A strip 18 long is too short for one piece. It must be at least 28 long.',
    ],
    [
      'slants that meet',
      () => trapezoid({ finished: { width: 4, height: 2 } }),
      'out-of-range',
      'finished.width',
      'The long edge must be more than 4 for this height and angle, not 4.',
    ],
    [
      'a radius beyond the square',
      () => drunkardsPath({ finished: 4, radius: 4 }),
      'out-of-range',
      'radius',
      'This must be from 3/8 to 3 7/8, not 4.',
    ],
    ['one rail', () => railFence({ finished: 6, rails: 1 }), 'not-a-count', 'rails', ''],
    [
      'no strips',
      () => stripSet({ finished: 2, strips: [] }),
      'list-length',
      'strips',
      'A list of the strips’ finished widths is needed here, not 0 of them where 1 would do.',
    ],
    [
      'a strip of zero',
      () => stripSet({ finished: 2, strips: [1, 0] }),
      'not-positive',
      'strips[1]',
      'This length must be more than 0, not 0.',
    ],
    [
      'a star whose diamonds are all seam',
      () => eightPointedStar({ finished: '3/4' }),
      'seam-too-wide',
      'seam',
      '',
    ],
    [
      'a square too small to cut anything from',
      () => halfSquareFromSquare({ square: '3/4' }),
      'out-of-range',
      'square',
      'This must be from 1 to 1000, not 3/4.',
    ],
    [
      'a comparison of nothing that can be made',
      () => compareMethods('diamond', 0, 4),
      'not-positive',
      'finished',
      'This length must be more than 0, not 0.',
    ],
  ])('%s', (_, make, code, field, message) => {
    const error = refusal(make);
    expect([error.code, error.field]).toEqual([code, field]);
    if (message !== '') expect(error.message).toBe(message);
    expect(error.message).not.toMatch(/\{\w+\}/);
  });

  it('a unit that there is not', () => {
    // From a page's attribute, which no compiler has seen.
    const name: UnitName = JSON.parse('"trumpet"');
    const error = refusal(() => planUnit(name, { finished: 3 }));
    expect([error.code, error.field]).toEqual(['unknown-choice', 'unit']);
  });

  const missing: readonly unknown[] = [null, 3, 'three', undefined];
  it.each(unitNames())('%s refuses what is no spec', (name) => {
    for (const value of missing) {
      const spec = JSON.parse(JSON.stringify({ value }) ?? '{}').value;
      expect(refusal(() => UNITS[name].plan(spec)).code).toBe('wrong-kind');
    }
  });
});
