import { EighthsError, type LengthInput, length, squareRoot } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import {
  booleanField,
  checkFields,
  choiceField,
  countField,
  lengthBetween,
  lengthField,
  listField,
  missing,
  rationalField,
  type Sign,
} from '../../../packages/core/src/plan/field.js';

function refusal(act: () => unknown): EighthsError {
  try {
    act();
  } catch (error) {
    if (error instanceof EighthsError) return error;
    throw error;
  }
  throw new Error('Nothing was refused.');
}

describe('a length in a field', () => {
  const accepted: readonly (readonly [LengthInput, Sign | undefined, string])[] = [
    ['10 1/2', undefined, '10 1/2'],
    [0.5, 'positive', '1/2'],
    ['√2 - 1', 'positive', '√2 - 1'],
    [0, 'zero or more', '0'],
    ['1/4', 'zero or more', '1/4'],
    ['-1/4', 'any', '-1/4'],
    [0, 'any', '0'],
  ];
  it.each(accepted)('%s is accepted where it may be %s', (input, sign, inches) => {
    expect(lengthField(input, 'seam', sign).toString()).toBe(inches);
  });

  const refused: readonly (readonly [LengthInput, Sign | undefined, string])[] = [
    [0, undefined, 'This length must be more than 0, not 0.'],
    [0, 'positive', 'This length must be more than 0, not 0.'],
    ['-1/4', 'positive', 'This length must be more than 0, not -1/4.'],
    ['√2 - 3/2', 'positive', 'This length must be more than 0, not √2 - 1 1/2.'],
    ['-1/4', 'zero or more', 'This length must be at least 0, not -1/4.'],
  ];
  it.each(refused)('%s is refused where it must be %s', (input, sign, message) => {
    const error = refusal(() => lengthField(input, 'strips.wide', sign));
    expect(error).toMatchObject({ code: 'not-positive', field: 'strips.wide', message });
    expect(String(error.values.value)).toBe(length(input).toString());
  });

  it('that cannot be read names the field, and keeps its reason and sentence', () => {
    const error = refusal(() => lengthField('ten', 'pieces[2].width'));
    const plain = refusal(() => length('ten'));
    expect(error).toMatchObject({ code: 'length-syntax', field: 'pieces[2].width' });
    expect([error.values, error.message, error.template]).toEqual([
      plain.values,
      plain.message,
      plain.template,
    ]);
  });

  it('lets an error pass that is not about the length', () => {
    const broken = {
      toJSON: () => {
        throw new RangeError('from outside');
      },
    };
    expect(() => lengthField(broken as unknown as LengthInput, 'seam')).toThrow(RangeError);
  });
});

describe('a length within limits', () => {
  it.each(['1/8', '3/16', '1/2'])('may be %s, from 1/8 to 1/2', (seam) => {
    expect(lengthBetween(seam, 'seam', '1/8', '1/2').toString()).toBe(seam);
  });

  it.each(['1/16', '9/16', '3'])('is not %s, from 1/8 to 1/2', (seam) => {
    const error = refusal(() => lengthBetween(seam, 'seam', '1/8', '1/2'));
    expect([error.code, error.field]).toEqual(['out-of-range', 'seam']);
    expect(error.values).toEqual({
      value: length(seam),
      least: length('1/8'),
      most: length('1/2'),
    });
    expect(error.message).toBe(`This must be from 1/8 to 1/2, not ${seam}.`);
  });

  it('may be nothing only where that is said', () => {
    expect(lengthBetween(0, 'overlap', 0, 1, 'zero or more').sign()).toBe(0);
    expect(refusal(() => lengthBetween(0, 'overlap', 0, 1)).code).toBe('not-positive');
  });
});

describe('a list in a field', () => {
  it('is taken as it is', () => {
    expect(listField([3, 1, 2], 'strips', 'strips')).toEqual([3, 1, 2]);
    expect(listField([], 'strips', 'strips')).toEqual([]);
  });

  it('has its gaps as entries that are not there, so that each is asked for', () => {
    // biome-ignore lint/suspicious/noSparseArray: what a page may give is tried here.
    expect(listField([3, , 2], 'strips', 'strips').map(String)).toEqual(['3', 'undefined', '2']);
  });

  it.each(['1, 2', 12, null, { 0: 1, length: 1 }])('is not %j', (given) => {
    const error = refusal(() => listField(given as never, 'strips', 'strips'));
    expect([error.code, error.field]).toEqual(['wrong-kind', 'strips']);
    expect(error.values).toEqual({ expected: 'strips' });
    expect(error.message).toBe('A list of strips is needed here.');
  });
});

