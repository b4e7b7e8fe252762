import { type BindingSpec, binding, length, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

const size = (width: number, height: number) => ({ width, height });

function continuous(spec: Omit<BindingSpec, 'cut'>) {
  const plan = binding({ ...spec, cut: 'bias-continuous' });
  if (plan.cut !== 'bias-continuous') throw new Error('It is cut otherwise.');
  return plan;
}

function biasStrips(spec: Omit<BindingSpec, 'cut'>) {
  const plan = binding({ ...spec, cut: 'bias-strips' });
  if (plan.cut !== 'bias-strips') throw new Error('It is cut otherwise.');
  return plan;
}

describe('published bindings', () => {
  // The school lesson “Can You Figure the Amount of Yardage to Buy?” (H).
  it('of 70 by 86 go round 312 in', () => {
    expect(binding({ quilt: size(70, 86) }).perimeter.toString()).toBe('312');
  });

  // Woolley Fiber Quilters guild, veterans' quilt standards, 2014 (C): at least 300 in of 2 1/2.
  it('of 63 by 87 are at least 300 in of 2 1/2', () => {
    const plan = binding({ quilt: size(63, 87) });
    expect(plan.strip.toString()).toBe('2 1/2');
    expect(plan.needed.compareTo(300)).toBeGreaterThanOrEqual(0);
    expect(plan.length.compareTo(300)).toBeGreaterThanOrEqual(0);
  });
});

describe('straight binding', () => {
  const eighths = (min: number, max: number) =>
    fc.integer({ min, max }).map((count) => length(count).dividedBy(8));

  it('is enough, and one strip less would not be: strips sewn one to the next, each join takes w', () => {
    fc.assert(
      fc.property(
        fc.record({ width: eighths(8, 1000), height: eighths(8, 1000) }),
        eighths(8, 40),
        eighths(80, 360),
        (quilt, strip, fabricWidth) => {
          const plan = binding({ quilt, strip, fabricWidth });
          let [strips, made] = [1, fabricWidth];
          while (made.compareTo(plan.needed) < 0) {
            strips += 1;
            made = made.plus(fabricWidth).minus(strip);
          }
          expect([plan.strips, plan.length, plan.joins]).toEqual([strips, made, strips - 1]);
          expect(plan.fabric).toEqual(strip.times(strips));
          expect(plan.leftOver).toEqual(made.minus(plan.needed));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('takes one strip more where a join per strip is forgotten', () => {
    // 8 · 40 = 320 is enough for 310 by area; 7 joins of 2 1/2 leave 302 1/2.
    expect(binding({ quilt: size(63, 87) }).strips).toBe(9);
  });

  it('goes round a quilt on point exactly', () => {
    const side = squareRoot(2).times(45);
    expect(binding({ quilt: side }).perimeter).toEqual(squareRoot(2).times(180));
  });
});

describe('continuous bias', () => {
  // Derived exactly (X): S²/w says 200, and 250 in from 22.36, so 23.
  it('of 2 from a square of 20 is 165 in, not 200', () => {
    // 165 needs 20; one inch more needs 21.
    const quilt = 40;
    expect(continuous({ quilt, extra: 5, strip: 2, grid: 1 }).square.toString()).toBe('20');
    expect(continuous({ quilt, extra: 6, strip: 2, grid: 1 }).square.toString()).toBe('21');
    const plan = continuous({ quilt, extra: 5, strip: 2, grid: 1 });
    expect(plan.stripsPerSquare).toBe(6);
    expect(plan.length).toEqual(squareRoot(2).times('19 1/2').times(6));
    expect(plan.length.toGrid(1, 'down').toString()).toBe('165');
    expect(plan.customary.perSquare.toString()).toBe('200');
  });

  it('of 2, 250 in, needs a square of 24, where the customary rule says 23', () => {
    const plan = continuous({ quilt: 60, extra: 10, strip: 2, grid: 1 });
    expect(plan.needed.toString()).toBe('250');
    expect([plan.square.toString(), plan.customary.square.toString()]).toEqual(['24', '23']);
    expect(plan.warnings.map(({ code }) => code)).toEqual(['customary-short']);
  });

  it('takes the least square on the grid, as counting whole strips for every square says', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 60 }),
        fc.integer({ min: 10, max: 26 }),
        fc.constantFrom(2, 4, 8),
        (side, strip, parts) => {
          const plan = continuous({
            quilt: side,
            strip: length(strip).dividedBy(8),
            fabricWidth: 100,
            grid: length(1).dividedBy(parts),
          });
          // In eighths, squared: k√2 · w ≤ S − 2s, and k√2(S − 2s) ≥ needed.
          const needed = 8 * (4 * side + 10);
          const step = 8 / parts;
          let square = 0;
          for (;;) {
            square += step;
            const inner = square - 4;
            if (inner <= 0) continue;
            let strips = 0;
            while (2 * (strips + 1) ** 2 * strip ** 2 <= inner ** 2) strips += 1;
            if (2 * strips ** 2 * inner ** 2 >= needed ** 2) break;
          }
          expect(plan.square).toEqual(length(square).dividedBy(8));
          expect(plan.squares).toBe(1);
        },
      ),
      { numRuns: 15 },
    );
  });

  it('is cut from several squares where one would be wider than the fabric', () => {
    const plan = continuous({ quilt: 120, fabricWidth: 30 });
    expect(plan.squares).toBe(2);
    expect(plan.square.compareTo(30)).toBeLessThanOrEqual(0);
    expect(plan.length).toEqual(plan.perSquare.times(2).minus('2 1/2'));
    expect(plan.length.compareTo(plan.needed)).toBeGreaterThanOrEqual(0);
    expect(plan.warnings.map(({ code }) => code)).toEqual(['several-squares']);
  });
});

describe('bias strips', () => {
  // Derived: a 20-inch square cut on its diagonal, 2-inch strips. Seven on each side measure
  // 20√2 − 2, less 4 each; a join takes 2s√2 = √2/2. All together 280√2 − 196 − 13√2/2.
  it('of a 20-inch square measure what their middles do, less the joins', () => {
    const spec = { quilt: 40, strip: 2, grid: 1 };
    expect(biasStrips({ ...spec, extra: 30 }).fromSquares).toMatchObject({
      squares: 1,
      strips: 14,
    });
    const { square, length: made } = biasStrips({ ...spec, extra: 30 }).fromSquares;
    expect(square.toString()).toBe('20');
    expect(made).toEqual(squareRoot(2).times('273 1/2').minus(196));
    expect(biasStrips({ ...spec, extra: 31 }).fromSquares.square.toString()).toBe('21');
  });

  it('that measure no more than their join takes are left away', () => {
    // 1/2-inch strips of a 5-inch square: the seventh on each side measures 5√2 − 6 1/2, under √2/2.
    // Twelve make 60√2 − 36 − 11√2/2, a little over 41; fourteen would make less.
    const { fromSquares } = biasStrips({ quilt: 10, extra: 1, strip: '1/2', grid: 1 });
    expect([fromSquares.square.toString(), fromSquares.strips]).toEqual(['5', 12]);
  });

  it('never make more than the fabric’s area, joins counted, and always enough', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 120 }),
        fc.integer({ min: 8, max: 26 }),
        fc.integer({ min: 20, max: 110 }),
        (side, eighths, fabricWidth) => {
          const strip = length(eighths).dividedBy(8);
          const plan = biasStrips({ quilt: side, strip, fabricWidth });
          const join = squareRoot(2).dividedBy(2);
          const cases = [
            { made: plan.length, strips: plan.strips, area: plan.fabric.times(fabricWidth) },
            {
              made: plan.fromSquares.length,
              strips: plan.fromSquares.strips,
              area: plan.fromSquares.square
                .times(plan.fromSquares.square)
                .times(plan.fromSquares.squares),
            },
          ];
          for (const { made, strips, area } of cases) {
            expect(made.compareTo(plan.needed)).toBeGreaterThanOrEqual(0);
            const cut = made.plus(join.times(strips - 1)).times(strip);
            expect(cut.compareTo(area)).toBeLessThanOrEqual(0);
          }
          expect(plan.fromSquares.square.compareTo(fabricWidth)).toBeLessThanOrEqual(0);
        },
      ),
      { numRuns: 15 },
    );
  });

  it('take the least length of fabric on the grid, as trying every one from the least up says', () => {
    /** What all strips worth their join make, by floating point. */
    const makes = (width: number, height: number, strip: number): number => {
      const [shorter, longer] = [Math.min(width, height), Math.max(width, height)];
      const longest = shorter * Math.SQRT2;
      const joinTakes = Math.SQRT2 / 2;
      const strips: number[] = [];
      for (let at = strip * Math.SQRT2; at <= longer - shorter + 1e-9; at += strip * Math.SQRT2)
        strips.push(longest);
      for (let middle = longest - strip; middle >= strip - 1e-9; middle -= 2 * strip)
        if (middle > joinTakes) strips.push(middle, middle);
      return strips.reduce((sum, each) => sum + each, 0) - joinTakes * (strips.length - 1);
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 90 }),
        fc.integer({ min: 4, max: 26 }),
        fc.integer({ min: 20, max: 60 }),
        (side, eighths, fabricWidth) => {
          const strip = eighths / 8;
          let fabric = 1 / 8;
          while (makes(fabricWidth, fabric, strip) < 4 * side + 10) fabric += 1 / 8;
          const plan = biasStrips({ quilt: side, strip, fabricWidth });
          expect(plan.fabric.toNumber()).toBe(fabric);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('from a fabric as wide as the square needs no more of it than the square', () => {
    const { square } = biasStrips({ quilt: 60, fabricWidth: 60 }).fromSquares;
    const plan = biasStrips({ quilt: 60, fabricWidth: square });
    expect(plan.fabric.compareTo(square)).toBeLessThanOrEqual(0);
  });
});

describe('refused', () => {
  const quilt = size(60, 72);
  it.each<[string, string, BindingSpec]>([
    ['missing-field', 'quilt', JSON.parse('{}')],
    ['not-positive', 'quilt', { quilt: 0 }],
    ['out-of-range', 'quilt', { quilt: 1e9 }],
    ['not-positive', 'strip', { quilt, strip: 0 }],
    ['out-of-range', 'strip', { quilt, strip: '1/1000' }],
    ['not-positive', 'extra', { quilt, extra: -1 }],
    ['strip-too-wide', 'strip', { quilt, strip: 12, fabricWidth: 12 }],
    ['strip-too-wide', 'strip', { quilt, strip: 12, fabricWidth: 12, cut: 'bias-strips' }],
    ['strip-too-wide', 'strip', { quilt, strip: 12, fabricWidth: 12, cut: 'bias-continuous' }],
    ['unknown-choice', 'cut', { quilt, cut: JSON.parse('"bias"') }],
    ['length-with-root', 'strip', { quilt, strip: squareRoot(2) }],
  ])('%s of %s', (code, field, spec) => {
    const error = refusal(() => binding(spec));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});
