import { BATTING_PACKAGES, type BattingSpec, batting, length } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

const size = (width: number, height: number) => ({ width, height });
const written = (sizes: readonly { readonly width: unknown; readonly height: unknown }[]) =>
  sizes.map(({ width, height }) => `${width} by ${height}`);

describe('packages of batting', () => {
  // Trade habit, no standard.
  it('are sold in five sizes', () => {
    expect(written(BATTING_PACKAGES)).toEqual([
      '45 by 60',
      '72 by 90',
      '81 by 96',
      '90 by 108',
      '120 by 120',
    ]);
  });

  it('that are large enough come smallest first, either way round', () => {
    const { packages } = batting({ quilt: size(63, 87) });
    expect(written(packages.map((each) => each.size))).toEqual([
      '81 by 96',
      '90 by 108',
      '120 by 120',
    ]);
    const across = batting({ quilt: size(87, 63) });
    expect(across.packages.map(({ turned }) => turned)).toEqual([true, true, false]);
    expect(across.packages.map((each) => each.size)).toEqual(packages.map((each) => each.size));
  });

  it('that would nearly do say with how much less overhang', () => {
    const { nearMisses } = batting({ quilt: size(65, 83) });
    expect(
      nearMisses.map((each) => [each.size.width, each.overhang, each.less].map(String)),
    ).toEqual([['72', '3 1/2', '1/2']]);
    expect(batting({ quilt: size(65, 83), near: '3/8' }).nearMisses).toEqual([]);
  });

  it('are none for a quilt larger than all of them, which a roll still makes', () => {
    const { packages, roll } = batting({ quilt: size(130, 130) });
    expect(packages).toEqual([]);
    expect(roll.map(({ panels, length: taken }) => [panels, taken.toString()])).toEqual([
      [2, '276'],
      [2, '276'],
    ]);
  });

  it('are exactly those that cover the quilt and its overhang', () => {
    const side = fc.integer({ min: 30, max: 125 });
    fc.assert(
      fc.property(side, side, (width, height) => {
        const { packages } = batting({ quilt: size(width, height) });
        const [w, h] = [width + 8, height + 8];
        const fitting = BATTING_PACKAGES.filter(
          (each) => (each.width >= w && each.height >= h) || (each.width >= h && each.height >= w),
        );
        expect(written(packages.map((each) => each.size))).toEqual(written(fitting));
        for (const { leftOver } of packages) {
          expect(Math.min(leftOver.width.sign(), leftOver.height.sign())).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 60 },
    );
  });
});

it('batting from a roll takes the lesser of both ways, up to what the shop cuts', () => {
  const { roll } = batting({ quilt: size(63, 87), rollWidth: 96 });
  expect(roll.map(({ runs, panels, length: taken }) => [runs, panels, taken.toString()])).toEqual([
    ['across', 1, '71'],
    ['down', 1, '95'],
  ]);
  expect(roll[0].buy).toEqual(length('2 yd'));
});

describe('refused', () => {
  const quilt = size(60, 72);
  it.each<[string, string, BattingSpec]>([
    ['missing-field', 'quilt', JSON.parse('{}')],
    ['not-positive', 'quilt', { quilt: 0 }],
    ['not-positive', 'packages[0].height', { quilt, packages: [size(60, 0)] }],
    ['out-of-range', 'rollWidth', { quilt, rollWidth: '1/2' }],
    ['wrong-kind', 'packages', { quilt, packages: JSON.parse('"queen"') }],
  ])('%s of %s', (code, field, spec) => {
    const error = refusal(() => batting(spec));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});
