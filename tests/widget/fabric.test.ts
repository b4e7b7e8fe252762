import { EighthsError, length } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measuresFor } from '../../packages/widget/src/base/measures.js';
import { cellAt, cellName, TABLES } from '../../packages/widget/src/fabric/cells.js';
import { withFabricDefaults } from '../../packages/widget/src/fabric/defaults.js';
import { inputOf } from '../../packages/widget/src/fabric/faultPlace.js';
import { fabricTasks } from '../../packages/widget/src/fabric/model.js';
import { readOnHandRows, writeOnHandRows } from '../../packages/widget/src/fabric/onHandRows.js';
import {
  piecesText,
  readPieceRows,
  writePieceRows,
} from '../../packages/widget/src/fabric/pieceRows.js';
import { type FabricPlan, solving } from '../../packages/widget/src/fabric/solving.js';
import {
  withCell,
  withLengths,
  withoutRow,
  withRow,
} from '../../packages/widget/src/fabric/tables.js';
import { isWhole } from '../../packages/widget/src/fabric/yards.js';

type Given = Parameters<typeof withFabricDefaults>[0];

const measures = measuresFor('inches', 'en');
const settingsOf = (given: Given) => withFabricDefaults(given, 'inches');
const tasksOf = (given: Given) => fabricTasks(settingsOf(given), measures);

function planOf(given: Given): FabricPlan {
  const making = solving(tasksOf(given));
  let state = making.next();
  while (!state.done) state = making.next();
  return state.value;
}

/** What is at fault in settings, whether they cannot be read or nothing can be made of them. */
function faultsOf(given: Given): readonly string[] {
  const { faults } = tasksOf(given);
  if (faults.size > 0) return [...faults].map(([field, { code }]) => `${field} ${code}`);
  try {
    planOf(given);
    return [];
  } catch (error) {
    if (!(error instanceof EighthsError)) throw error;
    return [`${inputOf(error)} ${error.code}`];
  }
}

describe('a list of pieces as an author writes it', () => {
  test.each([
    ['24 of 2 1/2 by 8 1/2', ['24', '2 1/2', '8 1/2', '', '']],
    ['2 1/2 by 8 1/2', ['1', '2 1/2', '8 1/2', '', '']],
    ['4 of 2 1/2 by 88, dusk, joined', ['4', '2 1/2', '88', 'dusk', 'joined']],
    ['6 of 3 by 7, turned', ['6', '3', '7', '', 'turned']],
    ['6 of 3 x 7, night sky, Turned', ['6', '3', '7', 'night sky', 'turned']],
    ['6 of 3 by 7, turned, joined', ['6', '3', '7', 'turned', 'joined']],
    ['as many as you like', ['as many as you like', '', '', '', '']],
  ])('%j stands in the inputs', (text, cells) => {
    const [row] = readPieceRows(text);
    expect([row?.count, row?.width, row?.length, row?.fabric, row?.may]).toEqual(cells);
  });

  test('keeps whatever is typed into the table', () => {
    const cell = fc.string({ maxLength: 8 }).map((text) => text.replace(/[\t\n]/g, ' '));
    const row = fc.record({ count: cell, width: cell, length: cell, fabric: cell, may: cell });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 4 }), (rows) => {
        expect(readPieceRows(writePieceRows(rows))).toEqual(rows);
      }),
      { numRuns: 50 },
    );
  });

  test('takes what another plan says of its pieces', () => {
    const pieces = [
      { width: '3', length: '7', count: 6, turnable: true },
      { width: '2 1/2', length: '88', count: 4, fabric: 'dusk', joinable: true },
    ];
    const rows = readPieceRows(piecesText(pieces, (value) => `${value ?? ''}`));
    expect(rows).toEqual(readPieceRows('6 of 3 by 7, turned; 4 of 2 1/2 by 88, dusk, joined'));
  });
});

