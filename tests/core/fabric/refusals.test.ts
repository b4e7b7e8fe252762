import {
  type CuttingSpec,
  checkCertificate,
  cuttingPlan,
  EighthsError,
  howManyFrom,
  yardage,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';

const piece = { width: 2, length: 5, count: 4 };
const spec = (change: object): CuttingSpec => ({ width: 42, pieces: [piece], ...change });

function refusal(work: () => unknown): EighthsError {
  try {
    work();
  } catch (error) {
    if (error instanceof EighthsError) return error;
    throw error;
  }
  throw new Error('It was not refused.');
}

const sizes = (amount: number) =>
  Array.from({ length: amount }, (_, i) => ({ width: 2, length: `${i + 8}/8`, count: 1 }));

describe('a cutting plan refuses', () => {
  it.each<[string, CuttingSpec, string, string]>([
    [
      'a piece longer than the fabric is wide',
      spec({ pieces: [piece, { ...piece, length: '42 1/8' }] }),
      'piece-too-long',
      'pieces[1].length',
    ],
    [
      'a count that is not whole',
      spec({ pieces: [{ ...piece, count: 2.5 }] }),
      'not-a-count',
      'pieces[0].count',
    ],
    [
      'a negative count',
      spec({ pieces: [piece, { ...piece, count: -1 }] }),
      'not-a-count',
      'pieces[1].count',
    ],
    [
      'a count over 100,000',
      spec({ pieces: [{ ...piece, count: 100_001 }] }),
      'not-a-count',
      'pieces[0].count',
    ],
    ['no pieces', spec({ pieces: [] }), 'no-pieces', 'pieces'],
    [
      'pieces that are all needed no times',
      spec({ pieces: [{ ...piece, count: 0 }] }),
      'no-pieces',
      'pieces',
    ],
    [
      'a width of zero',
      spec({ pieces: [{ ...piece, width: 0 }] }),
      'not-positive',
      'pieces[0].width',
    ],
    [
      'a length of zero',
      spec({ pieces: [{ ...piece, length: 0 }] }),
      'not-positive',
      'pieces[0].length',
    ],
    ['fabric of no width', spec({ width: 0 }), 'not-positive', 'width'],
    [
      'a length that is none',
      spec({ pieces: [{ ...piece, length: 'five' }] }),
      'length-syntax',
      'pieces[0].length',
    ],
    ['more than 200 different sizes', spec({ pieces: sizes(201) }), 'too-many-sizes', 'pieces'],
    [
      'more than a million pieces',
      spec({ pieces: Array(11).fill({ ...piece, count: 100_000 }) }),
      'too-many-pieces',
      'pieces',
    ],
    [
      'pieces of several fabrics',
      spec({ pieces: [{ ...piece, fabric: 'blue' }, piece, { ...piece, fabric: 'red' }] }),
      'several-fabrics',
      'pieces[2].fabric',
    ],
    [
      'a cut length that lies on no grid',
      spec({ pieces: [{ ...piece, length: '5√2' }] }),
      'not-a-fraction',
      'pieces[0].length',
    ],
    [
      'lengths on grids that have nothing in common',
      spec({ pieces: [997, 991, 983].map((n) => ({ ...piece, count: 99, length: `5 1/${n}` })) }),
      'no-common-grid',
      'pieces',
    ],
    ['a negative effort', spec({ effort: -1 }), 'not-a-count', 'effort'],
    ['no layers', spec({ layers: 0 }), 'not-a-count', 'layers'],
    ['a misspelled field', spec({ widht: 42 }), 'unknown-field', 'widht'],
    [
      'a misspelled field of a piece',
      spec({ pieces: [{ ...piece, lenght: 2 }] }),
      'unknown-field',
      'pieces[0].lenght',
    ],
  ])('%s', (_, refused, code, field) => {
    const error = refusal(() => cuttingPlan(refused));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('other methods, naming what it knows', () => {
    // @ts-expect-error there are plain and thrifty plans only
    const error = refusal(() => cuttingPlan({ width: 42, pieces: [piece], method: 'fancy' }));
    expect(error.message).toBe('“fancy” is not known here. Use one of: thrifty, plain.');
  });

  it('what is missing, naming it', () => {
    // @ts-expect-error width is needed
    expect(refusal(() => cuttingPlan({ pieces: [piece] })).field).toBe('width');
    // @ts-expect-error pieces are needed
    expect(refusal(() => cuttingPlan({ width: 42 })).field).toBe('pieces');
    // @ts-expect-error a count is needed
    const noCount = refusal(() => cuttingPlan({ width: 42, pieces: [{ width: 2, length: 2 }] }));
    expect(noCount.field).toBe('pieces[0].count');
  });
});

describe('a refusal', () => {
  it('says what would be accepted', () => {
    const error = refusal(() => cuttingPlan(spec({ pieces: [{ ...piece, length: 50 }] })));
    expect(error.message).toBe(
      'A piece 50 long does not fit across fabric that is 42 wide. Make it at most 42, turn it, or join it from shorter ones.',
    );
    expect(refusal(() => cuttingPlan(spec({ pieces: sizes(201) }))).message).toBe(
      'These pieces are of 201 different sizes. One plan takes up to 200: make several.',
    );
  });
});

describe('what is just allowed', () => {
  it('a piece as long as the fabric is wide', () => {
    expect(cuttingPlan(spec({ pieces: [{ ...piece, length: 42 }] })).length.toString()).toBe('8');
  });

  it('200 sizes, and 100,000 of one', () => {
    expect(cuttingPlan(spec({ pieces: sizes(200) })).lowerBound.sign()).toBe(1);
    const many = cuttingPlan(spec({ pieces: [{ ...piece, count: 100_000 }] }));
    expect(many.length.toString()).toBe('25000');
  });

  it.each(['plain', 'thrifty'] as const)('a piece needed no times, in a %s plan', (method) => {
    const pieces = [{ ...piece, length: 9, count: 0 }, piece];
    const asked = spec({ pieces, method });
    const plan = cuttingPlan(asked);
    expect(checkCertificate(asked, plan).holds).toBe(true);
    expect(plan.strips.flatMap(({ cuts }) => cuts.map(({ pieces }) => pieces))).toEqual([[1]]);
  });

  it('fabric wider than any loom makes', () => {
    expect(cuttingPlan(spec({ width: 1e15 })).length.toString()).toBe('2');
  });
});

describe('yardage refuses', () => {
  it.each<[string, Parameters<typeof yardage>[1], string, string]>([
    ['shrinkage of all there is', { shrinkage: 1 }, 'not-a-shrinkage', 'shrinkage'],
    ['fabric that grows', { shrinkage: -0.1 }, 'not-a-shrinkage', 'shrinkage'],
    ['an increment of nothing', { increment: 0 }, 'not-positive', 'increment'],
    [
      'an increment of nothing among others',
      { increment: ['1/8 yd', 0] },
      'not-positive',
      'increment[1]',
    ],
    ['no increment at all', { increment: [] }, 'wrong-kind', 'increment'],
    ['a negative spare', { spare: -1 }, 'not-positive', 'spare'],
    ['negative straightening', { straightening: '-1/2' }, 'not-positive', 'straightening'],
  ])('%s', (_, options, code, field) => {
    const error = refusal(() => yardage(spec({}), options));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});

describe('fabric on hand', () => {
  it('needs its length', () => {
    // @ts-expect-error length is needed
    expect(refusal(() => howManyFrom({ width: 42, pieces: [piece] })).field).toBe('length');
  });
});
