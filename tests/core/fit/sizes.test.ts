import {
  blocksFromStrips,
  fitLogCabin,
  reachableSizes,
  resizeLogCabin,
  sizesSideBySide,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

const design = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' } as const;

describe('sizes that can be reached', () => {
  it('are those that have a fit, with as many ways', () => {
    const request = {
      rounds: 3,
      strips: { wide: 2, narrow: '1 1/2' },
      leastTrim: '1/8',
      center: { least: 1, most: 3 },
    };
    const sizes = reachableSizes({ ...request, finished: { most: 12 } });
    const found = new Map(sizes.map(({ finished, ways }) => [inches(finished), ways]));
    for (let eighths = 1; eighths <= 96; eighths += 1) {
      const fits = fitLogCabin({ ...request, finished: `${eighths}/8`, most: 10_000 });
      const finished = inches(fits[0]?.finished);
      if (fits.length > 0) expect([finished, found.get(finished)]).toEqual([finished, fits.length]);
    }
    expect(sizes.every(({ best, ways }) => best.of === ways && best.place === 1)).toBe(true);
  });
});

describe('a design at another size', () => {
  it('is itself at its own size', () => {
    const [first] = resizeLogCabin(design, 9).fits;
    expect(
      first?.kind === 'curved' && [first.center, first.wide, first.narrow].map(inches),
    ).toEqual(['2', '1 1/4', '1/2']);
  });

  it('keeps the ratio exactly where the grid allows', () => {
    const [double] = resizeLogCabin(design, 18).fits;
    expect(
      double?.kind === 'curved' && [double.center, double.wide, double.narrow].map(inches),
    ).toEqual(['4', '2 1/2', '1']);
  });

  it('stands beside it where a few blocks are as long as a few others', () => {
    const sizes = sizesSideBySide(design, { mostBlocks: 3 });
    expect(sizes.map(({ finished, own, others }) => [inches(finished), own, others])).toEqual([
      ['3', 1, 3],
      ['4 1/2', 1, 2],
      ['6', 2, 3],
      ['13 1/2', 3, 2],
      ['18', 2, 1],
    ]);
    for (const { finished, own, others, span } of sizes) {
      expect(finished.times(others)).toEqual(span);
      expect(span.equals(9 * own)).toBe(true);
    }
  });

  it('needs one width a kind', () => {
    const wide = ['1 1/4', '1 1/4', 1, 1];
    const error = refusal(() => resizeLogCabin({ ...design, wide }, 12));
    expect([error.code, error.field]).toEqual(['widths-vary', 'wide']);
  });
});

describe('blocks from strips on hand', () => {
  const block = { ...design, strips: { wide: 2, narrow: '1 1/2' } };

  // A block takes 47 inches of 2 and 57 inches of 1 1/2: 800 / 47 = 17.02 and 800 / 57 = 14.03.
  it('are as many as the strips that run out first allow', () => {
    const { blocks, proven, shares } = blocksFromStrips({
      block,
      strips: [
        { fabric: 'wide', width: 2, count: 20 },
        { fabric: 'narrow', width: '1 1/2', count: 20 },
      ],
    });
    expect(shares.map((share) => share.blocks)).toEqual([17, 14]);
    expect([blocks, proven]).toEqual([14, true]);
  });

  it('name the strips that are missing, and refuse those that the block does not use', () => {
    const one = { fabric: 'wide', width: 2, count: 1 };
    expect(blocksFromStrips({ block, strips: [one] }).needed.map(({ fabric }) => fabric)).toEqual([
      'narrow',
    ]);
    const error = refusal(() => blocksFromStrips({ block, strips: [{ ...one, width: 3 }] }));
    expect([error.code, error.field]).toEqual(['unknown-choice', 'strips[0]']);
  });
});
