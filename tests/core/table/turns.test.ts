import {
  BLOCK_SETTINGS,
  type BlockSetting,
  blockTurns,
  drawBlockTurns,
  logCabin,
  toSvg,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

/** Whether a point of a quilt is in the dark half of its block: right and below unturned. */
function isDark(rows: readonly (readonly number[])[], x: number, y: number): boolean | undefined {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  let [across, down] = [x - column - 0.5, y - row - 0.5];
  // Turn the point back.
  for (let turn = rows[row]?.[column] ?? 0; turn > 0; turn -= 1) [across, down] = [down, -across];
  return Math.abs(across + down) < 1e-9 ? undefined : across + down > 0;
}

/** Whether two points of a quilt are of one color wherever neither lies on a line of color. */
function alike(
  rows: readonly (readonly number[])[],
  to: (x: number, y: number) => readonly [number, number],
): boolean {
  const [across, down] = [rows[0]?.length ?? 0, rows.length];
  for (let x = 0.13; x < across; x += 0.29) {
    for (let y = 0.17; y < down; y += 0.31) {
      const [otherX, otherY] = to(x, y);
      const [one, other] = [isDark(rows, x, y), isDark(rows, otherX, otherY)];
      const inside = otherX > 0 && otherY > 0 && otherX < across && otherY < down;
      if (inside && one !== undefined && other !== undefined && one !== other) return false;
    }
  }
  return true;
}

const rowsOf = (setting: BlockSetting, across = 6, down = 6) =>
  blockTurns(setting, across, down).rows;

describe('traditional settings', () => {
  it.each<[BlockSetting, readonly (readonly number[])[]]>([
    [
      'straight-furrows',
      [
        [0, 2, 0, 2],
        [2, 0, 2, 0],
        [0, 2, 0, 2],
        [2, 0, 2, 0],
      ],
    ],
    [
      'barn-raising',
      [
        [0, 2, 3, 1],
        [2, 0, 1, 3],
        [1, 3, 2, 0],
        [3, 1, 0, 2],
      ],
    ],
    [
      'streak-of-lightning',
      [
        [0, 1, 0, 1],
        [2, 3, 2, 3],
        [0, 1, 0, 1],
        [2, 3, 2, 3],
      ],
    ],
    [
      'sunshine-and-shadow',
      [
        [0, 1, 0, 1],
        [3, 2, 3, 2],
        [0, 1, 0, 1],
        [3, 2, 3, 2],
      ],
    ],
    [
      'circles',
      [
        [0, 1, 0, 1],
        [3, 2, 3, 2],
        [0, 1, 0, 1],
        [3, 2, 3, 2],
      ],
    ],
  ])('%s, four by four', (setting, rows) => {
    expect(blockTurns(setting, 4, 4).rows).toEqual(rows);
  });

  it('straight furrows do not change along the diagonal', () => {
    expect(alike(rowsOf('straight-furrows'), (x, y) => [x + 0.37, y - 0.37])).toBe(true);
    expect(alike(rowsOf('sunshine-and-shadow'), (x, y) => [x + 0.37, y - 0.37])).toBe(false);
  });

  it('a barn raising is the same turned by a quarter, and has one color at one distance', () => {
    const rows = rowsOf('barn-raising');
    expect(alike(rows, (x, y) => [6 - y, x])).toBe(true);
    expect(alike(rows, (x, y) => [6 - x, y])).toBe(true);
    // |x − 3| + |y − 3| stays.
    expect(alike(rows, (x, y) => [x + (x < 3 ? 0.21 : -0.21), y + (y < 3 ? -0.21 : 0.21)])).toBe(
      false,
    );
    const within = rows.flatMap((_, y) => rows.map((_, x) => [x + 0.3, y + 0.45] as const));
    for (const [x, y] of within) {
      const distance = Math.abs(x - 3) + Math.abs(y - 3);
      expect(isDark(rows, x, y)).toBe(Math.floor(distance) % 2 === 0);
    }
  });

  it('a barn raising that is no square has its rings round its middle all the same', () => {
    const rows = rowsOf('barn-raising', 6, 4);
    expect(alike(rows, (x, y) => [6 - x, y])).toBe(true);
    expect(alike(rows, (x, y) => [x, 4 - y])).toBe(true);
    for (const [y, row] of rows.entries()) {
      for (const x of row.keys()) {
        const distance = Math.abs(x + 0.3 - 3) + Math.abs(y + 0.45 - 2);
        expect(isDark(rows, x + 0.3, y + 0.45)).toBe(Math.floor(distance) % 2 === 0);
      }
    }
  });

  it.each(['straight-furrows', 'streak-of-lightning', 'sunshine-and-shadow'] as const)(
    '%s has no middle, and takes an odd number of blocks',
    (setting) => {
      const rows = rowsOf(setting, 5, 3);
      expect(rows.map(({ length }) => length)).toEqual([5, 5, 5]);
      expect(rows).toEqual(
        rowsOf(setting)
          .slice(0, 3)
          .map((row) => row.slice(0, 5)),
      );
    },
  );

  it('what needs a middle is told the even numbers next to the odd one', () => {
    expect(refusal(() => blockTurns('circles', 4, 5)).values).toEqual({
      value: 5,
      fewer: 4,
      more: 6,
    });
  });

  it('a streak of lightning is zigzags: the same two blocks on, the other color one row down', () => {
    const rows = rowsOf('streak-of-lightning');
    expect(alike(rows, (x, y) => [x + 2, y])).toBe(true);
    expect(alike(rows, (x, y) => [x, y + 2])).toBe(true);
    for (const [x, y] of [
      [0.4, 0.3],
      [1.2, 2.6],
      [3.7, 1.1],
    ] as const) {
      expect(isDark(rows, x, y + 1)).toBe(!isDark(rows, x, y));
    }
  });

  it('in sunshine and shadow, and in circles, dark diamonds stand in the middle of each four', () => {
    for (const setting of ['sunshine-and-shadow', 'circles'] as const) {
      const rows = rowsOf(setting);
      for (const [x, y] of [
        [0.8, 0.9],
        [1.3, 0.9],
        [3.1, 2.8],
        [1.2, 1.4],
      ] as const) {
        const [fromX, fromY] = [Math.abs((x % 2) - 1), Math.abs((y % 2) - 1)];
        expect(isDark(rows, x, y)).toBe(fromX + fromY < 1);
      }
    }
  });

  it.each<[string, string, BlockSetting, number, number]>([
    ['odd-count', 'across', 'barn-raising', 5, 4],
    ['odd-count', 'down', 'circles', 4, 3],
    ['not-a-count', 'across', 'straight-furrows', 0, 4],
    ['not-a-count', 'down', 'straight-furrows', 4, 101],
    ['unknown-choice', 'setting', JSON.parse('"pinwheels"'), 4, 4],
  ])('%s of %s is refused', (code, field, setting, across, down) => {
    const error = refusal(() => blockTurns(setting, across, down));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});

describe('a quilt top', () => {
  const nine = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' } as const;

  it.each(BLOCK_SETTINGS)('of %s is filled by the parts of its blocks', (setting) => {
    const block = logCabin(nine);
    const { shapes, fabrics } = drawBlockTurns(block, blockTurns(setting, 4, 2));
    let sum = 0;
    for (const shape of shapes) {
      if (shape.kind !== 'area' || shape.role !== 'fabric') continue;
      const [xs, ys] = [
        shape.points.map(({ x }) => x.toNumber()),
        shape.points.map(({ y }) => y.toNumber()),
      ];
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...xs)).toBeLessThanOrEqual(36);
      sum += (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
    }
    expect(sum).toBe(36 * 18);
    expect(fabrics).toEqual(['center', 'wide', 'narrow']);
  });

  it('of circles has wide logs round the middle, whichever sides of the block are wide', () => {
    for (const wideSides of [undefined, ['left', 'top'], ['bottom', 'left']] as const) {
      const block = logCabin({ ...nine, ...(wideSides && { wideSides }) });
      const { shapes } = drawBlockTurns(block, blockTurns('circles', 2, 2));
      const middle = shapes.filter(
        (shape) =>
          shape.kind === 'area' &&
          shape.role === 'fabric' &&
          shape.points.some(({ x, y }) => x.equals(9) && y.equals(9)),
      );
      expect(middle.map((shape) => (shape.kind === 'area' ? shape.fabric : ''))).toEqual([
        'wide',
        'wide',
        'wide',
        'wide',
      ]);
    }
  });

  it('is drawn, and refused where the block is no square', () => {
    const turns = blockTurns('barn-raising', 4, 4);
    expect(toSvg(drawBlockTurns(logCabin(nine), turns))).toContain(
      'A quilt top of 4 by 4 blocks, 36 finished: barn raising',
    );
    const oblong = logCabin({ ...nine, center: { width: 2, height: 3 } });
    expect(refusal(() => drawBlockTurns(oblong, turns)).code).toBe('not-square');
  });
});
