import {
  findLogCabins,
  fitLogCabin,
  type LogCabinFit,
  type LogCabinFitRequest,
  length,
  logCabin,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

/** A block in eighths; a plain one has its log under both names. */
type Eighths = readonly [finished: number, center: number, wide: number, narrow: number];

interface Case {
  readonly rounds: number;
  readonly kind: 'plain' | 'curved';
  readonly layout: 'spiral' | 'courthouse' | 'quarter';
  readonly finished: readonly [number, number];
  readonly center: readonly [number, number];
  readonly wide: readonly [number, number];
  readonly narrow: readonly [number, number];
  readonly ratio: readonly [number, number] | undefined;
  readonly strips: readonly [number, number] | undefined;
  readonly leastTrim: number;
}

const within = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;

/** Every center and every pair of widths up to the block itself, tried one after the other. */
function enumerated(one: Case): Eighths[] {
  const found: Eighths[] = [];
  const shows = (log: number, strip: number | undefined): boolean =>
    strip === undefined || strip - 4 - one.leastTrim >= log;
  for (let finished = one.finished[0]; finished <= one.finished[1]; finished += 1) {
    for (let center = 1; center < finished; center += 1) {
      for (let wide = 1; wide < finished; wide += 1) {
        for (let narrow = 1; narrow < finished; narrow += 1) {
          if (one.kind === 'plain' ? wide !== narrow : wide <= narrow) continue;
          const added = one.layout === 'quarter' ? wide : wide + narrow;
          if (center + one.rounds * added !== finished || !within(center, one.center)) continue;
          if (!within(wide, one.wide) || !within(narrow, one.narrow)) continue;
          if (!shows(wide, one.strips?.[0]) || !shows(narrow, one.strips?.[1])) continue;
          if (one.ratio && !within(wide / narrow, one.ratio)) continue;
          found.push([finished, center, wide, narrow]);
        }
      }
    }
  }
  return found;
}

const eighths = (count: number): string => `${count}/8`;
const ends = ([least, most]: readonly [number, number]) => ({
  least: eighths(least),
  most: eighths(most),
});

function requestOf(one: Case): LogCabinFitRequest {
  const { rounds, kind, layout, leastTrim, strips } = one;
  const shared = {
    rounds,
    kind,
    layout,
    finished: ends(one.finished),
    center: ends(one.center),
    leastTrim: eighths(leastTrim),
    most: 10_000,
  };
  if (kind === 'plain') {
    const [log] = strips ?? [];
    return {
      ...shared,
      log: ends(one.wide),
      ...(log !== undefined && { strips: { log: eighths(log) } }),
    };
  }
  return {
    ...shared,
    wide: ends(one.wide),
    narrow: ends(one.narrow),
    ...(one.ratio && { ratio: { least: one.ratio[0], most: one.ratio[1] } }),
    ...(strips && { strips: { wide: eighths(strips[0]), narrow: eighths(strips[1]) } }),
  };
}

const inEighths = (value: { toNumber(): number }): number => value.toNumber() * 8;

const asEighths = (fit: LogCabinFit): Eighths =>
  fit.kind === 'plain'
    ? [inEighths(fit.finished), inEighths(fit.center), inEighths(fit.log), inEighths(fit.log)]
    : [inEighths(fit.finished), inEighths(fit.center), inEighths(fit.wide), inEighths(fit.narrow)];

const range = (most: number) =>
  fc
    .tuple(fc.integer({ min: 1, max: most }), fc.integer({ min: 1, max: most }))
    .map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const);

const cases: fc.Arbitrary<Case> = fc
  .record({
    rounds: fc.integer({ min: 1, max: 5 }),
    kind: fc.constantFrom<Case['kind']>('plain', 'curved'),
    layout: fc.constantFrom<Case['layout']>('spiral', 'courthouse', 'quarter'),
    finished: fc
      .tuple(fc.integer({ min: 2, max: 44 }), fc.integer({ min: 0, max: 4 }))
      .map(([least, more]) => [least, least + more] as const),
    center: range(50),
    wide: range(40),
    narrow: range(40),
    ratio: fc.option(range(4), { nil: undefined }),
    strips: fc.option(fc.tuple(fc.integer({ min: 8, max: 24 }), fc.integer({ min: 8, max: 24 })), {
      nil: undefined,
    }),
    leastTrim: fc.integer({ min: 0, max: 3 }),
  })
  .filter(({ kind, layout }) => kind === 'plain' || layout !== 'quarter')
  .filter(({ kind, wide, narrow }) => kind === 'plain' || wide[1] > narrow[0])
  // A plain block has one width only.
  .map((one) => (one.kind === 'plain' ? { ...one, narrow: one.wide, ratio: undefined } : one))
  .map((one) => {
    const [log] = one.strips ?? [];
    return one.kind === 'plain' && log !== undefined
      ? { ...one, strips: [log, log] as const }
      : one;
  });

