import {
  EighthsError,
  type FormatOptions,
  formatLength,
  type Length,
  length,
  squareRoot,
  type WrittenUnit,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rationals, sums } from '../number/sums.js';

type Cases = readonly (readonly [input: string, text: string, options?: FormatOptions])[];

const areWritten = (cases: Cases, shared: FormatOptions): void => {
  for (const [input, text, options] of cases) {
    const title = options === undefined ? '' : ` with ${JSON.stringify(options)}`;
    it(`${input} is ${JSON.stringify(text)}${title}`, () => {
      expect(formatLength(input, { ...shared, ...options })).toBe(text);
    });
  }
};

describe('in Unicode, a fraction is one glyph, or stands apart with a fraction slash', () => {
  areWritten(
    [
      ['0', '0'],
      ['10', '10'],
      ['10 1/2', '10½'],
      ['1/2', '½'],
      ['1/3', '⅓'],
      ['1 2/3', '1⅔'],
      ['1/4', '¼'],
      ['3/4', '¾'],
      ['1/8', '⅛'],
      ['3/8', '⅜'],
      ['5/8', '⅝'],
      ['10 7/8', '10⅞'],
      ['10 13/16', '10\u00a013⁄16'],
      ['13/16', '13⁄16'],
      ['-10 1/2', '-10½'],
      ['-13/16', '-13⁄16'],
      ['1 1/2 yd', '1½\u00a0yd', { unit: 'yd' }],
      ['2 yd', '2\u00a0yd', { unit: 'yd' }],
      ['10 in', '5⁄18\u00a0yd', { unit: 'yd' }],
      ['40 1/2', '3′ 4½″', { unit: 'ft-in' }],
      ['40 13/16', '3′ 4\u00a013⁄16″', { unit: 'ft-in' }],
      ['36', '3′', { unit: 'ft-in' }],
      ['4 1/2', '4½″', { unit: 'ft-in' }],
      ['0', '0″', { unit: 'ft-in' }],
      ['-40 1/2', '-3′ 4½″', { unit: 'ft-in' }],
    ],
    {},
  );
});

describe('in ASCII, every character is one', () => {
  areWritten(
    [
      ['10 1/2', '10 1/2'],
      ['13/16', '13/16'],
      ['1 1/2 yd', '1 1/2 yd', { unit: 'yd' }],
      ['40 1/2', '3\' 4 1/2"', { unit: 'ft-in' }],
      ['26.67 cm', '26.67 cm', { unit: 'cm' }],
      ['9√2', '~ 12 3/4', { grid: '1/8', mode: 'up' }],
    ],
    { style: 'ascii' },
  );

  it('whatever is written', () => {
    const units = fc.constantFrom<WrittenUnit>('in', 'ft-in', 'yd', 'mm', 'cm', 'm');
    fc.assert(
      fc.property(sums, units, ({ length: value }, unit) => {
        expect(formatLength(value, { style: 'ascii', unit })).toMatch(/^[ -~]+$/);
      }),
    );
  });
});

describe('as decimals', () => {
  areWritten(
    [
      ['10 1/2', '10.5'],
      ['10', '10'],
      ['1/64', '0.015625'],
      ['-1/8', '-0.125'],
      ['1/3', '≈ 0.3333'],
      ['2/3', '≈ 0.6667'],
      ['√2', '≈ 1.4142'],
      ['1 1/8 yd', '1.125\u00a0yd', { unit: 'yd' }],
      ['40 1/2', '3\' 4.5"', { unit: 'ft-in' }],
      ['10 1/2', '10,5', { locale: 'de' }],
      ['10 1/2', '10,5', { locale: 'fr-CA' }],
      ['10 1/2', '10.5', { locale: 'de-CH' }],
      ['10 1/2', '10.5', { locale: 'en-GB' }],
      ['1234567.5', '1234567.5', {}],
    ],
    { style: 'decimal' },
  );
});

describe('metric units are decimals in every style', () => {
  areWritten(
    [
      ['10 1/2', '26.67\u00a0cm', { unit: 'cm' }],
      ['10 1/2', '266.7\u00a0mm', { unit: 'mm' }],
      ['1 yd', '0.9144\u00a0m', { unit: 'm' }],
      ['1/8', '3.175\u00a0mm', { unit: 'mm' }],
      ['1/64', '0.396875\u00a0mm', { unit: 'mm' }],
      ['1/3', '≈ 8.5\u00a0mm', { unit: 'mm' }],
      ['1/3', '≈ 0.85\u00a0cm', { unit: 'cm' }],
      ['9√2', '≈ 32.33\u00a0cm', { unit: 'cm' }],
      ['10 1/2', '26,67\u00a0cm', { unit: 'cm', locale: 'de' }],
      ['10 1/2', '≈ 27\u00a0cm', { unit: 'cm', grid: '1 cm' }],
      ['10 1/2', '27\u00a0cm (exactly 10 1/2)', { unit: 'cm', grid: '1 cm', rounded: 'exact' }],
    ],
    {},
  );
});

