import { type FractionInput, length, type ReadOptions, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** What is typed, and the exact inches it is. */
type Cases = readonly (readonly [typed: string, inches: string])[];

const readsAs = (cases: Cases): void => {
  it.each(cases)('%j is %s', (typed, inches) => {
    expect(length(typed).toString()).toBe(inches);
  });
};

describe('inches are read as people type them', () => {
  readsAs([
    ['10', '10'],
    ['0', '0'],
    ['007', '7'],
    ['10 1/2', '10 1/2'],
    ['10-1/2', '10 1/2'],
    ['10+1/2', '10 1/2'],
    ['10 + 1/2', '10 1/2'],
    ['10&1/2', '10 1/2'],
    ['10 & 1/2', '10 1/2'],
    ['10 and 1/2', '10 1/2'],
    ['10 AND 1/2', '10 1/2'],
    ['10 3/2', '11 1/2'],
    ['10 4/8', '10 1/2'],
    ['21/2', '10 1/2'],
    ['1/2', '1/2'],
    ['0 1/2', '1/2'],
    ['0/5', '0'],
    ['10.5', '10 1/2'],
    ['10.', '10'],
    ['.5', '1/2'],
    ['.125', '1/8'],
    ['10,5', '10 1/2'],
    [',5', '1/2'],
    ['10.125', '10 1/8'],
    ['0.3333', '3333/10000'],
    ['1.000', '1'],
    ['0,125', '1/8'],
    // Four places are no thousands, whichever sign stands before them.
    ['1,0625', '1 1/16'],
    ['1234,567', '1234 567/1000'],
    ['1e2', '100'],
    ['1E+2', '100'],
    ['12.5e-1', '1 1/4'],
  ]);
});

describe('a sign applies to the whole length', () => {
  readsAs([
    ['-12 2/3', '-12 2/3'],
    ['−12 2/3', '-12 2/3'],
    ['- 12 2/3', '-12 2/3'],
    ['-½', '-1/2'],
    ['+10 1/2', '10 1/2'],
    ['-3\' 4 1/2"', '-40 1/2'],
    ['-0', '0'],
  ]);
});

describe('fractions in one glyph, raised and lowered digits are fractions', () => {
  readsAs([
    ['½', '1/2'],
    ['10½', '10 1/2'],
    ['10 ½', '10 1/2'],
    ['10-½', '10 1/2'],
    ['10 and ½', '10 1/2'],
    ['10 + ½', '10 1/2'],
    ['1⅓', '1 1/3'],
    ['1⅔', '1 2/3'],
    ['1¼', '1 1/4'],
    ['1¾', '1 3/4'],
    ['1⅕', '1 1/5'],
    ['1⅖', '1 2/5'],
    ['1⅗', '1 3/5'],
    ['1⅘', '1 4/5'],
    ['1⅙', '1 1/6'],
    ['1⅚', '1 5/6'],
    ['1⅐', '1 1/7'],
    ['1⅛', '1 1/8'],
    ['1⅜', '1 3/8'],
    ['1⅝', '1 5/8'],
    ['1⅞', '1 7/8'],
    ['1⅑', '1 1/9'],
    ['1⅒', '1 1/10'],
    ['1⅟16', '1 1/16'],
    ['1⁄2', '1/2'],
    ['1∕2', '1/2'],
    ['10 1⁄2', '10 1/2'],
    ['¹⁄₂', '1/2'],
    ['10¹⁄₂', '10 1/2'],
    ['10 ¹³⁄₁₆', '10 13/16'],
    ['10¹³/₁₆', '10 13/16'],
    ['10¹/2', '10 1/2'],
    ['10₁⁄₂', '10 1/2'],
  ]);
});

describe('inch marks, dashes, spaces and full-width writing of every kind are understood', () => {
  readsAs([
    ['10 1/2"', '10 1/2'],
    ['10 1/2″', '10 1/2'],
    ['10 1/2”', '10 1/2'],
    ['10 1/2“', '10 1/2'],
    ['10 1/2„', '10 1/2'],
    ['10 1/2＂', '10 1/2'],
    ["10 1/2''", '10 1/2'],
    ['10 1/2’’', '10 1/2'],
    ['10 1/2′′', '10 1/2'],
    ['10 ½ "', '10 1/2'],
    ['10½″', '10 1/2'],
    ['10–1/2', '10 1/2'],
    ['10—1/2', '10 1/2'],
    ['10‑1/2', '10 1/2'],
    ['  10   1/2  ', '10 1/2'],
    ['10\u00a01/2', '10 1/2'],
    ['10\u20091/2', '10 1/2'],
    ['10\u202f1/2', '10 1/2'],
    ['10\t1/2\n', '10 1/2'],
    ['10\u200b½', '10 1/2'],
    ['\ufeff10½', '10 1/2'],
    ['10¹\u200b³⁄₁₆', '10 13/16'],
    ['\u206610 1/2\u2069', '10 1/2'],
    ['１０　１／２', '10 1/2'],
    ['１０．５', '10 1/2'],
    ['10½－inch', '10 1/2'],
  ]);
});

describe('units are read in each of their spellings', () => {
  readsAs([
    ['10 1/2 in', '10 1/2'],
    ['10 1/2in', '10 1/2'],
    ['10 1/2 in.', '10 1/2'],
    ['10 1/2-inch', '10 1/2'],
    ['1 inch', '1'],
    ['10.5 Inches', '10 1/2'],
    ['1 ft', '12'],
    ['1 foot', '12'],
    ["3'", '36'],
    ['3 feet', '36'],
    ['1 1/2 yd', '54'],
    ['2 yds.', '72'],
    ['1/8 yard', '4 1/2'],
    ['⅛ YARD', '4 1/2'],
    ['1.5 yards', '54'],
    ['26.5 cm', '10 55/127'],
    ['26,5cm', '10 55/127'],
    ['265 mm', '10 55/127'],
    ['1/2 cm', '25/127'],
    ['2.54 centimeters', '1'],
    ['1 centimetre', '50/127'],
    ['25.4 millimeters', '1'],
    ['1 millimetre', '5/127'],
    ['1 m', '39 47/127'],
    ['0.9144 metres', '36'],
    ['1 meter', '39 47/127'],
    ['１㎝', '50/127'],
  ]);
});

describe('a larger unit may stand before a smaller one', () => {
  readsAs([
    ['3\' 4 1/2"', '40 1/2'],
    ['3’ 4½”', '40 1/2'],
    ['3′4½″', '40 1/2'],
    ['3\'-4"', '40'],
    ["3' 4", '40'],
    ['3 ft 4 in', '40'],
    ['3ft4in', '40'],
    ['3 ft 4', '40'],
    ['3 ft, 4 in', '40'],
    ['3 feet and 4 inches', '40'],
    ['3 ft. & 4 1/2 in.', '40 1/2'],
    ['3\'&4"', '40'],
    ['1 yd 4 in', '40'],
    ['1 yd 1 ft 1/2 in', '48 1/2'],
    ['1 yard, 2 feet and 3 inches', '63'],
    ['1 m 2 cm 4 mm', '40 40/127'],
  ]);
});

describe('units are read in the languages of the elements', () => {
  readsAs([
    ['10 Zoll', '10'],
    ['3 Fuß 4 Zoll', '40'],
    ['10 1/2 pouces', '10 1/2'],
    ['3 pieds 4 pouces', '40'],
    ['1/2 pulgada', '1/2'],
    ['1 yarda', '36'],
    ['10インチ', '10'],
    ['10ヤード', '360'],
    ['254 Millimeter', '10'],
    ['254 millimètres', '10'],
    ['254 milímetros', '10'],
    ['254ミリ', '10'],
    ['254 Zentimeter', '100'],
  ]);
});

describe('sums with square roots are read as they are written', () => {
  readsAs([
    ['√2', '√2'],
    ['√4', '2'],
    ['√0', '0'],
    ['√8', '2√2'],
    ['5√2 + 1/2', '5√2 + 1/2'],
    ['5√2 - 12 2/3', '5√2 - 12 2/3'],
    ['5√2−½', '5√2 - 1/2'],
    ['5*√2', '5√2'],
    ['5·√2', '5√2'],
    ['-3/2√2', '-3/2√2'],
    ['√2 + √8', '3√2'],
    ['√2 - √2', '0'],
  ]);
});

describe('options', () => {
  const cases: readonly (readonly [string | number | bigint, ReadOptions, string])[] = [
    ['254', { unit: 'mm' }, '10'],
    ['25.4', { unit: 'cm' }, '10'],
    [25.4, { unit: 'cm' }, '10'],
    [254n, { unit: 'mm' }, '10'],
    ['2', { unit: 'yd' }, '72'],
    ['2', { unit: 'ft' }, '24'],
    ['0.0254', { unit: 'm' }, '1'],
    ['10 1/2', { unit: 'in' }, '10 1/2'],
    ['10 in', { unit: 'cm' }, '10'],
    ["3' 4", { unit: 'cm' }, '40'],
    // An inch mark says inches, where a bare number would be centimeters.
    ['10″', { unit: 'cm' }, '10'],
    ["10''", { unit: 'cm' }, '10'],
    ['1,000', { decimal: ',' }, '1'],
    ['10,125', { decimal: ',' }, '10 1/8'],
    ['10.5', { decimal: ',' }, '10 1/2'],
    ['1.000', { decimal: '.' }, '1'],
    [1.234, { decimal: ',' }, '1 117/500'],
  ];
  it.each(cases)('%s read with %o is %s', (input, options, inches) => {
    expect(length(input, options).equals(inches)).toBe(true);
  });

  it('leave a length that is already one alone', () => {
    expect(length(length(5), { unit: 'cm' }).toString()).toBe('5');
  });

  it('say what a fraction means, as they do for a number', () => {
    expect(length({ s: 1n, n: 127n, d: 50n }, { unit: 'cm' }).toString()).toBe('1');
  });
});

describe('numbers are read by their shortest decimal writing', () => {
  const cases: readonly (readonly [number | bigint, string])[] = [
    [0.1, '1/10'],
    [10.5, '10 1/2'],
    [-0.125, '-1/8'],
    [-0, '0'],
    [0.1 + 0.2, '7500000000000001/25000000000000000'],
    [1e21, '1000000000000000000000'],
    [5e-7, '1/2000000'],
    [12n, '12'],
    [-(10n ** 30n), '-1000000000000000000000000000000'],
  ];
  it.each(cases)('%s is %s', (input, inches) => {
    expect(length(input).toString()).toBe(inches);
  });

  it('so that the nearest double to what was read is the number itself', () => {
    fc.assert(
      fc.property(fc.double({ noDefaultInfinity: true, noNaN: true }), (number) => {
        // Adding 0 turns −0, which is no length, into 0.
        expect(length(number).toNumber()).toBe(number + 0);
      }),
    );
  });
});

describe('anything that has the shape of a fraction is one', () => {
  const cases: readonly (readonly [FractionInput, string])[] = [
    [{ s: 1n, n: 21n, d: 2n }, '10 1/2'],
    [{ s: -1n, n: 6n, d: 4n }, '-1 1/2'],
    [{ s: 1n, n: 0n, d: 3n }, '0'],
  ];
  it.each(cases)('%o is %s', (input, inches) => {
    expect(length(input).toString()).toBe(inches);
  });

  it('and a rational length gives its own shape back', () => {
    expect(length('-10 1/2').toFraction()).toEqual({ s: -1n, n: 21n, d: 2n });
    expect(length(0).toFraction()).toMatchObject({ n: 0n, d: 1n });
    expect(squareRoot(2).toFraction()).toBeUndefined();
  });
});

describe('reading takes a text to its end', () => {
  it('and mixed numbers are their whole and their part, however they are joined', () => {
    const joints = ['-', ' ', '+', ' + ', '&', ' & ', ' and ', '–', '\u00a0'];
    fc.assert(
      fc.property(
        fc.nat(10_000),
        fc.nat(500),
        fc.integer({ min: 1, max: 500 }),
        fc.constantFrom(...joints),
        fc.constantFrom('', '"', ' in', '″', '-inch'),
        (whole, above, below, joint, unit) => {
          const read = length(`${whole}${joint}${above}/${below}${unit}`);
          const { s, n, d } = read.toFraction() ?? { s: 0n, n: 0n, d: 0n };
          expect(s * n * BigInt(below)).toBe((BigInt(whole) * BigInt(below) + BigInt(above)) * d);
        },
      ),
    );
  });
});
