import { type LogCabinSpec, logCabin } from '@eighths/core';
import { describe, expect, test } from 'vitest';
import { measuresFor, type Units } from '../../packages/widget/src/base/measures.js';
import {
  anyGiven,
  choose,
  given,
  SettingsReader,
} from '../../packages/widget/src/base/settingsReader.js';
import { type GivenSettings, withDefaults } from '../../packages/widget/src/log-cabin/defaults.js';
import { logCabinModel } from '../../packages/widget/src/log-cabin/model.js';
import { readSpec } from '../../packages/widget/src/log-cabin/spec.js';

const modelOf = (settings: GivenSettings, units: Units = 'inches') =>
  logCabinModel(withDefaults(settings, units), measuresFor(units, 'en'));

const json = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('defaults', () => {
  test.each(['inches', 'metric'] as const)('make a block without a warning, in %s', (units) => {
    for (const settings of [{}, { kind: 'plain' }, { rounds: '2' }, { layout: 'courthouse' }]) {
      const { plan, faults } = modelOf(settings, units);
      expect([...faults], JSON.stringify(settings)).toEqual([]);
      expect(plan?.warnings, JSON.stringify(settings)).toEqual([]);
    }
  });

  test('give way to a center: the finished size is then worked out', () => {
    expect(modelOf({ center: '2', log: '1' }).plan?.finished.width.toString()).toBe('10');
    expect(withDefaults({ center: '2' }, 'inches').finished).toBe('');
    expect(withDefaults({ center: '2', finished: '9' }, 'inches').finished).toBe('9');
  });

  test('name no strips for widths that a page gives', () => {
    expect(withDefaults({}, 'inches')['strips-wide']).toBe('2');
    expect(withDefaults({ wide: '1' }, 'inches')['strips-wide']).toBe('');
    expect(withDefaults({ log: '1' }, 'inches')).toMatchObject({ kind: 'plain', 'strips-log': '' });
  });

  test('keep what is given, an empty text too', () => {
    expect(withDefaults({ rounds: '', finished: '7' }, 'inches')).toMatchObject({
      rounds: '',
      finished: '7',
    });
  });
});

describe('the spec of settings', () => {
  const specOf = (settings: GivenSettings) => {
    const reader = new SettingsReader(
      withDefaults(settings, 'inches'),
      measuresFor('inches', 'en'),
    );
    return { spec: json(readSpec(reader)), faults: [...reader.faults.keys()] };
  };

  test.each<[string, GivenSettings, unknown]>([
    [
      'curved',
      { wide: '1 1/4', narrow: '1/2', finished: '9', 'strips-wide': '2', 'strips-narrow': '1 1/2' },
      {
        finished: '9',
        rounds: 4,
        wide: '1 1/4',
        narrow: '1/2',
        strips: { wide: '2', narrow: '1 1/2' },
      },
    ],
    [
      'plain, a width a round',
      { log: '1; 3/4', rounds: '2', center: '2 by 3' },
      {
        center: { width: '2', height: '3' },
        rounds: 2,
        log: ['1', '3/4'],
      },
    ],
    [
      'with everything else',
      {
        log: '1',
        layout: 'quarter',
        direction: 'counterclockwise',
        start: 'top',
        seam: '3/8',
        extra: '1/2',
        grid: '1/16',
        cornerstones: '',
        'trim-after': 'log',
        'trim-oversize': '1/2',
        'fabrics-center': 'red',
        'fabrics-top': 'one, two',
      },
      {
        finished: '9',
        rounds: 4,
        log: '1',
        layout: 'quarter',
        direction: 'counterclockwise',
        start: 'top',
        seam: '3/8',
        extra: '1/2',
        grid: '1/16',
        trim: { after: 'log', oversize: '1/2' },
        fabrics: { center: 'red', top: ['one', 'two'] },
      },
    ],
    [
      'with its wide sides',
      { wide: '1', narrow: '1/2', 'wide-sides': 'top left', first: 'narrow' },
      {
        finished: '9',
        rounds: 4,
        wide: '1',
        narrow: '1/2',
        wideSides: ['top', 'left'],
        first: 'narrow',
      },
    ],
  ])('is plain data: %s', (_, settings, spec) => {
    expect(specOf(settings)).toEqual({ spec, faults: [] });
  });

  test('leaves out what belongs to the other kind', () => {
    expect(specOf({ kind: 'plain', log: '1', wide: 'nonsense' }).faults).toEqual([]);
    expect(specOf({ kind: 'curved', log: 'nonsense', wide: '1', narrow: '1/2' }).faults).toEqual(
      [],
    );
  });

  test('keeps every fault, each at its own setting', () => {
    const wrong = {
      finished: 'x',
      rounds: '0',
      wide: '1/0',
      narrow: '1/2',
      seam: 'y',
      start: 'up',
    };
    expect(specOf(wrong).faults.sort()).toEqual(['finished', 'rounds', 'seam', 'start', 'wide']);
  });
});

