import {
  compareLogCabins,
  fabricShares,
  type LogCabinCurve,
  type LogCabinSpec,
  leastSquaresCircle,
  length,
  logCabin,
  logCabinCurve,
  type Side,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

const nine = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' } as const;
const curveOf = (spec: LogCabinSpec): LogCabinCurve => logCabinCurve(logCabin(spec));

describe('the curve of a block', () => {
  // Wide right and below: the block reaches 2 to the left of its center and above, 7 right and below.
  it('has these corners, from one corner of the block to the other', () => {
    expect(curveOf(nine).corners.map(({ round, x, y }) => [round, inches(x), inches(y)])).toEqual([
      [4, '9', '0'],
      [3, '7 3/4', '1/2'],
      [2, '6 1/2', '1'],
      [1, '5 1/4', '1 1/2'],
      [0, '4', '2'],
      [0, '2', '4'],
      [1, '1 1/2', '5 1/4'],
      [2, '1', '6 1/2'],
      [3, '1/2', '7 3/4'],
      [4, '0', '9'],
    ]);
  });

  // Computed with scipy.optimize.least_squares of SciPy 1.17.1, from the same corners.
  it.each<[string, LogCabinSpec, number, number, number]>([
    ['constant widths', nine, 10.43513013, 10.39759632, 0.1480560081686],
    [
      'widths of an arc',
      { ...nine, wide: ['5/8', '7/8', '1 1/2', '1 3/8'], narrow: ['1/2', '5/8', '7/8', '5/8'] },
      15.05703183,
      16.23140649,
      0.0022988133467,
    ],
  ])(
    'has the circle of least squares of a general-purpose solver: %s',
    (_, spec, t, radius, rms) => {
      const { leastSquares } = curveOf(spec);
      expect(leastSquares?.middle.x).toBeCloseTo(t, 5);
      expect(leastSquares?.middle.y).toBeCloseTo(t, 5);
      expect(leastSquares?.radius).toBeCloseTo(radius, 5);
      expect(leastSquares?.rootMeanSquare).toBeCloseTo(rms, 9);
    },
  );

  it('has a circle whose greatest distance no other circle on the diagonal beats', () => {
    const width = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(width, width), { minLength: 2, maxLength: 6 }),
        fc.integer({ min: 1, max: 24 }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (logs, center, t) => {
          const { corners, leastGreatest, leastSquares } = curveOf({
            rounds: logs.length,
            center: `${center}/8`,
            wide: logs.map(([one, other]) => `${one + other}/8`),
            narrow: logs.map(([one]) => `${one}/8`),
          });
          const distances = corners.map(({ x, y }) =>
            Math.hypot(x.toNumber() - t, y.toNumber() - t),
          );
          const greatest = (Math.max(...distances) - Math.min(...distances)) / 2;
          expect(leastGreatest?.greatest ?? 0).toBeLessThan(greatest + 1e-9);
          expect(leastGreatest?.greatest ?? 0).toBeLessThan((leastSquares?.greatest ?? 0) + 1e-9);
          expect(leastSquares?.rootMeanSquare ?? 0).toBeLessThan(
            (leastGreatest?.rootMeanSquare ?? 0) + 1e-9,
          );
        },
      ),
    );
  });

  it('finds the circle that points lie on', () => {
    const points = [0.1, 0.7, 1.9, 4].map((angle) => ({
      x: 3 + 5 * Math.cos(angle),
      y: -2 + 5 * Math.sin(angle),
    }));
    const circle = leastSquaresCircle(points);
    expect(circle?.middle.x).toBeCloseTo(3, 9);
    expect(circle?.middle.y).toBeCloseTo(-2, 9);
    expect(circle?.radius).toBeCloseTo(5, 9);
    expect(circle?.greatest).toBeCloseTo(0, 9);
  });

  it('bends by 90° − 2 atan(narrow / wide) at the center, and runs straight from there', () => {
    const { bendAtCenter, bend } = curveOf(nine);
    expect(bendAtCenter).toBeCloseTo(90 - (2 * Math.atan(0.4) * 180) / Math.PI, 9);
    expect(bend).toBeCloseTo(bendAtCenter, 9);
  });

  it('is straight where wide and narrow are alike', () => {
    const curve = curveOf({ ...nine, wide: 1, narrow: 1 });
    expect(curve.leastSquares).toBeUndefined();
    expect(curve.leastGreatest).toBeUndefined();
    expect(curve.bendAtCenter).toBeCloseTo(0, 9);
  });

  it.each<[readonly [Side, Side], string, string]>([
    [['right', 'bottom'], '9', '0'],
    [['bottom', 'left'], '9', '9'],
    [['left', 'top'], '0', '9'],
    [['top', 'right'], '0', '0'],
  ])('turns with the wide sides %s', (wideSides, x, y) => {
    const { corners, leastSquares } = curveOf({ ...nine, wideSides });
    expect([inches(corners[0]?.x), inches(corners[0]?.y)]).toEqual([x, y]);
    for (const [index, corner] of corners.entries()) {
      const { middle, radius, deviations } = leastSquares ?? {
        middle: { x: 0, y: 0 },
        radius: 0,
        deviations: [],
      };
      const off =
        Math.hypot(corner.x.toNumber() - middle.x, corner.y.toNumber() - middle.y) - radius;
      expect(deviations[index]).toBeCloseTo(off, 9);
    }
  });

  it.each<[string, LogCabinSpec]>([
    ['not-curved', { rounds: 2, center: 2, log: 1 }],
    ['not-square', { ...nine, center: { width: 2, height: 3 } }],
  ])('%s is refused', (code, spec) => {
    expect(refusal(() => curveOf(spec)).code).toBe(code);
  });
});

describe('the share of each fabric', () => {
  it('adds up to the whole block', () => {
    for (const spec of [nine, { ...nine, cornerstones: true }, { rounds: 3, center: 1, log: 1 }]) {
      const shares = fabricShares(logCabin(spec));
      expect(shares.reduce((sum, { share }) => sum.plus(share), length(0)).equals(1)).toBe(true);
    }
  });
});

describe('blocks side by side', () => {
  it('show 2 × wide × narrow a round more of the pair sewn last', () => {
    const [wide, narrow] = compareLogCabins([nine, { ...nine, first: 'narrow' }]);
    const shown = (one: typeof wide) => one?.shares.find(({ fabric }) => fabric === 'wide')?.area;
    expect([inches(shown(wide)), inches(shown(narrow))]).toEqual(['52 1/2', '57 1/2']);
  });

  it('have the area of their pieces as they are cut', () => {
    // A center of 2 1/2 by 2 1/2, and 1 1/2 wide logs of 2 1/2, 3 1/2, 3 1/2 and 4 1/2.
    const [plain] = compareLogCabins([{ rounds: 1, center: 2, log: 1 }]);
    expect(inches(plain?.fabric)).toBe('27 1/4');
  });

  it('have their pieces and trims counted, and a curve only where there is one', () => {
    const strips = { wide: 2, narrow: '1 1/2' };
    const compared = compareLogCabins([
      nine,
      { ...nine, strips },
      { ...nine, strips, trim: { after: 'log' } },
      { rounds: 3, center: 2, log: 1, layout: 'quarter', strips: { log: 2 } },
    ]);
    expect(compared.map(({ pieces, trims }) => [pieces, trims])).toEqual([
      [17, 0],
      [17, 16],
      [17, 16],
      [7, 6],
    ]);
    expect(compared.map(({ curve }) => curve !== undefined)).toEqual([true, true, true, false]);
  });
});
