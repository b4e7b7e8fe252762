import { EighthsError, fillSentence, length, squareRoot } from '@eighths/core';
import { describe, expect, it } from 'vitest';

function caught(act: () => unknown): unknown {
  try {
    act();
  } catch (error) {
    return error;
  }
  throw new Error('Nothing was thrown.');
}

describe('an EighthsError', () => {
  it('says what it is about by code, field, values and an English sentence', () => {
    const error = caught(() => length('10 apples'));
    expect(error).toBeInstanceOf(EighthsError);
    expect(error).toBeInstanceOf(Error);
    expect(error).toMatchObject({
      name: 'EighthsError',
      code: 'length-syntax',
      field: 'length',
      values: { text: '10 apples', at: 3, reason: 'syntax' },
    });
  });

  it('carries its sentence with open places, which its values fill', () => {
    for (const act of [() => length('10 apples'), () => length(1).dividedBy('√2')]) {
      const { template, values, message } = caught(act) as EighthsError;
      expect(template).toMatch(/\{\w+\}/);
      expect(fillSentence(template, values)).toBe(message);
      expect(message).not.toMatch(/[{}]/);
    }
  });

  it('writes its lengths in JSON so that they read back', () => {
    const divisor = squareRoot(2).plus('1/2');
    const { values } = caught(() => length(1).dividedBy(divisor)) as EighthsError;
    const { divisor: written } = JSON.parse(JSON.stringify(values)) as { divisor: string };
    expect(length(written).equals(divisor)).toBe(true);
  });
});

describe('a sentence', () => {
  const values = { count: 4, width: length('2 1/2'), fabric: 'sky {count}' };
  const cases: readonly (readonly [string, string])[] = [
    ['Cut {count} of {width}.', 'Cut 4 of 2 1/2.'],
    ['{count}{count}', '44'],
    ['From {fabric}.', 'From sky {count}.'],
    ['Cut {unknown}.', 'Cut {unknown}.'],
    ['Nothing to fill: {}.', 'Nothing to fill: {}.'],
    ['', ''],
  ];
  it.each(cases)('%j becomes %j', (template, sentence) => {
    expect(fillSentence(template, values)).toBe(sentence);
  });

  it('is written in other units or words by whoever asks for it', () => {
    const write = (value: unknown, name: string): string => `<${name}: ${value}>`;
    expect(fillSentence('{count} of {width}', values, write)).toBe('<count: 4> of <width: 2 1/2>');
  });
});