describe('a rounded value never passes for an exact one', () => {
  areWritten(
    [
      ['9√2', '≈ 12¾', { grid: '1/8', mode: 'up' }],
      ['9√2', '≈ 12⅝', { grid: '1/8', mode: 'down' }],
      ['9√2', '≈ 12¾', { grid: '1/8' }],
      ['9√2', '12¾ (exactly 9√2)', { grid: '1/8', rounded: 'exact' }],
      ['9√2', 'about 12 and 3 quarter inches', { grid: '1/8', style: 'spoken' }],
      ['10 1/2', '10½', { grid: '1/8' }],
      ['10 1/2', '10½', { grid: '1/8', rounded: 'exact' }],
      ['-10 1/16', '≈ -10', { grid: '1/8' }],
      ['1/16', '≈ 0', { grid: '1/8', mode: 'down' }],
      ['11.99', '≈ 1′', { unit: 'ft-in', grid: '1/8' }],
      ['√2', '≈ 1\u00a027⁄64'],
      // A third is on the grid, but no decimal says so.
      ['1/3', '≈ 0.3333', { grid: '1/3', style: 'decimal' }],
      ['1/3', '≈ 0.3334', { grid: '1/3', mode: 'up', style: 'decimal' }],
      ['1/128', '≈ 0.0078', { grid: '1/128', style: 'decimal' }],
      ['1 cm', '≈ 0.3937', { grid: '1 cm', style: 'decimal' }],
    ],
    {},
  );

  it('so that every unmarked writing is exact, and every marked one is not', () => {
    const options = fc.record({
      unit: fc.constantFrom<WrittenUnit>('in', 'ft-in', 'yd', 'mm', 'cm', 'm'),
      style: fc.constantFrom('unicode', 'ascii', 'decimal' as const),
      mode: fc.constantFrom('up', 'down', 'nearest' as const),
      locale: fc.constantFrom('en', 'de', 'ar', 'hi'),
    });
    const grids = fc.constantFrom(undefined, '1/8', '1/3', '1 mm', '1/7 cm');
    const values: fc.Arbitrary<Length> = fc.oneof(
      rationals,
      sums.map((sum) => sum.length),
      fc.integer({ min: -999, max: 999 }).map((count) => length('1/8').times(count)),
    );
    fc.assert(
      fc.property(values, options, grids, (value, written, grid) => {
        const text = formatLength(value, { ...written, ...(grid === undefined ? {} : { grid }) });
        const decimal = text.includes(',') ? ',' : '.';
        const [, mark = '', number = ''] = /^([≈~] )?(.*)$/.exec(text) ?? [];
        const order = length(number, { decimal }).compareTo(value);
        expect(order === 0).toBe(mark === '');
        if (written.mode === 'up') expect(order).not.toBe(-1);
        if (written.mode === 'down') expect(order).not.toBe(1);
      }),
      { numRuns: 1000 },
    );
  });

  it('and a marked writing is no length to read', () => {
    for (const style of ['unicode', 'ascii', 'decimal', 'spoken'] as const) {
      expect(() => length(formatLength('√2', { style }))).toThrow(EighthsError);
    }
  });
});