const sorted = (found: readonly Eighths[]): string[] => found.map(String).sort();

describe('the finder', () => {
  it('finds what plain enumeration finds, no more and no less', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const { fits, total, leftOut } = findLogCabins(requestOf(one));
        const expected = enumerated(one);
        expect(sorted(fits.map(asEighths))).toEqual(sorted(expected));
        expect([total, leftOut]).toEqual([expected.length, 0]);
      }),
      { numRuns: 150 },
    );
  });

  it('gives specs that come out as they say, with the fabric they say and the trims they say', () => {
    fc.assert(
      fc.property(cases, fc.nat(), (one, pick) => {
        const { fits } = findLogCabins(requestOf(one));
        const fit = fits[pick % Math.max(1, fits.length)];
        if (fit === undefined) return;
        const block = logCabin(fit.spec);
        expect(block.finished.width).toEqual(fit.finished);
        expect(block.center.finished.width).toEqual(fit.center);
        const fabric = block.pieces.reduce(
          (sum, piece) => sum.plus(piece.width.times(piece.length).times(piece.count)),
          length(0),
        );
        expect(fit.ranking.fabric).toEqual(fabric);
        for (const [kind, strip] of Object.entries(fit.strips)) {
          const log = block.logs.find((each) => each.kind === kind);
          expect(log?.cut.width).toEqual(strip.cut);
          expect(strip.cut.minus(log?.finished.width ?? 0).minus('1/2')).toEqual(strip.trimsOff);
          expect(strip.trimsOff.compareTo(eighths(one.leastTrim))).not.toBe(-1);
        }
      }),
    );
  });

  it('orders by ratio, then thin parts, then fabric, and each limit of `most` gives the same order', () => {
    fc.assert(
      fc.property(
        cases.filter(({ kind }) => kind === 'curved'),
        fc.constantFrom('2', '5/2', '1.618033988749895'),
        fc.integer({ min: 1, max: 20 }),
        (one, ratio, most) => {
          const request = { ...requestOf(one), wish: { ratio } };
          const all = fitLogCabin(request);
          for (const [index, fit] of all.entries()) {
            const next = all[index + 1];
            if (next === undefined) continue;
            const ratioOff = fit.ranking.ratioOff?.compareTo(next.ranking.ratioOff ?? 0);
            const thin = fit.ranking.thinParts.length - next.ranking.thinParts.length;
            const byFabric = fit.ranking.fabric.compareTo(next.ranking.fabric);
            expect(ratioOff || Math.sign(thin) || byFabric || 0).toBeLessThanOrEqual(0);
          }
          const few = fitLogCabin({ ...request, most });
          expect(few.map(asEighths)).toEqual(all.slice(0, most).map(asEighths));
        },
      ),
      { numRuns: 40 },
    );
  });

  it('numbers its answers and says how many are left out', () => {
    const { fits, total, leftOut, warnings } = findLogCabins({ finished: 9, rounds: 4, most: 5 });
    expect(fits.map(({ place, of }) => [place, of])).toEqual([1, 2, 3, 4, 5].map((n) => [n, 72]));
    expect([total, leftOut]).toEqual([72, 67]);
    expect(warnings.map(({ code, field }) => [code, field])).toEqual([['fits-left-out', 'most']]);
  });

  it('looks at as many sizes of a huge range as it can, and counts the rest', () => {
    const { total, leftOut, searched, warnings } = findLogCabins({
      finished: { least: 1, most: 24 },
      rounds: 1,
      grid: '1/64',
      kind: 'curved',
    });
    let counted = 0;
    for (let size = 64; size <= 24 * 64; size += 1) {
      for (let sum = 1; sum < size; sum += 1) counted += Math.ceil(sum / 2) - 1;
    }
    expect([total, leftOut]).toEqual([counted, counted - 100]);
    expect(searched.most.compareTo(24)).toBe(-1);
    expect(warnings.map(({ code }) => code)).toEqual(['fits-left-out', 'sizes-left-out']);
  });

  it('works on a grid of millimeters', () => {
    const [best] = fitLogCabin({
      finished: '230 mm',
      rounds: 4,
      grid: '1 mm',
      seam: '6 mm',
      center: '50 mm',
      wish: { ratio: '5/2' },
    });
    expect(best?.kind === 'curved' && [best.wide, best.narrow]).toEqual([
      length('32 mm'),
      length('13 mm'),
    ]);
  });
});

