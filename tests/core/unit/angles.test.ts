import { diamond, drunkardsPath, length, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** Pi by Machin's formula, 16 arctan 1/5 − 4 arctan 1/239, in units of 10^−40 (from memory). */
function machin(): bigint {
  const unit = 10n ** 50n;
  const arctan = (inverse: bigint): bigint => {
    let term = unit / inverse;
    let sum = 0n;
    for (let odd = 1n; term !== 0n; odd += 2n) {
      sum += odd % 4n === 1n ? term / odd : -(term / odd);
      term /= inverse * inverse;
    }
    return sum;
  };
  return (16n * arctan(5n) - 4n * arctan(239n)) / 10n ** 10n;
}

describe('a quarter circle', () => {
  it('has a seam that lies between its limits, by another series for pi', () => {
    for (const radius of [1, 3, 5]) {
      const { seamLine, approximate } = drunkardsPath({ finished: 8, radius });
      const arc = (edge: bigint) =>
        length(machin() + edge)
          .dividedBy(10n ** 40n)
          .times(radius)
          .dividedBy(2);
      expect(seamLine.least.compareTo(arc(-10n))).toBe(-1);
      expect(seamLine.most.compareTo(arc(10n))).toBe(1);
      expect(seamLine.most.minus(seamLine.least).compareTo('1/1000000000000')).toBe(-1);
      expect(approximate).toBe(true);
    }
  });

  it('has two templates about one point, their radii two seam allowances apart', () => {
    const { templates, trimTo } = drunkardsPath({ finished: 4, radius: 3 });
    const [inside, outside] = templates;
    expect([inside?.radius.toString(), outside?.radius.toString()]).toEqual(['3 1/4', '2 3/4']);
    expect(inside?.center).toEqual(outside?.center);
    for (const { points, center, radius, arcFrom } of templates) {
      for (const end of [points[arcFrom], points[(arcFrom + 1) % points.length]]) {
        const dx = end?.x.minus(center.x) ?? length(0);
        const dy = end?.y.minus(center.y) ?? length(0);
        expect(dx.times(dx).plus(dy.times(dy)).equals(radius.times(radius))).toBe(true);
      }
      for (const { x, y } of points) {
        expect(x.compareTo(trimTo.width)).toBeLessThanOrEqual(0);
        expect(y.compareTo(trimTo.height)).toBeLessThanOrEqual(0);
      }
    }
  });
});

describe('a diamond', () => {
  it('of another angle is cut no smaller than doubles say, and is marked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 89 }), fc.integer({ min: 8, max: 40 }), (angle, f) => {
        fc.pre(angle % 15 !== 0);
        const plan = diamond({ finished: `${f}/8`, angle, usable: 80 });
        const height = (f / 8) * Math.sin((angle * Math.PI) / 180) + 0.5;
        expect(plan.approximate).toBe(true);
        expect(plan.trimTo.height.toNumber()).toBeCloseTo(height, 11);
        expect(plan.cuts[0]?.exact.height.toNumber()).toBeGreaterThanOrEqual(height - 1e-12);
        expect(plan.cuts[0]?.height.toNumber()).toBeGreaterThanOrEqual(height - 1e-12);
        const side = height / Math.sin((angle * Math.PI) / 180);
        expect(plan.trimTo.width.toNumber()).toBeCloseTo(side, 10);
      }),
    );
  });

  it.each([15, 30, 45, 60, 75, 90])('of %i degrees is exact: sin² + cos² = 1', (angle) => {
    const { outline, approximate, finished } = diamond({ finished: 2, angle, usable: 80 });
    expect(approximate).toBe(false);
    const lean = finished.width.minus(2);
    const { height } = finished;
    expect(lean.times(lean).plus(height.times(height)).toString()).toBe('4');
    expect(height.toNumber()).toBeCloseTo(2 * Math.sin((angle * Math.PI) / 180), 12);
    expect(outline).toHaveLength(4);
  });

  it('of 45 degrees makes an eight-pointed star of (2 + √2) times its side', () => {
    // X: derived exactly.
    const block = squareRoot(2).plus(2).times(3);
    expect(block.toString()).toBe('3√2 + 6');
  });
});
