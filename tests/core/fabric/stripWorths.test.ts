import { length } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Effort } from '../../../packages/core/src/fabric/stock/effort.js';
import type { Sheet } from '../../../packages/core/src/fabric/thrifty/sheet.js';
import { thriftyTask } from '../../../packages/core/src/fabric/thrifty/sheetOf.js';
import { stripWorths } from '../../../packages/core/src/fabric/thrifty/stripWorths.js';
import { Tables } from '../../../packages/core/src/fabric/thrifty/tables.js';
import { pieces } from './arbitrary.js';

const ofSolver = (sheet: Sheet, prices: readonly number[]): readonly number[] => {
  const tables = new Tables(sheet, prices, new Effort(Number.POSITIVE_INFINITY));
  return sheet.levels.map((_, level) => tables.strip(level));
};

describe('what a strip is worth by the checker’s own reckoning', () => {
  it('counts rows that are as high together as the strip: three of 1 in one of 3', () => {
    const sheet: Sheet = {
      capacity: 4,
      demands: [1, 6],
      levels: [
        { height: 3, items: [0], sizes: [2] },
        { height: 1, items: [1], sizes: [2] },
      ],
      tall: [],
    };
    expect(stripWorths(sheet, [5, 2])).toEqual([12, 4]);
  });

  it('is what the solver’s tables say', () => {
    fc.assert(
      fc.property(
        pieces,
        fc.array(fc.nat(2 ** 20), { minLength: 20, maxLength: 20 }),
        (list, all) => {
          const read = list.map((piece, index) => ({
            ...piece,
            turnable: index % 2 === 0,
            width: length(piece.width),
            length: length(piece.length),
          }));
          const { sheet } = thriftyTask(read, length(42));
          const prices = sheet.demands.map((_, item) => all[item % all.length] ?? 0);
          expect(stripWorths(sheet, prices)).toEqual(ofSolver(sheet, prices));
        },
      ),
      { numRuns: 40, seed: 8 },
    );
  });
});