describe('where nothing fits', () => {
  it.each<[string, LogCabinFitRequest, readonly string[], readonly string[]]>([
    [
      'widths that are too much',
      { finished: 9, rounds: 4, center: 2, wide: { least: '1 1/2' }, narrow: { least: '3/4' } },
      ['11'],
      [
        'It works out with wide down to 1, instead of 1 1/2 at least.',
        'It works out with narrow down to 1/4, instead of 3/4 at least.',
        'It works out with 2 rounds instead of 4.',
      ],
    ],
    [
      'a size between two lines of the grid',
      { finished: '9 1/16', rounds: 4, log: { least: '1/2' } },
      ['9', '9 1/8'],
      ['It works out on a grid of 1/16 instead of 1/8.'],
    ],
    [
      'a strip that is too narrow',
      { finished: 9, rounds: 4, center: 1, strips: { log: '1 1/4' } },
      ['7'],
      [
        'It works out with center up to 3, instead of 1 at most.',
        'It works out with strips for log logs cut 1 1/2, instead of 1 1/4.',
        'It works out with 8 rounds instead of 4.',
      ],
    ],
    [
      'a trim that is too much',
      { finished: 9, rounds: 4, center: 1, strips: { log: '1 1/2' }, leastTrim: '1/4' },
      ['7'],
      [
        'It works out with center up to 3, instead of 1 at most.',
        'It works out with strips for log logs cut 1 3/4, instead of 1 1/2.',
        'It works out where trimming takes off 0 at least, instead of 1/4.',
        'It works out with 8 rounds instead of 4.',
      ],
    ],
    [
      'a ratio that is not there',
      { finished: 9, rounds: 4, center: 2, ratio: { least: 3, most: 3 } },
      [],
      [],
    ],
  ])('says what is closest, and which limit stands in the way: %s', (_, request, sizes, relax) => {
    const findings = findLogCabins(request);
    expect(findings.fits).toEqual([]);
    if (sizes.length > 0)
      expect(findings.closest.map((fit) => inches(fit.finished))).toEqual(sizes);
    if (relax.length > 0) expect(findings.relax.map(({ text }) => text)).toEqual(relax);
    expect(findings.closest.length + findings.relax.length).toBeGreaterThan(0);
  });

  it('every relaxation works', () => {
    const request = { finished: 9, rounds: 4, center: { most: 1 }, ratio: { least: 6 } } as const;
    const { fits, relax } = findLogCabins({ ...request, narrow: { least: '1/2' } });
    expect(fits).toEqual([]);
    expect(relax.map(({ field }) => field)).toContain('ratio');
    expect(relax.map(({ field }) => field)).toContain('narrow');
    const least = relax.find(({ field }) => field === 'ratio')?.values.value;
    const ratio = { least: String(least) };
    expect(findLogCabins({ ...request, narrow: { least: '1/2' }, ratio }).total).toBeGreaterThan(0);
  });
});

describe('what cannot be asked', () => {
  it.each<[string, string, LogCabinFitRequest]>([
    ['limits-cross', 'center', { finished: 9, rounds: 4, center: { least: 3, most: 2 } }],
    ['limits-cross', 'wide', { finished: 9, rounds: 4, wide: { most: 1 }, narrow: { least: 1 } }],
    ['limits-cross', 'finished', { finished: { least: 9, most: 8 }, rounds: 4 }],
    ['not-positive', 'finished', { finished: 0, rounds: 4 }],
    ['not-positive', 'finished.least', { finished: { least: -1, most: 8 }, rounds: 4 }],
    ['not-positive', 'grid', { finished: 9, rounds: 4, grid: 0 }],
    ['missing-field', 'finished.most', { finished: { least: 9 }, rounds: 4 }],
    ['out-of-range', 'finished', { finished: { least: 9, most: 100_000 }, rounds: 4 }],
    ['strip-too-narrow', 'strips.wide', { finished: 9, rounds: 4, strips: { wide: '1/2' } }],
    ['conflicting-fields', 'kind', { finished: 9, rounds: 4, layout: 'quarter', kind: 'curved' }],
    ['not-a-count', 'rounds', { finished: 9, rounds: 0 }],
    ['not-a-count', 'most', { finished: 9, rounds: 4, most: 1e9 }],
    ['length-with-root', 'wish.ratio', { finished: 9, rounds: 4, wish: { ratio: '√2' } }],
  ])('%s of %s', (code, field, request) => {
    const error = refusal(() => fitLogCabin(request));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});