describe('fabric on hand as an author writes it', () => {
  test.each([
    ['1 of 18 by 21', ['1', '18', '21', '', '']],
    ['2 of 9 by 40 less 6 by 4', ['2', '9', '40', '6 by 4', '']],
    ['9 by 40 less 6, dusk', ['1', '9', '40', '6', 'dusk']],
  ])('%j stands in the inputs', (text, cells) => {
    const [row] = readOnHandRows(text);
    expect([row?.count, row?.width, row?.length, row?.corner, row?.fabric]).toEqual(cells);
  });

  test('is kept by the table', () => {
    const rows = readOnHandRows('1 of 18 by 21; 2 of 9 by 40 less 6 by 4, dusk');
    expect(readOnHandRows(writeOnHandRows(rows))).toEqual(rows);
  });
});

describe('a table', () => {
  const settings = settingsOf({ pieces: '6 of 3 by 7, turned', 'on-hand': '18 by 21 less 4 by 2' });

  test('changes by one cell', () => {
    const edit = withCell('pieces[0].may', 'joined', settings);
    expect(readPieceRows(edit?.pieces ?? '')).toEqual(readPieceRows('6 of 3 by 7, joined'));
    expect(withCell('width', '40', settings)).toBeUndefined();
  });

  test.each(TABLES)('%s takes a row more, and is what it was without it', (table) => {
    const more = { ...settings, ...withRow(table, settings) };
    expect(readPieceRows(more.pieces).length + readOnHandRows(more['on-hand']).length).toBe(3);
    const less = { ...more, ...withoutRow(table, 1, more) };
    expect(readPieceRows(less.pieces)).toEqual(readPieceRows(settings.pieces));
    expect(readOnHandRows(less['on-hand'])).toEqual(readOnHandRows(settings['on-hand']));
  });

  test('writes its lengths anew, and nothing else', () => {
    const edit = withLengths(settings, (text) => `<${text}>`);
    expect(readPieceRows(edit.pieces ?? '')).toEqual([
      { count: '6', width: '<3>', length: '<7>', fabric: '', may: 'turned' },
    ]);
    expect(readOnHandRows(edit['on-hand'] ?? '')).toEqual([
      { count: '1', width: '<18>', length: '<21>', corner: '<4 by 2>', fabric: '' },
    ]);
  });

  test.each(TABLES)('%s names its cells by paths that are read back', (table) => {
    expect(cellAt(cellName(table, 12, 'width'))).toEqual({ table, row: 12, column: 'width' });
    expect(cellAt(table)).toBeUndefined();
  });
});

