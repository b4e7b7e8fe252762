import { EighthsError, length } from '@eighths/core';
import { describe, expect, test } from 'vitest';
import { measuresFor } from '../../packages/widget/src/base/measures.js';
import { rewritten } from '../../packages/widget/src/base/rewritten.js';
import { voiceOf } from '../../packages/widget/src/base/voice.js';
import { messages } from '../../packages/widget/src/messages/messages.js';

const inches = measuresFor('inches', 'en');
const metric = measuresFor('metric', 'en');

describe('inches', () => {
  test.each([
    ['10 1/2', '10½', '10 and a half inches', '10 1/2'],
    ['1/8', '⅛', '1 eighth of an inch', '1/8'],
    ['3/16', '3⁄16', '3 sixteenths of an inch', '3/16'],
    ['1', '1', '1 inch', '1'],
  ])('%s is shown as %s, spoken as "%s", typed as %s', (text, figures, spoken, typed) => {
    const value = inches.read(text);
    expect(inches.figures(value)).toBe(figures);
    expect(inches.bare(value)).toBe(figures);
    expect(inches.spoken(value)).toBe(spoken);
    expect(inches.typed(value)).toBe(typed);
  });

  test('a bare number is inches, and other units may be named', () => {
    expect(inches.read('9').equals(9)).toBe(true);
    expect(inches.read('2.54 cm').equals(1)).toBe(true);
  });
});

describe('centimeters', () => {
  test('a bare number is centimeters, and inches may be named', () => {
    expect(metric.read('2.54').equals(1)).toBe(true);
    expect(metric.read('1 in').equals(1)).toBe(true);
  });

  test('are shown with their unit, without it in a table and in an input', () => {
    const value = length('22.86 cm');
    expect(metric.figures(value)).toBe('22.86\u00a0cm');
    expect(metric.bare(value)).toBe('22.86');
    expect(metric.typed(value)).toBe('22.86');
    expect(metric.spoken(value)).toBe('22.86 centimeters');
  });

  test('what is not exact is marked where it is shown, not where it is typed', () => {
    const third = length('1/3').times(length('1 cm'));
    expect(metric.figures(third)).toMatch(/^≈ 0\.33/);
    expect(metric.bare(third)).toMatch(/^≈ 0\.33\d*$/);
    expect(metric.typed(third)).toMatch(/^0\.33\d*$/);
  });
});

describe('steps', () => {
  test.each([
    ['inches', '', '1/8'],
    ['inches', '1/16', '1/16'],
    ['inches', '1/4 in', '1/4'],
    ['inches', '-1/8', '1/8'],
    ['inches', '0', '1/8'],
    ['inches', 'fine', '1/8'],
    ['inches', '√2', '1/8'],
    ['metric', '', '1 mm'],
    ['metric', '0.5', '5 mm'],
    // Measured, but not stepped by.
    ['metric', '0.5 mm', '1 mm'],
  ] as const)('in %s with the grid %j are %s', (units, grid, step) => {
    expect(measuresFor(units, 'en', grid).step).toEqual(length(step));
  });
});

describe('a length that nobody sews', () => {
  test.each(['10000.125', '1e400', '-1e300', '300 yd'])('is refused: %s', (text) => {
    expect(() => inches.read(text)).toThrow(EighthsError);
    expect(() => inches.read(text)).toThrow('A length of at most 10000 is needed here.');
  });

  test.each(['10000', '-10000', '277 yd'])('begins beyond %s', (text) => {
    expect(inches.read(text)).toEqual(length(text));
  });
});

describe('typed anew in other units', () => {
  test.each([
    ['9', '22.86'],
    ['1 1/4', '3.175'],
    ['1 1/4; 1; 3/4', '3.175; 2.54; 1.905'],
    ['1, 2', '2.54, 5.08'],
    ['6 by 9', '15.24 by 22.86'],
    ['6 × 9', '15.24 × 22.86'],
    ['', ''],
    ['  ', '  '],
    ['ten', 'ten'],
    ['1; ten; 2', '2.54; ten; 5.08'],
  ])('%j in inches is %j in centimeters', (before, after) => {
    expect(rewritten(before, inches, metric)).toBe(after);
  });

  test.each(['9', '1 1/4', '1/8', '10 13/16', '1; 3/4', '6 by 9 1/2'])('%j comes back', (text) => {
    expect(rewritten(rewritten(text, inches, metric), metric, inches)).toBe(text);
  });
});

describe('a voice', () => {
  const voice = voiceOf(messages, inches);
  const { unfinished, finished } = { finished: length(9), unfinished: length('9 1/2') };

  test('says a message in figures and speaks it in words', () => {
    expect(voice.say('headline', { finished, unfinished })).toBe('9 finished, trim to 9½');
    expect(voice.speak('headline', { finished, unfinished })).toBe(
      '9 inches finished, trim to 9 and a half inches',
    );
    expect(voice.template('headline')).toBe('{finished} finished, trim to {unfinished}');
  });

  test('says a size as one length where it is square', () => {
    const size = (width: number, height: number) => ({
      finished: { width: length(width), height: length(height) },
      unfinished,
    });
    expect(voice.say('headline', size(9, 9))).toBe('9 finished, trim to 9½');
    expect(voice.say('headline', size(6, 9))).toBe('6 by 9 finished, trim to 9½');
  });

  test('leaves a name alone that is no word of its own', () => {
    expect(voice.word('right')).toBe('right');
    expect(voice.word('night sky')).toBe('night sky');
    expect(voice.word('constructor')).toBe('constructor');
  });

  test('writes an error’s lengths in its own units', () => {
    const fault = new EighthsError(
      'strip-too-narrow',
      'strips.wide',
      { log: length('1 1/4'), strip: length('1 1/2'), needed: length('1 3/4') },
      'A log that finishes {log} needs {needed}, not {strip}.',
    );
    expect(voice.error(fault)).toBe('A log that finishes 1¼ needs 1¾, not 1½.');
    expect(voiceOf(messages, metric).error(fault)).toBe(
      'A log that finishes 3.175\u00a0cm needs 4.445\u00a0cm, not 3.81\u00a0cm.',
    );
  });

  test('says a notice by its code, and by its own text where it knows no code', () => {
    const notice = { code: 'block-title', values: { finished, unfinished }, text: 'as it came' };
    expect(voice.notice(notice)).toBe('The block as sewn: 9 finished, trim to 9½');
    expect(voice.notice({ ...notice, code: 'never-heard-of' })).toBe('as it came');
  });
});