describe('a count in a field', () => {
  it.each([1, 7, 50])('%i lies from 1 to 50', (count) => {
    expect(countField(count, 'rounds', 1, 50)).toBe(count);
  });

  it.each([
    [0, '0'],
    [51, '51'],
    [-1, '-1'],
    [2.5, '2.5'],
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    ['7', '7'],
    [{}, 'an object'],
    [null, 'null'],
    [undefined, 'undefined'],
    [[7], 'a list'],
  ])('%o does not', (count, shown) => {
    const error = refusal(() => countField(count as number, 'rounds', 1, 50));
    expect(error).toMatchObject({ code: 'not-a-count', field: 'rounds' });
    expect(error.values).toMatchObject({ least: 1, most: 50 });
    expect(error.message).toBe(`A whole number from 1 to 50 is needed here, not ${shown}.`);
  });
});

describe('a choice in a field', () => {
  const layouts = ['spiral', 'courthouse'] as const;

  it.each(layouts)('%s is one', (layout) => {
    expect(choiceField(layout, 'layout', layouts)).toBe(layout);
  });

  it.each(['Spiral', 'spirals', '', 'constructor', null, undefined, 1])('%j is none', (layout) => {
    const error = refusal(() => choiceField(layout as 'spiral', 'layout', layouts));
    expect(error).toMatchObject({
      code: 'unknown-choice',
      field: 'layout',
      values: { value: String(layout), choices: 'spiral, courthouse' },
      message: `“${layout}” is not known here. Use one of: spiral, courthouse.`,
    });
  });
});

describe('the fields of a spec', () => {
  const known = ['rounds', 'seam'];

  it.each([[{}], [{ rounds: 4 }], [{ seam: '1/4', rounds: undefined }]])(
    '%o has none but known ones',
    (spec) => {
      expect(() => checkFields(spec, '', known)).not.toThrow();
    },
  );

  it.each([
    ['', 'round'],
    ['trim', 'trim.round'],
    ['pieces[2]', 'pieces[2].round'],
  ])('of %j that are not known are refused as they are spelled', (field, path) => {
    expect(refusal(() => checkFields({ seam: 1, round: 4 }, field, known))).toMatchObject({
      code: 'unknown-field',
      field: path,
      values: { name: 'round', known: 'rounds, seam' },
      message: 'There is no field “round” here. The fields are: rounds, seam.',
    });
  });

  it.each([[null], [undefined], ['rounds'], [4]])('%j has no fields at all', (spec) => {
    expect(refusal(() => checkFields(spec as unknown as object, 'trim', known))).toMatchObject({
      code: 'wrong-kind',
      field: 'trim',
      message: 'An object with these fields is needed here: rounds, seam.',
    });
  });

  it('may be missing, by name', () => {
    expect(refusal(() => missing('rounds'))).toMatchObject({
      code: 'missing-field',
      field: 'rounds',
      message: 'The field “rounds” is needed.',
    });
  });
});

describe('a step of a grid', () => {
  it('may be any fraction', () => {
    expect(rationalField(length('1/7'), 'grid').toString()).toBe('1/7');
  });

  it('holds no root', () => {
    const error = refusal(() => rationalField(squareRoot(2), 'grid'));
    expect([error.code, error.field]).toEqual(['length-with-root', 'grid']);
    expect(error.values).toEqual({ value: squareRoot(2) });
    expect(error.message).toBe('A length without a root is needed here, such as 3 1/2, not √2.');
  });
});

describe('yes or no', () => {
  it.each([true, false])('is %s', (answer) => {
    expect(booleanField(answer, 'outer')).toBe(answer);
  });

  it.each(['true', 1, null])('is not %j', (answer) => {
    const error = refusal(() => booleanField(answer as never, 'outer'));
    expect([error.code, error.field]).toEqual(['wrong-kind', 'outer']);
    expect(error.values).toEqual({ expected: 'true or false' });
    expect(error.message).toBe('True or false is needed here, without quotes.');
  });
});

describe('what is no count', () => {
  // A number stays one, so that a page can write it in its language; what is none is told as a text.
  it.each([
    [2.5, 2.5],
    ['4', '4'],
    [null, 'null'],
  ])('%j is told as %j', (input, value) => {
    expect(refusal(() => countField(input as never, 'count', 1, 9)).values).toEqual({
      value,
      least: 1,
      most: 9,
    });
  });
});
