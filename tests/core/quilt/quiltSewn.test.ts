import {
  type Length,
  length,
  type QuiltPlan,
  type QuiltRecipe,
  quilt,
  type UnitPoint,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { logCabinPlaces } from '../../../packages/core/src/block/places.js';
import { polygonArea } from '../../../packages/core/src/unit/point.js';
import { everything, onPoint, pattern, plain } from './recipes.js';

const sum = (lengths: readonly Length[]): Length =>
  lengths.reduce((total, each) => total.plus(each), length(0));

const sizes: readonly (readonly [string, QuiltRecipe, string])[] = [
  ...pattern.sizes.map(({ name }) => [pattern.name, pattern, name] as const),
  ...everything.sizes.map(({ name }) => [everything.name, everything, name] as const),
  ['On point', onPoint, 'Lap'],
  [plain.name, plain, 'Cushion'],
];

/** A side of a patch: where it begins and ends, as exact texts. */
const sideKey = (from: UnitPoint, to: UnitPoint): string =>
  [`${from.x},${from.y}`, `${to.x},${to.y}`].sort().join(' – ');

/**
 * Every side of every cell with how often it comes up: twice along a seam, once at the edge. Long sashes
 * are left to their area: theirs meet several others’.
 */
function sidesOf(
  cells: QuiltPlan['cells'],
): Map<string, { count: number; from: UnitPoint; to: UnitPoint }> {
  const sides = new Map<string, { count: number; from: UnitPoint; to: UnitPoint }>();
  for (const { corners } of cells) {
    corners.forEach((from, index) => {
      const to = corners[(index + 1) % corners.length] ?? from;
      const key = sideKey(from, to);
      sides.set(key, { count: (sides.get(key)?.count ?? 0) + 1, from, to });
    });
  }
  return sides;
}

describe.each(sizes)('%s sewn on paper', (_, recipe, size) => {
  const plan = quilt(recipe, size);
  const { layout, cells, blocks, borders, finished, seam } = plan;
  const top = layout.finished;

  it(`${size}: the cells add up to the top`, () => {
    const area = sum(cells.map(({ corners }) => polygonArea(corners)));
    expect(area).toEqual(top.width.times(top.height));
  });

  it(`${size}: along every seam two equal sides meet, and what meets nothing is the edge`, () => {
    for (const { count, from, to } of sidesOf(cells).values()) {
      const along = (of: (point: UnitPoint) => Length, at: Length | number) =>
        of(from).equals(at) && of(to).equals(at);
      const edge =
        along(({ x }) => x, 0) ||
        along(({ x }) => x, top.width) ||
        along(({ y }) => y, 0) ||
        along(({ y }) => y, top.height);
      expect(count).toBe(edge ? 1 : 2);
    }
  });

  it(`${size}: every block’s cell is as large as the block`, () => {
    for (const { block, corners } of cells) {
      if (block === undefined) continue;
      const made = blocks.find((each) => each.block.id === block)?.block.finished;
      if (made === undefined) throw new Error(`There is no block ${block}.`);
      expect(polygonArea(corners)).toEqual(made.width.times(made.height));
    }
  });

  it(`${size}: there are as many blocks as cells and borders hold`, () => {
    for (const { block, count, inBorders } of blocks) {
      const inTop = cells.filter((cell) => cell.block === block.id).length;
      expect(count).toBe(inTop + inBorders);
    }
  });

  it(`${size}: each border is as long as what it is sewn to`, () => {
    let inside = top;
    for (const { parts, width, style, corners, finished: next, units } of borders?.borders ?? []) {
      expect([next.width, next.height]).toEqual([
        inside.width.plus(width.times(2)),
        inside.height.plus(width.times(2)),
      ]);
      const [sides, ends] = parts;
      if (style !== 'mitered') {
        expect(sides?.finished.length).toEqual(inside.height);
        expect(ends?.finished.length).toEqual(corners === 'squares' ? inside.width : next.width);
      }
      if (style === 'straight') {
        // Cut, less the seams at its two ends, it is at most an eighth longer: the grid's step.
        const spare = sides?.cut.length.minus(seam.times(2)).minus(inside.height);
        expect(spare && spare.sign() >= 0 && spare.compareTo('1/8') < 0).toBe(true);
      }
      if (units !== undefined) {
        const pieced = parts.reduce((all, part) => all + (part.units ?? 0) * part.count, 0);
        expect(units).toBe(pieced);
      }
      inside = next;
    }
    expect([inside.width, inside.height]).toEqual([finished.width, finished.height]);
  });
});

describe('the block of the demo pattern sewn on paper', () => {
  const [counted] = quilt(pattern).blocks;
  if (counted?.block.kind !== 'log-cabin') throw new Error('It is a log cabin.');
  const { plan } = counted.block;

  it('its patches add up to nine by nine', () => {
    const { center, logs } = logCabinPlaces(plan);
    const patches = [center, ...logs.map(({ place }) => place)];
    const area = sum(
      patches.map(({ left, right, top, bottom }) => right.minus(left).times(bottom.minus(top))),
    );
    expect(area).toEqual(length(81));
  });

  it('each log is as long as the block is at that moment, and the last trim leaves 9 1/2', () => {
    for (const { finished, cut } of plan.logs) {
      expect(cut.length.compareTo(finished.length.plus('1/2'))).toBeGreaterThanOrEqual(0);
    }
    expect(plan.unfinished.width.toString()).toBe('9 1/2');
  });
});