describe('the model of settings', () => {
  test('is the library’s own plan', () => {
    const spec: LogCabinSpec = {
      finished: 9,
      rounds: 4,
      wide: '1 1/4',
      narrow: '1/2',
      strips: { wide: 2, narrow: '1 1/2' },
    };
    const { plan, more, faults } = modelOf({ blocks: '16' });
    expect(json(plan)).toEqual(json(logCabin(spec)));
    expect(more).toEqual({ blocks: 16 });
    expect(faults.size).toBe(0);
  });

  test.each<[GivenSettings, string, string]>([
    [{ finished: '10', center: '2', wide: '1 1/4', narrow: '1/2' }, 'finished', 'sizes-disagree'],
    [{ wide: '1 1/4', narrow: '1/2', 'strips-wide': '1 1/2' }, 'strips-wide', 'strip-too-narrow'],
    [{ log: '1', 'strips-log': '2; 1; 2; 2' }, 'strips-log', 'strip-too-narrow'],
    [{ log: '1; 1', rounds: '3' }, 'log', 'list-length'],
    [{ log: '5' }, 'finished', 'center-not-positive'],
    [{ center: '0 by 2', log: '1' }, 'center', 'not-positive'],
    [{ wide: '1', narrow: '1/2', 'wide-sides': 'top, bottom' }, 'wide-sides', 'sides-not-adjacent'],
    [{ kind: 'round' }, 'kind', 'unknown-choice'],
    [{ rounds: '51' }, 'rounds', 'not-a-count'],
    [{ rounds: '1.0' }, 'rounds', 'not-a-count'],
    [{ blocks: '10001' }, 'blocks', 'not-a-count'],
    [{ seam: '-1/4' }, 'seam', 'not-positive'],
    [{ finished: '1e400' }, 'finished', 'out-of-range'],
  ])('of %j has its fault at %s: %s', (settings, field, code) => {
    const { plan, faults } = modelOf(settings);
    expect(plan).toBe(undefined);
    expect([...faults].map(([where, fault]) => [where, fault.code])).toEqual([[field, code]]);
  });
});

describe('a reader of settings', () => {
  const reader = (text: string) => new SettingsReader({ field: text }, measuresFor('inches', 'en'));

  test.each([
    ['', undefined],
    ['   ', undefined],
    [' 7 ', 7],
    ['007', 7],
    ['10', 10],
  ])('counts %j as %j', (text, count) => {
    const one = reader(text);
    expect(one.count('field', 1, 10)).toBe(count);
    expect(one.faults.size).toBe(0);
  });

  test.each(['0', '11', '-1', '1.5', '1e1', 'ten', '99999999999'])('counts no %j', (text) => {
    const one = reader(text);
    expect(one.count('field', 1, 10)).toBe(undefined);
    expect(one.faults.get('field')?.message).toBe('A whole number from 1 to 10 is needed here.');
  });

  test.each([
    ['', undefined],
    ['true', true],
    ['cornerstones', true],
    ['false', undefined],
  ])('takes the flag %j as %j', (text, flag) => {
    expect(reader(text).flag('field')).toBe(flag);
  });

  test('repeats no more than forty characters of a long text', () => {
    const one = reader('y'.repeat(100_000));
    one.choice('field', ['a', 'b']);
    one.count('field', 1, 2);
    for (const fault of one.faults.values()) {
      expect(JSON.stringify(fault.values).length).toBeLessThan(120);
    }
    expect(() => choose('z'.repeat(50), 'field', ['a'])).toThrow(`“${'z'.repeat(40)}…”`);
  });

  test('lets through what is no error of the library', () => {
    const broken = () => {
      throw new RangeError('a fault of our own');
    };
    expect(() => reader('1').read('field', broken)).toThrow('a fault of our own');
  });

  test('leaves out what is not given', () => {
    expect(given({ one: 1, two: undefined })).toEqual({ one: 1 });
    expect(anyGiven({ one: undefined })).toBe(undefined);
    expect(anyGiven({ one: 0 })).toEqual({ one: 0 });
  });
});