describe('what is to be bought', () => {
  test('is the plain plan where thrifty buys the same, and tells of both', () => {
    const [answer] = planOf({ pieces: '12 of 5 by 5', width: '42' }).fabrics;
    expect(answer?.yardage?.alternatives.map(({ method }) => method)).toEqual(['plain', 'thrifty']);
    expect(answer?.yardage?.buy.toString()).toBe('18');
  });

  // Four of the narrow pieces come from the end of the wide strip: arithmetic.
  const pieces = '6 of 5 by 5; 8 of 2 1/2 by 6';

  test.each([
    ['', '13 1/2'],
    ['thrifty', '13 1/2'],
    ['plain', '18'],
  ])('by the method %j is %s, with what either would buy beside it', (method, buy) => {
    const [answer] = planOf({ pieces, width: '42', method }).fabrics;
    expect(answer?.yardage?.buy.toString()).toBe(buy);
    expect(answer?.yardage?.alternatives.map((each) => `${each.buy}`)).toEqual(['18', '13 1/2']);
  });

  test('is a plan of everything where pieces are longer than the fabric is wide, or joined', () => {
    const pieces = '4 of 5 1/2 by 70; 30 of 6 by 6; 1 of 2 1/2 by 312, joined';
    const [answer] = planOf({ pieces, width: '40' }).fabrics;
    const plan = answer?.yardage?.plan;
    if (plan === undefined || !isWhole(plan)) throw new Error('no plan of everything');
    expect(plan.length.toString()).toBe('90');
    expect(plan.along?.length.toString()).toBe('70');
    expect(plan.joined?.joins.length).toBe(8);
  });

  test('takes more strips for diagonal joins than for straight ones, never fewer', () => {
    const lengthBy = (join: string) =>
      planOf({ pieces: '1 of 2 1/2 by 312, joined', join }).fabrics[0]?.yardage?.bare ?? length(0);
    expect(lengthBy('diagonal').compareTo(lengthBy('straight'))).toBeGreaterThan(0);
  });

  test('is what fabric on hand lacks', () => {
    // Twelve from an 18 by 21, as three across and four down: arithmetic.
    const given = { pieces: '30 of 5 by 5', 'on-hand': '18 by 21' };
    const [answer] = planOf(given).fabrics;
    expect(answer?.onHand?.cut).toEqual([12]);
    expect(answer?.onHand?.missing.map(({ count }) => count)).toEqual([18]);
    expect(answer?.yardage?.plan.pieces.map(({ count }) => count)).toEqual([18]);
  });

  test('is nothing where all is on hand', () => {
    const [answer] = planOf({ pieces: '4 of 5 by 5', 'on-hand': '18 by 21' }).fabrics;
    expect(answer?.onHand?.complete).toBe(true);
    expect(answer?.onHand?.sets).toEqual({ blocks: 3, bound: 3, proven: true });
    expect([answer?.yardage, answer?.precuts]).toEqual([undefined, undefined]);
  });

  test('is so many precuts, and names what does not fit', () => {
    const pieces = '30 of 5 by 5; 1 of 2 1/2 by 30';
    const [answer] = planOf({ pieces, precut: 'fat-quarter', 'pack-of': '2' }).fabrics;
    expect(answer?.precuts).toMatchObject({ needed: 3, optimal: true, packs: 2, spare: 1 });
    expect(answer?.precuts?.unfit.map(({ piece, count }) => [piece, count])).toEqual([[1, 1]]);
  });

  test('comes from the fabric on hand that bears its name', () => {
    const { fabrics } = planOf({
      pieces: '4 of 5 by 5, dusk; 4 of 5 by 5, linen',
      'on-hand': '18 by 21, linen',
    });
    expect(fabrics.map(({ fabric, onHand }) => [fabric, onHand?.complete])).toEqual([
      ['dusk', undefined],
      ['linen', true],
    ]);
  });
});

describe('what is wrong is told at its input', () => {
  test.each([
    [{ pieces: '1 of 41 by 50', width: '40' }, 'pieces[0].width piece-too-long'],
    [{ pieces: '1 of 5 by ten' }, 'pieces[0].length length-syntax'],
    [{ method: 'frugal' }, 'method unknown-choice'],
    [{ join: 'glued' }, 'join unknown-choice'],
    [{ precut: 'fat-half' }, 'precut unknown-choice'],
    [{ precut: 'square-5', 'pack-of': '0' }, 'pack-of not-a-count'],
    [{ 'on-hand': '0 of 18 by 21' }, 'on-hand[0].count not-a-count'],
    [{ 'on-hand': '18' }, 'on-hand[0].width missing-field|on-hand[0].length missing-field'],
    [{ 'on-hand': '0 by 21' }, 'on-hand[0].width not-positive'],
    [{ 'on-hand': '18 by 5000' }, 'on-hand[0].length out-of-range'],
    [{ 'on-hand': '5 by 5; 18 by 21 less 18 by 4' }, 'on-hand[1].corner out-of-range'],
    [
      { pieces: '4 of 5 by 5, dusk; 4 of 5 by 5, linen', 'on-hand': '18 by 21' },
      'on-hand[0].fabric unknown-choice',
    ],
  ])('%j', (given, fault) => {
    expect(faultsOf(given).join('|')).toBe(fault);
  });
});
