import {
  type BorderSpec,
  cuttingPlan,
  length,
  type QuiltBordersSpec,
  quiltBorders,
  squareRoot,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

const size = (width: string | number, height: string | number) => ({ width, height });

/** The lengths to cut, in the order of sewing. */
const cutsOf = (spec: QuiltBordersSpec): readonly string[] =>
  quiltBorders(spec).borders.flatMap(({ parts }) =>
    parts.map(({ count, cut }) => `${count} of ${cut.width} by ${cut.length}`),
  );

describe('published borders', () => {
  // A class page whose issuer the copy does not show (H). It measures raw tops: 32 1/2 × 44 finishes
  // half an inch less each way.
  it('of 32 1/2 by 44, round by round, as a class page has them (H)', () => {
    const spec = { quilt: size(32, '43 1/2'), borders: [{ width: 1 }, { width: 2 }] };
    expect(cutsOf(spec)).toEqual([
      '2 of 1 1/2 by 44',
      '2 of 1 1/2 by 34 1/2',
      '2 of 2 1/2 by 46',
      '2 of 2 1/2 by 38 1/2',
    ]);
    const { unfinished } = quiltBorders(spec);
    expect([unfinished.width.toString(), unfinished.height.toString()]).toEqual(['38 1/2', '50']);
  });

  // The school lesson “Can You Figure the Amount of Yardage to Buy?” (H): a quilt of 70 × 86 with a 6-inch
  // border, cut 6 1/2, takes 2 · 70 + 2 · 86 + 4 · 6 1/2 = 338 in and finishes 82 × 98.
  it('of 70 by 86 with a 6-inch border: 338 in, and 82 by 98', () => {
    const { borders, finished } = quiltBorders({ quilt: size(70, 86), borders: [{ width: 6 }] });
    expect([finished.width.toString(), finished.height.toString()]).toEqual(['82', '98']);
    const running = borders[0]?.parts.reduce(
      (sum, { cut, count }) => sum.plus(cut.length.times(count)),
      length(0),
    );
    expect(running).toEqual(length(338));
  });

  // Derived exactly (X): the outer finished edge and 2s(1 + √2).
  it('mitered round 40 by a 5-inch border need 51 1/4 at least', () => {
    const { borders } = quiltBorders({ quilt: 40, borders: [{ width: 5, style: 'mitered' }] });
    expect(borders[0]?.least?.width.toString()).toBe('51 1/4');
    expect(borders[0]?.parts.map(({ cut }) => cut.length.toString())).toEqual(['55 1/4', '55 1/4']);
  });

  it('mitered and cut no longer than that fall short of it by less than a step of the grid', () => {
    const borders: readonly BorderSpec[] = [{ width: 5, style: 'mitered', extra: 0 }];
    const [border] = quiltBorders({ quilt: 40, borders }).borders;
    const exact = border?.parts[0]?.exact.length ?? length(0);
    expect(exact).toEqual(length(50).plus(squareRoot(2).plus(1).dividedBy(2)));
  });
});

describe('a border', () => {
  const eighths = fc.integer({ min: 8, max: 800 }).map((count) => length(count).dividedBy(8));
  const border: fc.Arbitrary<BorderSpec> = fc.record({
    width: fc.integer({ min: 4, max: 64 }).map((count) => length(count).dividedBy(8)),
    style: fc.constantFrom('straight', 'mitered'),
    cut: fc.constantFrom('crosswise', 'lengthwise'),
  });
  const spec: fc.Arbitrary<QuiltBordersSpec> = fc.record({
    quilt: fc.record({ width: eighths, height: eighths }),
    borders: fc.array(border, { minLength: 1, maxLength: 4 }),
  });

  it('adds twice its width each way, whatever its style', () => {
    fc.assert(
      fc.property(spec, (each) => {
        const { finished, quilt, borders } = quiltBorders(each);
        const both = borders.reduce((sum, { width }) => sum.plus(width.times(2)), length(0));
        expect(finished).toEqual({
          width: quilt.width.plus(both),
          height: quilt.height.plus(both),
        });
      }),
      { numRuns: 30 },
    );
  });

  it('that is straight shows exactly what it adds: its strips’ areas are the frame’s', () => {
    const squares = fc.constantFrom<'none' | 'squares'>('none', 'squares');
    fc.assert(
      fc.property(spec, squares, (each, corners) => {
        const borders = each.borders.map(({ width }) => ({ width, corners }));
        const plan = quiltBorders({ ...each, borders });
        const shown = plan.borders
          .flatMap(({ parts }) => parts)
          .reduce(
            (sum, { finished, count }) =>
              sum.plus(finished.width.times(finished.length).times(count)),
            length(0),
          );
        const area = ({ width, height }: typeof plan.quilt) => width.times(height);
        expect(shown).toEqual(area(plan.finished).minus(area(plan.quilt)));
      }),
      { numRuns: 30 },
    );
  });

  it('that is joined has strips enough for all its lengths, and one less would not do', () => {
    fc.assert(
      fc.property(spec, (each) => {
        for (const { joined, parts, fabricWidth } of quiltBorders(each).borders) {
          if (joined === undefined) continue;
          const strip = parts[0]?.cut.width ?? length(0);
          const running = parts.reduce(
            (sum, { cut, count }) => sum.plus(cut.length.times(count)),
            length(0),
          );
          // Sew strip to strip until they reach.
          let [strips, made] = [1, fabricWidth];
          while (made.compareTo(running) < 0) {
            strips += 1;
            made = made.plus(fabricWidth).minus(strip);
          }
          expect([joined.count, joined.length]).toEqual([strips, made]);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('has sides as long as the top, and corner squares keep top and bottom as wide as it', () => {
    const corners = 'squares';
    expect(cutsOf({ quilt: size(30, 40), borders: [{ width: 3, corners }] })).toEqual([
      '2 of 3 1/2 by 40 1/2',
      '2 of 3 1/2 by 30 1/2',
      '4 of 3 1/2 by 3 1/2',
    ]);
  });

  it('on the length is cut in one piece each, across the fabric where it fits', () => {
    const quilt = size(30, 60);
    const lengthwise = quiltBorders({ quilt, borders: [{ width: 3, cut: 'lengthwise' }] });
    expect(lengthwise.borders[0]?.joined).toBeUndefined();
    // Strips of the fabric 60 1/2 and 36 1/2 long, of which a border takes 3 1/2 of its width.
    expect(
      cuttingPlan({ width: 40, method: 'plain', pieces: lengthwise.pieces }).length.toString(),
    ).toBe('97');
    const crosswise = quiltBorders({ quilt, borders: [{ width: 3 }] });
    // 2 · 60 1/2 + 2 · 36 1/2 = 194 from strips of 40 that lose 3 1/2 a join: 6 make 222 1/2, 5 make 186.
    expect(crosswise.borders[0]?.joined?.count).toBe(6);
    expect(
      cuttingPlan({ width: 40, method: 'plain', pieces: crosswise.pieces }).length.toString(),
    ).toBe('21');
    const short = quiltBorders({ quilt: 30, borders: [{ width: 3 }] });
    expect(short.pieces.map(({ length: along }) => along.toString())).toEqual(['30 1/2', '36 1/2']);
  });
});

describe('a top that was measured', () => {
  it('has borders cut to its middle, and each says by how much they differ from the plan', () => {
    const spec = { quilt: size(60, 72), measured: size('60 1/4', '72 7/8') };
    const { borders, warnings } = quiltBorders({ ...spec, borders: [{ width: 2 }, { width: 4 }] });
    const told = borders.flatMap(({ parts }) =>
      parts.map(({ cut, planned, differs }) => `${cut.length} for ${planned.length}: ${differs}`),
    );
    expect(told).toEqual([
      '72 7/8 for 72 1/2: 3/8',
      '64 1/4 for 64 1/2: -1/4',
      '76 7/8 for 76 1/2: 3/8',
      '72 1/4 for 72 1/2: -1/4',
    ]);
    expect(warnings.map(({ code }) => code)).toEqual(['measured-differs']);
  });

  it('as planned differs by nothing and warns of nothing', () => {
    const spec = { quilt: size(60, 72), measured: size('60 1/2', '72 1/2') };
    const { borders, warnings } = quiltBorders({ ...spec, borders: [{ width: 2 }] });
    expect(borders[0]?.parts.map(({ differs }) => differs.sign())).toEqual([0, 0]);
    expect(warnings).toEqual([]);
  });

  it('between two lines of the grid has borders cut up to the next one', () => {
    const spec = { quilt: size(60, 72), measured: size('60 1/2', '72 9/16') };
    const { borders } = quiltBorders({ ...spec, borders: [{ width: 2 }] });
    expect(borders[0]?.parts[0]?.cut.length.toString()).toBe('72 5/8');
  });
});

describe('a pieced border', () => {
  const pieced = (unit: string | number, corners: 'none' | 'squares' = 'squares'): BorderSpec => ({
    width: 3,
    style: 'pieced',
    unit,
    corners,
  });

  it('counts its repeat units where they divide every side exactly', () => {
    const { borders, pieces } = quiltBorders({ quilt: size(60, 72), borders: [pieced(3)] });
    expect(borders[0]?.parts.map(({ units }) => units)).toEqual([24, 20, undefined]);
    expect(borders[0]?.units).toBe(88);
    expect(pieces.map(({ label, count }) => [label, count])).toEqual([['border corner', 4]]);
    const without = quiltBorders({ quilt: size(60, 72), borders: [pieced(3, 'none')] });
    expect(without.borders[0]?.units).toBe(2 * 24 + 2 * 22);
  });

  it('is refused where they do not, with the units next to it and the border that would help', () => {
    const error = refusal(() => quiltBorders({ quilt: size(60, 72), borders: [pieced(7)] }));
    expect([error.code, error.field]).toEqual(['repeat-does-not-fit', 'borders[0].unit']);
    expect(error.message).toBe(
      'A repeat of 7 does not divide a side of 72 exactly. 10 of 7 1/5 or 11 of 6 6/11 would, or a plain border that finishes 2 1/2 wide inside it.',
    );
    // Taken at its word: 72 + 2 · 2 1/2 = 77 = 11 · 7, and the top of 60 + 5 wants another one.
    const helped = { quilt: size(72, 72), borders: [{ width: '2 1/2' }, pieced(7)] };
    expect(quiltBorders(helped).borders[1]?.units).toBe(44);
  });
});

describe('refused', () => {
  const quilt = size(60, 72);
  it.each<[string, string, QuiltBordersSpec]>([
    ['not-a-count', 'borders', { quilt, borders: [] }],
    ['not-positive', 'borders[0].width', { quilt, borders: [{ width: 0 }] }],
    ['not-positive', 'borders[1].width', { quilt, borders: [{ width: 1 }, { width: -2 }] }],
    ['not-positive', 'quilt.width', { quilt: size(0, 72), borders: [{ width: 1 }] }],
    [
      'conflicting-fields',
      'borders[0].corners',
      { quilt, borders: [{ width: 1, style: 'mitered', corners: 'squares' }] },
    ],
    ['conflicting-fields', 'borders[0].unit', { quilt, borders: [{ width: 1, unit: 3 }] }],
    ['conflicting-fields', 'borders[0].extra', { quilt, borders: [{ width: 1, extra: 3 }] }],
    ['missing-field', 'borders[0].unit', { quilt, borders: [{ width: 1, style: 'pieced' }] }],
    [
      'strip-too-wide',
      'borders[0].fabricWidth',
      { quilt, borders: [{ width: 10, fabricWidth: 10 }] },
    ],
    ['seam-too-wide', 'measured', { quilt, measured: '1/2', borders: [{ width: 1 }] }],
    ['out-of-range', 'quilt', { quilt: 1e12, borders: [{ width: 1 }] }],
  ])('%s of %s', (code, field, spec) => {
    const error = refusal(() => quiltBorders(spec));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('but a border wider than the quilt is made, with a warning', () => {
    const { finished, warnings } = quiltBorders({ quilt: 10, borders: [{ width: 12 }] });
    expect(finished.width.toString()).toBe('34');
    expect(warnings.map(({ code }) => code)).toEqual(['wide-border']);
  });
});