// The forms are common usage, no source.
describe('spoken, a length is what a person would say', () => {
  areWritten(
    [
      ['10 1/2', '10 and a half inches'],
      ['1/2', 'half an inch'],
      ['1/4', 'a quarter of an inch'],
      ['3/4', '3 quarters of an inch'],
      ['10 1/4', '10 and a quarter inches'],
      ['12 3/4', '12 and 3 quarter inches'],
      ['1/8', '1 eighth of an inch'],
      ['10 1/8', '10 and 1 eighth inches'],
      ['10 7/8', '10 and 7 eighths inches'],
      ['7/8', '7 eighths of an inch'],
      ['10 13/16', '10 and 13 sixteenths inches'],
      ['1/3', 'a third of an inch'],
      ['1 2/3', '1 and 2 thirds inches'],
      ['1/5', '1 fifth of an inch'],
      ['5/6', '5 sixths of an inch'],
      ['2/7', '2 sevenths of an inch'],
      ['4/9', '4 ninths of an inch'],
      ['9/10', '9 tenths of an inch'],
      ['7/12', '7 twelfths of an inch'],
      ['1/32', '1 thirty-second of an inch'],
      ['2 3/64', '2 and 3 sixty-fourths inches'],
      ['5/127', '5 over 127 of an inch'],
      ['0', '0 inches'],
      ['1', '1 inch'],
      ['2', '2 inches'],
      ['1 1/2', '1 and a half inches'],
      ['-1/2', 'minus half an inch'],
      ['1 yd', '1 yard', { unit: 'yd' }],
      ['2 yd', '2 yards', { unit: 'yd' }],
      ['1/2 yd', 'half a yard', { unit: 'yd' }],
      ['1/8 yd', '1 eighth of a yard', { unit: 'yd' }],
      ['2 3/8 yd', '2 and 3 eighths yards', { unit: 'yd' }],
      ['12', '1 foot', { unit: 'ft-in' }],
      ['36', '3 feet', { unit: 'ft-in' }],
      ['40 1/2', '3 feet 4 and a half inches', { unit: 'ft-in' }],
      ['37', '3 feet 1 inch', { unit: 'ft-in' }],
      ['36 1/2', '3 feet and half an inch', { unit: 'ft-in' }],
      ['12 7/8', '1 foot and 7 eighths of an inch', { unit: 'ft-in' }],
      ['1/2', 'half an inch', { unit: 'ft-in' }],
      ['10 1/2', '26.67 centimeters', { unit: 'cm' }],
      ['1 cm', '1 centimeter', { unit: 'cm' }],
      ['0.5 cm', '0.5 centimeters', { unit: 'cm' }],
      ['1 mm', '1 millimeter', { unit: 'mm' }],
      ['3 mm', '3 millimeters', { unit: 'mm' }],
      ['1 m', '1 meter', { unit: 'm' }],
      ['2 m', '2 meters', { unit: 'm' }],
      ['1/3', 'about 8.5 millimeters', { unit: 'mm' }],
    ],
    { style: 'spoken' },
  );

  describe('in another language, as a decimal with the unit’s name in it', () => {
    // The unit's names are those of the locale data in the engine (CLDR), looked at, not from a source.
    areWritten(
      [
        ['10 1/2', '10,5 Zoll', { locale: 'de' }],
        ['1 cm', '1 Zentimeter', { locale: 'de', unit: 'cm' }],
        ['2 yd', '2 yards', { locale: 'fr', unit: 'yd' }],
        ['40 1/2', '3 Fuß 4,5 Zoll', { locale: 'de', unit: 'ft-in' }],
        ['36 1/2', '3 Fuß 0,5 Zoll', { locale: 'de', unit: 'ft-in' }],
        ['-1/3', '≈ -0,3333 Zoll', { locale: 'de' }],
        // One and a half is one in French; in Spanish, whatever is not 1 is several.
        ['1 1/2', '1,5 pouce', { locale: 'fr' }],
        ['1', '1 pulgada', { locale: 'es' }],
        ['1.0001', '1,0001 pulgadas', { locale: 'es' }],
      ],
      { style: 'spoken' },
    );
  });

  it('has no glyph and no sign in it that speech engines misread', () => {
    fc.assert(
      fc.property(sums, fc.constantFrom<WrittenUnit>('in', 'ft-in', 'yd', 'cm'), (sum, unit) => {
        expect(formatLength(sum.length, { style: 'spoken', unit })).toMatch(/^[a-z0-9 .-]+$/);
      }),
    );
  });
});

describe('what is no way to write a length is refused', () => {
  const refused: readonly (readonly [object, string, string])[] = [
    [{ unit: 'ft' }, 'unit', '“ft” is not known here. Use one of: in, ft-in, yd, mm, cm, m.'],
    [{ unit: 'constructor' }, 'unit', 'Use one of: in, ft-in, yd, mm, cm, m.'],
    [{ style: 'roman' }, 'style', 'Use one of: unicode, ascii, decimal, spoken.'],
    [{ grid: '1/8', mode: 'off' }, 'rounding', 'Use one of: up, down, nearest.'],
    [{ style: 'decimal', locale: 'en_US' }, 'locale', '“en_US” is not known here.'],
    [{ style: 'decimal', locale: '' }, 'locale', 'Use one of: language tags such as en or de-CH.'],
  ];
  it.each(refused)('%o', (options, field, sentence) => {
    const act = () => formatLength('10 1/2', options as FormatOptions);
    expect(act).toThrow(expect.objectContaining({ code: 'unknown-choice', field }));
    expect(act).toThrow(sentence);
  });

  it.each([['0'], ['-1/8'], ['√2']])('a grid of %s', (grid) => {
    expect(() => formatLength('10 1/2', { grid })).toThrow(
      expect.objectContaining({ code: 'length-step' }),
    );
  });

  it('and a text that is no length', () => {
    expect(() => formatLength('ten')).toThrow(expect.objectContaining({ code: 'length-syntax' }));
  });
});

it('every kind of input is written, not only lengths', () => {
  expect(formatLength(10.5)).toBe('10½');
  expect(formatLength(10n)).toBe('10');
  expect(formatLength({ s: 1n, n: 21n, d: 2n })).toBe('10½');
  expect(formatLength(squareRoot('9/4'))).toBe('1½');
});
