import { length, UNITS, unitNames } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { measuresFor } from '../../packages/widget/src/base/measures.js';
import { voiceOf } from '../../packages/widget/src/base/voice.js';
import { enUnit, enUnitWords } from '../../packages/widget/src/messages/enUnit.js';
import { messages } from '../../packages/widget/src/messages/messages.js';
import { otherUnit, withUnitDefaults } from '../../packages/widget/src/unit/defaults.js';
import { fieldsOf, unitFields } from '../../packages/widget/src/unit/fields.js';
import { unitModel } from '../../packages/widget/src/unit/model.js';
import { titleOf } from '../../packages/widget/src/unit/words.js';

const inches = measuresFor('inches', 'en');
const metric = measuresFor('metric', 'en');
const modelOf = (given: Readonly<Record<string, string>>) =>
  unitModel(withUnitDefaults(given, 'inches'), inches);

describe.each(unitNames())('%s', (name) => {
  const definition = UNITS[name];

  it('has an attribute for each of its inputs, and for the fabric of each part', () => {
    for (const input of definition.inputs) {
      for (const field of fieldsOf(input)) expect(unitFields).toContain(field);
    }
    for (const part of definition.fabrics) {
      expect(unitFields).toContain(`fabrics-${part.replaceAll(' ', '-')}`);
    }
  });

  it.each(definition.methods.map((method) => method.name))(
    'starts with its example, made by %s, in inches and in centimeters',
    (method) => {
      const { spec, plan, faults } = modelOf({ unit: name, method });
      expect(faults.size).toBe(0);
      expect(plan?.method).toBe(method);
      expect(JSON.stringify(plan)).toBe(
        JSON.stringify(definition.plan({ ...definition.example, count: 1, method })),
      );
      expect(spec.unit).toBe(name);
      const inMetric = unitModel(withUnitDefaults({ unit: name, method }, 'metric'), metric);
      expect(inMetric.faults.size).toBe(0);
      for (const { width, height, shape } of inMetric.plan?.cuts ?? []) {
        expect(height.isOnGrid('1 mm')).toBe(true);
        if (shape !== 'strip') expect(width.isOnGrid('1 mm')).toBe(true);
      }
    },
  );

  it('is reached from every other unit without an error', () => {
    for (const other of unitNames()) {
      const before = withUnitDefaults({ unit: other }, 'inches');
      const after = otherUnit(
        name,
        before,
        'inches',
        (each) => unitModel(each, inches).plan !== undefined,
      );
      expect(unitModel(after, inches).faults.size, `from ${other}`).toBe(0);
      expect(after.unit).toBe(name);
    }
  });

  it('compares its methods where it has several', () => {
    const whole = definition.methods.filter(({ part }) => !part).length;
    const { comparison } = modelOf({ unit: name, count: '7' });
    const compared = (comparison?.methods.length ?? 0) + (comparison?.refused.length ?? 0);
    expect(compared).toBe(whole > 1 ? whole : 0);
  });
});

describe('a size', () => {
  it.each([
    [{ unit: 'flying-geese', 'finished-width': '3' }, '3', '1 1/2'],
    [{ unit: 'flying-geese', finished: '3' }, '3', '1 1/2'],
    [{ unit: 'flying-geese', finished: '5 by 2' }, '5', '2'],
    [{ unit: 'flying-geese', 'finished-width': '5', 'finished-height': '2' }, '5', '2'],
    [{ unit: 'half-square-triangles', 'finished-width': '3' }, '3', '3'],
    [{ unit: 'snowball', finished: '6' }, '6', '6'],
  ])('given as %o is %s by %s', (given, width, height) => {
    const { finished } = modelOf(given).plan ?? {};
    expect([`${finished?.width}`, `${finished?.height}`]).toEqual([width, height]);
  });

  it('may be that of the center, and is compared in what comes of it', () => {
    const { plan, comparison } = modelOf({ unit: 'square-in-square', center: '3' });
    expect(plan?.finished.width.toString()).toBe('3√2');
    expect(comparison?.methods.map(({ method }) => method)).toContain('cut-triangles');
  });
});

type Given = Readonly<Record<string, string>>;

describe('an error', () => {
  it.each<readonly [Given, string, string]>([
    [{ unit: 'flying-geese', 'finished-height': '2' }, 'finished-width', 'missing-field'],
    [{ unit: 'half-square-triangles', finished: '' }, 'finished', 'missing-field'],
    [{ unit: 'half-square-triangles', finished: 'three' }, 'finished', 'length-syntax'],
    [{ unit: 'flying-geese', 'finished-width': '-3' }, 'finished-width', 'not-positive'],
    [
      { unit: 'flying-geese', finished: '3 by 3', method: 'stitch-and-flip' },
      'finished-width',
      'goose-ratio',
    ],
    [{ unit: 'diamond', angle: 'steep' }, 'angle', 'angle-out-of-range'],
    [{ unit: 'diamond', angle: '10' }, 'angle', 'angle-out-of-range'],
    [{ unit: 'strip-set', strips: '1; x; 2' }, 'strips', 'length-syntax'],
    [{ unit: 'rail-fence', rails: '9' }, 'rails', 'not-a-count'],
    [{ unit: 'hexagon', count: '0' }, 'count', 'not-a-count'],
    [{ unit: 'hexagon', seam: '5' }, 'seam', 'seam-too-wide'],
    [{ unit: 'hexagon', method: 'two-at-a-time' }, 'method', 'unknown-choice'],
    [{ unit: 'hen' }, 'unit', 'unknown-choice'],
  ])('of %o stands at its input', (given, field, code) => {
    const { faults, plan } = modelOf(given);
    expect(plan).toBeUndefined();
    expect([...faults].map(([at, error]) => [at, error.code])).toEqual([[field, code]]);
  });
});

describe('words', () => {
  const words = { ...messages.words, ...enUnitWords };
  const voice = voiceOf({ ...messages, ...enUnit, words }, inches);

  it.each(unitNames())('name %s, its methods and its inputs', (name) => {
    const { inputs, methods } = UNITS[name];
    expect(titleOf(name, voice, 'unit')).toBe(enUnitWords[`unit ${name}`]);
    for (const each of methods.map((method) => method.name)) {
      expect(titleOf(each, voice)).toMatch(/^[A-Z0-9][^_{}]+$/);
    }
    for (const input of inputs) expect(titleOf(input.name, voice, 'input')).not.toBe('');
  });

  it('are a name’s own where a unit is new and nobody has named it', () => {
    expect(titleOf('card-trick', voice, 'unit')).toBe('Card trick');
  });

  it('read an example of the pages', () => {
    const { plan } = modelOf({ unit: 'flying-geese', 'finished-width': '3', count: '48' });
    expect(plan?.trimTo.width.equals(length('3 1/2'))).toBe(true);
    expect(plan?.sets).toBe(12);
  });
});
