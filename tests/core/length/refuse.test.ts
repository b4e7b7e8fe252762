import {
  EighthsError,
  type LengthFault,
  type LengthInput,
  length,
  type ReadOptions,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';

function refusal(input: unknown, options?: ReadOptions): EighthsError<'length-syntax'> {
  try {
    length(input as LengthInput, options);
  } catch (error) {
    if (error instanceof EighthsError && error.code === 'length-syntax') {
      return error as EighthsError<'length-syntax'>;
    }
    throw error;
  }
  throw new Error(`${String(input)} was not refused`);
}

/** What is typed, why it is refused, and the place counted from one. */
type Cases = readonly (readonly [typed: string, reason: LengthFault, at: number])[];

const areRefused = (cases: Cases, options?: ReadOptions): void => {
  it.each(cases)('%j: %s at %i', (typed, reason, at) => {
    expect(refusal(typed, options).values).toEqual({ text: typed, reason, at });
  });
};

describe('nothing to read', () => {
  areRefused([
    ['', 'empty', 1],
    ['   ', 'empty', 4],
    ['\u200b', 'empty', 2],
  ]);
});

describe('what somebody may still be typing is unfinished, not wrong', () => {
  areRefused([
    ['-', 'unfinished', 2],
    ['10 1', 'unfinished', 3],
    ['10 1/', 'unfinished', 3],
    ['10 13', 'unfinished', 3],
    ['10 13/', 'unfinished', 3],
    ['10-', 'unfinished', 3],
    ['10-1', 'unfinished', 3],
    ['10+', 'unfinished', 3],
    ['10 +', 'unfinished', 3],
    ['10 + 1/', 'unfinished', 3],
    ['10 &', 'unfinished', 3],
    ['10 a', 'unfinished', 3],
    ['10 an', 'unfinished', 3],
    ['10 and', 'unfinished', 3],
    ['10 and 1', 'unfinished', 3],
    ['10 and 1/', 'unfinished', 3],
    ['1/', 'unfinished', 2],
    ['10⅟', 'unfinished', 3],
    // Digits of two kinds are two numbers: this is no 102, and that no 12.
    ['10₂', 'unfinished', 3],
    ['¹₂', 'unfinished', 2],
    ['10 inc', 'unfinished', 3],
    ['10 1/2 i', 'unfinished', 7],
    ['10 mill', 'unfinished', 3],
    ['3 ft and', 'unfinished', 9],
    ['1 yd 4', 'unfinished', 7],
    ['√', 'syntax', 1],
    ['5√2 +', 'unfinished', 6],
  ]);
});

describe('what no more typing can mend is wrong, from a place on', () => {
  areRefused([
    ['½½', 'syntax', 2],
    ['10½½', 'syntax', 4],
    ['1/2 1/2', 'syntax', 4],
    ['1/2/3', 'syntax', 4],
    ['ten', 'syntax', 1],
    ['half an inch', 'syntax', 1],
    ['10 apples', 'syntax', 3],
    ['10 miles', 'syntax', 3],
    ['10 in long', 'syntax', 7],
    ['10 1/2 x 3', 'syntax', 7],
    ['<b>10</b>', 'syntax', 1],
    ['10<br>', 'syntax', 3],
    ['&frac12;', 'syntax', 1],
    ['{at}', 'syntax', 1],
    ['--1', 'syntax', 2],
    ['1.5.2', 'syntax', 4],
    ['1..5', 'syntax', 3],
    ['10.5/2', 'syntax', 5],
    ['1/2.5', 'syntax', 4],
    ['1/-2', 'syntax', 2],
    ['.', 'syntax', 1],
    ['/2', 'syntax', 1],
    ['"10"', 'syntax', 1],
    ['0x10', 'syntax', 2],
    ['1e', 'syntax', 2],
    ['Infinity', 'syntax', 1],
    ['NaN', 'syntax', 1],
    ['null', 'syntax', 1],
    ['10 cm 5', 'unfinished', 8],
    ['10 + 2', 'unfinished', 3],
    ['1/2 + √2', 'syntax', 4],
    ['√2/2', 'syntax', 3],
    ['√2 in', 'syntax', 3],
    ['√-2', 'syntax', 1],
    ['😀 10', 'syntax', 1],
    ['10 😀', 'syntax', 3],
  ]);
});

describe('what can be read in two ways is asked about', () => {
  areRefused([
    ['1,000', 'thousands', 1],
    ['12,000', 'thousands', 1],
    ['999,125', 'thousands', 1],
    ['1,000.5', 'thousands', 1],
    ['1,000,000', 'thousands', 1],
    ['3 ft 1,000 in', 'thousands', 6],
    ['10 / 2', 'spaced-slash', 1],
    ['10 /2', 'spaced-slash', 1],
    ['10/ 2', 'spaced-slash', 1],
    ['10 1 / 2', 'spaced-slash', 1],
    ['10 13 / 16', 'spaced-slash', 1],
    ['10 - 1/2', 'spaced-hyphen', 1],
    ['10 - 13/16', 'spaced-hyphen', 1],
    ['10 -1/2', 'spaced-hyphen', 1],
    ['10- ½', 'spaced-hyphen', 1],
  ]);
  describe('with a decimal comma', () => {
    areRefused(
      [
        ['1.000', 'thousands', 1],
        ['1.000,5', 'thousands', 1],
      ],
      { decimal: ',' },
    );
  });
});

describe('numbers that are none', () => {
  areRefused([
    ['1/0', 'zero-denominator', 1],
    ['10 1/0', 'zero-denominator', 1],
    ['  10 1/00', 'zero-denominator', 3],
    ['1/0√2', 'zero-denominator', 1],
    ['3 ft 1/0', 'zero-denominator', 6],
    ['1e401', 'exponent', 1],
    ['1e-401', 'exponent', 1],
    ['1e99999999999999999999', 'exponent', 1],
  ]);

  it('exponents are read up to 400', () => {
    expect(length('1e400').equals(10n ** 400n)).toBe(true);
    expect(
      length('1e-400')
        .times(10n ** 400n)
        .equals(1),
    ).toBe(true);
  });
});

describe('units are named once, the larger one first', () => {
  areRefused([
    ['4 in 3 ft', 'unit-order', 6],
    ['3 ft 4 ft', 'unit-order', 6],
    ['3" 4"', 'unit-order', 4],
    ['3 ft 4 cm', 'unit-order', 6],
    ['1 m 1 ft', 'unit-order', 5],
    ['1 mm 1 cm', 'unit-order', 6],
    ['1 ft 1 yd', 'unit-order', 6],
  ]);
});

describe('the place is counted in the text as it was typed', () => {
  areRefused([
    ['  10   apples', 'syntax', 5],
    ['\u200b½\u00a0½', 'syntax', 3],
    ['😀'.repeat(3), 'syntax', 1],
    ['10½ ℅', 'syntax', 4],
  ]);
});

describe('what is no text, number or fraction', () => {
  const reads = (value: unknown, name: string) => [name, value] as const;
  const cases = [
    reads(null, 'null'),
    reads(undefined, 'undefined'),
    reads(true, 'a boolean'),
    reads(Symbol('length'), 'a symbol'),
    reads(() => 10, 'a function'),
    reads({}, 'an empty object'),
    reads([], 'a list'),
    reads(['10'], 'a list with a text'),
    reads(Object.create(null), 'an object without a prototype'),
    reads({ s: 1, n: 1, d: 2 }, 'a fraction of numbers'),
    reads({ s: 1, n: 1n, d: 2n }, 'a fraction whose sign is a number'),
    reads({ s: 1n, n: 1, d: 2n }, 'a fraction whose numerator is a number'),
    reads({ s: 1n, n: 1n, d: 2 }, 'a fraction whose denominator is a number'),
    reads({ s: 1n, n: 1n }, 'a fraction without a denominator'),
    reads({ toJSON: '10' }, 'an object whose toJSON is a text'),
    reads({ toJSON: () => 10 }, 'an object that writes itself as a number'),
    reads(Object('10'), 'a boxed text'),
    reads(Object(10), 'a boxed number'),
  ];
  it.each(cases)('%s is of the wrong kind', (_, value) => {
    expect(refusal(value).values).toEqual({ text: '', reason: 'wrong-kind', at: 1 });
  });

  it.each([[Number.NaN], [Number.POSITIVE_INFINITY], [Number.NEGATIVE_INFINITY]])(
    '%s is not finite',
    (number) => {
      expect(refusal(number).values).toEqual({ text: `${number}`, reason: 'not-finite', at: 1 });
    },
  );

  it('a fraction over zero divides by zero', () => {
    expect(refusal({ s: -1n, n: 3n, d: 0n }).values).toEqual({
      text: '-3/0',
      reason: 'zero-denominator',
      at: 1,
    });
  });

  it('a date is refused by what it writes itself as', () => {
    expect(refusal(new Date(0)).values.text).toBe('1970-01-01T00:00:00.000Z');
  });
});

describe('a refusal', () => {
  it.each([
    [
      '',
      'There is no length here. Lengths look like 10 1/2, 10.5, 10½, 3 ft 4 in, 1 1/2 yd or 26.5 cm.',
    ],
    [
      '10 apples',
      '“10 apples” is not a length: it cannot be read from character 3 on. Lengths look like 10 1/2, 10.5, 10½, 3 ft 4 in, 1 1/2 yd or 26.5 cm.',
    ],
    [
      '{reason}',
      '“{reason}” is not a length: it cannot be read from character 1 on. Lengths look like 10 1/2, 10.5, 10½, 3 ft 4 in, 1 1/2 yd or 26.5 cm.',
    ],
  ])('of %j says what would be accepted', (typed, message) => {
    expect(refusal(typed).message).toBe(message);
  });

  it('says of every reason what would be accepted, and quotes what was typed', () => {
    const typed = ['1/', 'x', '1/0', '1e999', '1,000', '1 / 2', '1 - 1/2', '1 in 1 ft'];
    const others = ['', '1'.repeat(1001), Number.NaN, null];
    const messages = [...typed, ...others].map((input) => refusal(input).message);
    expect(new Set(messages).size).toBe(messages.length);
    for (const message of messages) expect(message).toMatch(/\. Lengths look like 10 1\/2/);
    for (const text of typed) expect(refusal(text).message).toContain(`“${text}”`);
  });

  it('quotes a text of up to 40 characters, and a longer one by its beginning', () => {
    expect(refusal('x'.repeat(40)).values.text).toBe('x'.repeat(40));
    expect(refusal(`10 ${'x'.repeat(500)}`).values.text).toBe(`10 ${'x'.repeat(37)}…`);
  });

  it.each([
    ['furlong', { unit: 'furlong' }],
    ['null', { unit: null }],
  ])('of the unit %s names the units there are', (unit, options) => {
    for (const input of ['10', 10, { s: 1n, n: 1n, d: 2n }]) {
      const read = () => length(input, options as unknown as ReadOptions);
      expect(read).toThrow(expect.objectContaining({ code: 'unknown-choice', field: 'unit' }));
      expect(read).toThrow(`“${unit}” is not known here. Use one of: in, ft, yd, mm, cm, m.`);
    }
  });
});

describe('reading a text of the longest kind', () => {
  const longest = 1000;
  // biome-ignore format: a line for each kind of token
  const tokens = [
    '1', '9', '0', ' ', '1 ', '1/', '/', '1/1', '1/1 ', '1-', '-', '+', '1+', '1+1/2', '1 & ', '&',
    'and', ' and ', '1 and ', '1 and 1/', '.', ',', '1.', '1,', '.1', '1,000', 'e', '1e', '1e1', '1e+',
    'a', 'in', '1in', '1in ', "1'", "'", '"', '1"', '1 ft ', '1 yd 1 ft 1 in ', 'inch', 'millimeter',
    '√', '√2', '√2+', '√2 - ', '1/2√2+', '2√', '*√', '½', '½ ', '1½', '⅟', '¹', '₂', '¹⁄₂', '1¹',
    '\u200b', '\u00a0', '\u3000', '１', '／', '😀', '\ud800', 'ﷺ', '﷽', '㎝', '″', '′', '’’', '<b>', '{text}', '\\',
  ];

  it.each(tokens)('returns or refuses %j repeated', (token) => {
    const typed = token.repeat(longest).slice(0, longest);
    for (const text of [typed, `1${typed}`.slice(0, longest), `${typed.slice(1)}x`]) {
      let outcome: unknown;
      try {
        outcome = length(text).sign();
      } catch (error) {
        if (!(error instanceof EighthsError)) throw error;
        outcome = error.code;
      }
      expect([-1, 0, 1, 'length-syntax']).toContain(outcome);
    }
  });

  it('takes a number of steps that grows with the length of the text and no faster', () => {
    const steps = (text: string): number => {
      const spy = vi.spyOn(RegExp.prototype, 'exec');
      try {
        length(text);
      } catch {
        // Refused; what counts is how long it took to see that.
      }
      const count = spy.mock.calls.length;
      spy.mockRestore();
      return count;
    };
    for (const token of tokens) {
      // Every look at the text is one of a pattern: a few for each character, and a few at the end.
      const count = steps(token.repeat(longest).slice(0, longest));
      expect(count, token).toBeGreaterThan(longest / 2);
      expect(count, token).toBeLessThan(20 * longest);
    }
  });

  it('reads 1,000 digits and refuses one more', () => {
    expect(length('7'.repeat(longest)).toString()).toBe('7'.repeat(longest));
    expect(refusal('7'.repeat(longest + 1)).values).toEqual({
      text: `${'7'.repeat(40)}…`,
      reason: 'too-long',
      at: longest + 1,
    });
  });

  it.each(tokens)('refuses %j repeated once it is longer than that', (token) => {
    expect(refusal(token.repeat(longest + 1)).values.reason).toBe('too-long');
  });
});

it('whatever is typed is a length or an EighthsError, and the place lies in the text or at its end', () => {
  const alphabet = [...'0123456789 //--..,,½¼⅞√+\'"″&eandincmft', '\u00a0', '１', '¹', '₂'];
  const typed = fc.oneof(
    fc.string({ unit: fc.constantFrom(...alphabet), maxLength: 24 }),
    fc.string({ unit: 'binary' }),
  );
  fc.assert(
    fc.property(typed, (text) => {
      try {
        expect(length(length(text).toString()).equals(length(text))).toBe(true);
      } catch (error) {
        if (!(error instanceof EighthsError)) throw error;
        expect(error.values.at).toBeGreaterThanOrEqual(1);
        expect(error.values.at).toBeLessThanOrEqual(text.length + 1);
      }
    }),
    { numRuns: 2000 },
  );
});
