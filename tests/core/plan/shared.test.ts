import { EighthsError, length, SIDES, type SizeInput } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../packages/core/src/plan/atOnce.js';
import { escaped } from '../../../packages/core/src/plan/escaped.js';
import { notice, warningsFrom } from '../../../packages/core/src/plan/notice.js';
import {
  opposite,
  outward,
  perSide,
  runsAcross,
  turnSide,
} from '../../../packages/core/src/plan/side.js';
import { sidesOf, sizeField } from '../../../packages/core/src/plan/size.js';

describe('the sides of a block', () => {
  it('are named clockwise from the top', () => {
    expect(SIDES).toEqual(['top', 'right', 'bottom', 'left']);
  });

  it.each([
    ['top', 0, 'top'],
    ['top', 1, 'right'],
    ['left', 1, 'top'],
    ['top', -1, 'left'],
    ['right', 2, 'left'],
    ['bottom', 7, 'right'],
    ['bottom', -5, 'right'],
  ] as const)('%s turned by %i quarters comes to lie at the %s', (side, turns, turned) => {
    expect(turnSide(side, turns)).toBe(turned);
  });

  it.each([
    ['top', 'bottom', true],
    ['right', 'left', false],
    ['bottom', 'top', true],
    ['left', 'right', false],
  ] as const)('%s lies opposite %s; that it runs across is %s', (side, other, across) => {
    expect(opposite(side)).toBe(other);
    expect(runsAcross(side)).toBe(across);
  });

  it('lie left and top where x and y begin', () => {
    expect(SIDES.map(outward)).toEqual([-1, 1, 1, -1]);
  });

  it('have each its own value', () => {
    expect(perSide((side) => side.length)).toEqual({ top: 3, right: 5, bottom: 6, left: 4 });
  });
});

describe('a size', () => {
  const cases: readonly (readonly [string, SizeInput, string])[] = [
    ['one length', '9', '9 by 9'],
    ['a number', 9.5, '9 1/2 by 9 1/2'],
    ['a length', length('9 1/2'), '9 1/2 by 9 1/2'],
    ['a fraction', { s: 1n, n: 19n, d: 2n }, '9 1/2 by 9 1/2'],
    ['equal sides', { width: '9', height: '22.86 cm' }, '9 by 9'],
    ['width and height', { width: '6', height: '9 1/2' }, '6 by 9 1/2'],
  ];
  it.each(cases)('given as %s is read', (_, input, text) => {
    const { width, height } = sizeField(input, 'center');
    expect(`${width} by ${height}`).toBe(text);
  });

  it('names the side that is wrong', () => {
    const wrong: readonly (readonly [SizeInput, string, string])[] = [
      [{ width: 'six', height: 9 }, 'center.width', 'length-syntax'],
      [{ width: 6, height: 0 }, 'center.height', 'not-positive'],
      [0, 'center', 'not-positive'],
      [{ width: 6 } as SizeInput, 'center', 'length-syntax'],
      [null as unknown as SizeInput, 'center', 'length-syntax'],
    ];
    for (const [input, field, code] of wrong) {
      expect(() => sizeField(input, 'center')).toThrow(EighthsError);
      expect(() => sizeField(input, 'center')).toThrow(expect.objectContaining({ field, code }));
    }
  });

  it('may be zero where that is said', () => {
    expect(sizeField(0, 'center', 'zero or more').height.sign()).toBe(0);
    expect(() => sizeField('-1/8', 'center', 'zero or more')).toThrow('at least 0, not -1/8');
  });
});

describe('the sides of a size', () => {
  it('are one of a square, and two of an oblong, width first', () => {
    const told = (input: SizeInput): string => sidesOf(sizeField(input, 'size')).join(', ');
    expect([told('9'), told({ width: '6', height: '9 1/2' })]).toEqual(['9', '6, 9 1/2']);
  });
});

describe('a text for HTML or XML', () => {
  it('has its five signs written out, and nothing else', () => {
    expect(escaped(`<a title="Bob's" & 9″>`)).toBe(
      '&lt;a title=&quot;Bob&#39;s&quot; &amp; 9″&gt;',
    );
    expect(escaped('Sew log 1, 2 by 2 1/2.')).toBe('Sew log 1, 2 by 2 1/2.');
  });
});

describe('a plan in the making', () => {
  it('comes at once to what it comes to with pauses', () => {
    let steps = 0;
    function* making(): Generator<undefined, string, undefined> {
      for (; steps < 3; steps += 1) yield;
      return 'made';
    }
    expect([atOnce(making()), steps]).toEqual(['made', 3]);
  });
});

describe('a notice', () => {
  it('has its sentence filled from its values', () => {
    const sentences = { 'thin-log': 'A log that finishes {width} is hard to sew.', other: '' };
    const values = { width: length('3/8') };
    expect(notice(sentences, 'thin-log', values)).toEqual({
      code: 'thin-log',
      values,
      text: 'A log that finishes 3/8 is hard to sew.',
    });
  });

  it('that warns names its field, and is written in the units that are asked for', () => {
    const sentences = {
      'thin-log': 'A log that finishes {width} is hard to sew.',
      plain: 'Mind it.',
    };
    const values = { width: length('1/2') };
    expect(warningsFrom(sentences)('thin-log', 'log', values)).toEqual({
      code: 'thin-log',
      field: 'log',
      values,
      text: 'A log that finishes 1/2 is hard to sew.',
    });
    const metric = warningsFrom(sentences, () => '1.27 cm');
    expect(metric('thin-log', 'log', values).text).toBe(
      'A log that finishes 1.27 cm is hard to sew.',
    );
    expect(metric('plain', 'log').values).toEqual({});
  });
});
