import {
  cutFromHand,
  cuttingPlan,
  type ErrorCode,
  fabricPlan,
  precuts,
  shapesFromStrips,
  stripSet,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { refusal } from './support/refusal.js';

const piece = { width: 2, length: 2, count: 1 };

/** What a page in plain JavaScript hands over, whatever the types say. */
const untyped = (input: unknown): never => input as never;

describe('fabric is not planned from', () => {
  it.each<[string, () => unknown, ErrorCode, string]>([
    [
      'one piece where a list is needed',
      () => cuttingPlan({ width: 42, pieces: untyped(piece) }),
      'wrong-kind',
      'pieces',
    ],
    [
      'one piece where precuts need a list',
      () => precuts({ kind: 'fat-quarter', pieces: untyped(piece) }),
      'wrong-kind',
      'pieces',
    ],
    [
      'a fabric that is numbered instead of named',
      () => cuttingPlan({ width: 42, pieces: [{ ...piece, fabric: untyped(7) }] }),
      'wrong-kind',
      'pieces[0].fabric',
    ],
    [
      'pieces of two fabrics for one precut',
      () =>
        precuts({
          kind: 'fat-quarter',
          pieces: [
            { ...piece, fabric: 'ember' },
            { ...piece, fabric: 'night' },
          ],
        }),
      'several-fabrics',
      'pieces[1].fabric',
    ],
    [
      'more sizes of pieces than a plan takes',
      () =>
        fabricPlan({
          width: 40,
          pieces: Array.from({ length: 201 }, (_, i) => ({ ...piece, length: `${16 + i}/8` })),
        }),
      'too-many-sizes',
      'pieces',
    ],
    [
      'no fabric on hand',
      () => cutFromHand({ onHand: [], pieces: [piece] }),
      'list-length',
      'onHand',
    ],
    [
      'more sizes on hand than it takes',
      () =>
        cutFromHand({
          onHand: Array.from({ length: 51 }, () => ({ width: 20, length: 18 })),
          pieces: [piece],
        }),
      'list-length',
      'onHand',
    ],
    [
      'one piece on hand where a list is needed',
      () => cutFromHand({ onHand: untyped({ width: 20, length: 18 }), pieces: [piece] }),
      'wrong-kind',
      'onHand',
    ],
    [
      'a word for the strips of a set',
      () => stripSet({ finished: 2, strips: untyped('two') }),
      'list-length',
      'strips',
    ],
    [
      'more strips than are sewn into a set',
      () => stripSet({ finished: 2, strips: Array.from({ length: 40 }, () => 1) }),
      'list-length',
      'strips',
    ],
  ])('%s', (_, make, code, field) => {
    expect(refusal(make)).toEqual([code, field]);
  });
});

describe('shapes from strips', () => {
  const strip = { width: 3, first: 1, step: 4 };

  it('keep the name and the fabric that they are given', () => {
    const { pieces } = shapesFromStrips({
      strip,
      count: 30,
      width: 42,
      label: 'diamond',
      fabric: 'ember',
    });
    expect(pieces.map(({ label, fabric }) => [label, fabric])).toEqual([['diamond', 'ember']]);
  });

  // By hand: 41 1/16 less 1 1/16 is ten steps of 4, and rounded up to eighths the strip would be 41 1/8.
  it('never need a strip that is longer than the fabric is wide', () => {
    const { perStrip, pieces } = shapesFromStrips({
      strip: { ...strip, first: '1 1/16' },
      count: 10,
      width: '41 1/16',
    });
    expect(perStrip).toBe(10);
    expect(pieces.map(({ length }) => length.toString())).toEqual(['41 1/16']);
  });
});
