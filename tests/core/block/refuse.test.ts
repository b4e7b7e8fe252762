import { EighthsError, type LogCabinSpec, logCabin } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from './support.js';

/** Specs come from pages and files: here anything may stand in any field. */
const tryLogCabin = (spec: unknown) => logCabin(spec as LogCabinSpec);

const plain = { rounds: 2, center: 2, log: 1 };
const curved = { rounds: 2, center: 2, wide: '1 1/4', narrow: '1/2' };

type Case = readonly [
  what: string,
  spec: unknown,
  code: EighthsError['code'],
  field: string,
  message: string,
];

const layouts = 'spiral, courthouse, quarter';
const sides = 'top, right, bottom, left';

const designs: readonly Case[] = [
  ['no rounds', { center: 2, log: 1 }, 'missing-field', 'rounds', 'The field “rounds” is needed.'],
  [
    '0 rounds',
    { ...plain, rounds: 0 },
    'not-a-count',
    'rounds',
    'A whole number from 1 to 50 is needed here, not 0.',
  ],
  [
    '51 rounds',
    { ...plain, rounds: 51 },
    'not-a-count',
    'rounds',
    'A whole number from 1 to 50 is needed here, not 51.',
  ],
  [
    'one and a half rounds',
    { ...plain, rounds: 1.5 },
    'not-a-count',
    'rounds',
    'A whole number from 1 to 50 is needed here, not 1.5.',
  ],
  [
    'rounds that are no number',
    { ...plain, rounds: Number.NaN },
    'not-a-count',
    'rounds',
    'A whole number from 1 to 50 is needed here, not NaN.',
  ],
  [
    'rounds in quotes',
    { ...plain, rounds: '4' },
    'not-a-count',
    'rounds',
    'A whole number from 1 to 50 is needed here, not 4.',
  ],
  [
    'rounds that cannot be written',
    { ...plain, rounds: { toString: 1 } },
    'not-a-count',
    'rounds',
    'A whole number from 1 to 50 is needed here, not an object.',
  ],
  [
    'neither log nor wide and narrow',
    { rounds: 2, center: 2 },
    'missing-field',
    'log',
    'The field “log” is needed.',
  ],
  [
    'wide without narrow',
    { rounds: 2, center: 2, wide: 1 },
    'missing-field',
    'narrow',
    'The field “narrow” is needed.',
  ],
  [
    'narrow without wide',
    { rounds: 2, center: 2, narrow: 1 },
    'missing-field',
    'wide',
    'The field “wide” is needed.',
  ],
  [
    'log and wide',
    { ...plain, wide: 1 },
    'conflicting-fields',
    'wide',
    '“log” makes all sides alike, so “wide” has no place beside it. Leave one of them out.',
  ],
  [
    'log and narrow',
    { ...plain, narrow: 1 },
    'conflicting-fields',
    'narrow',
    '“log” makes all sides alike, so “narrow” has no place beside it. Leave one of them out.',
  ],
  [
    'log and wide sides',
    { ...plain, wideSides: ['right', 'bottom'] },
    'conflicting-fields',
    'wideSides',
    '“log” makes all sides alike, so “wideSides” has no place beside it. Leave one of them out.',
  ],
  [
    'log and which pair comes first',
    { ...plain, first: 'wide' },
    'conflicting-fields',
    'first',
    '“log” makes all sides alike, so “first” has no place beside it. Leave one of them out.',
  ],
  [
    'neither center nor finished',
    { rounds: 2, log: 1 },
    'missing-field',
    'finished',
    'The field “finished” is needed.',
  ],
  [
    'a misspelled field',
    { ...plain, seams: '1/4' },
    'unknown-field',
    'seams',
    'There is no field “seams” here. The fields are: rounds, layout, log, wide, narrow, wideSides, first, direction, start, center, finished, seam, strips, trim, extra, fabrics, grid, cornerstones.',
  ],
  [
    'an unknown layout',
    { ...plain, layout: 'pineapple' },
    'unknown-choice',
    'layout',
    `“pineapple” is not known here. Use one of: ${layouts}.`,
  ],
  [
    'a quarter block with wide and narrow logs',
    { ...curved, layout: 'quarter' },
    'unknown-choice',
    'layout',
    '“quarter” is not known here. Use one of: spiral, courthouse.',
  ],
  [
    'an unknown direction',
    { ...plain, direction: 'left' },
    'unknown-choice',
    'direction',
    '“left” is not known here. Use one of: clockwise, counterclockwise.',
  ],
  [
    'an unknown start',
    { ...plain, start: 'middle' },
    'unknown-choice',
    'start',
    `“middle” is not known here. Use one of: ${sides}.`,
  ],
  [
    'an unknown first pair',
    { ...curved, first: 'broad' },
    'unknown-choice',
    'first',
    '“broad” is not known here. Use one of: wide, narrow.',
  ],
  [
    'wide sides that lie opposite',
    { ...curved, wideSides: ['top', 'bottom'] },
    'sides-not-adjacent',
    'wideSides',
    'Wide sides lie next to each other, such as right and bottom; top and bottom do not.',
  ],
  [
    'one wide side twice',
    { ...curved, wideSides: ['top', 'top'] },
    'sides-not-adjacent',
    'wideSides',
    'Wide sides lie next to each other, such as right and bottom; top and top do not.',
  ],
  [
    'three wide sides',
    { ...curved, wideSides: ['top', 'left', 'bottom'] },
    'list-length',
    'wideSides',
    'Two sides are needed here, not 3.',
  ],
  [
    'a wide side that is no side',
    { ...curved, wideSides: ['top', 'up'] },
    'unknown-choice',
    'wideSides[1]',
    `“up” is not known here. Use one of: ${sides}.`,
  ],
  [
    'wide sides in one text',
    { ...curved, wideSides: 'right' },
    'wrong-kind',
    'wideSides',
    'A list of two sides is needed here.',
  ],
  [
    'a log of nothing',
    { ...plain, log: 0 },
    'not-positive',
    'log',
    'This length must be more than 0, not 0.',
  ],
  [
    'a log below nothing in one round',
    { ...plain, log: [1, '-1/2'] },
    'not-positive',
    'log[1]',
    'This length must be more than 0, not -1/2.',
  ],
  [
    'a log missing from a list',
    { ...plain, log: Object.assign(new Array(2), { 1: 1 }) },
    'length-syntax',
    'log[0]',
    'A length is a text, a number or a fraction. Lengths look like 10 1/2, 10.5, 10½, 3 ft 4 in, 1 1/2 yd or 26.5 cm.',
  ],
  [
    'too few logs in a list',
    { ...curved, narrow: ['1/2'] },
    'list-length',
    'narrow',
    'This list has 1 entries where 2 are needed: one for each round, or one for all.',
  ],
  [
    'too many fabrics in a list',
    { ...plain, fabrics: { log: ['fern', 'moss', 'slate'] } },
    'list-length',
    'fabrics.log',
    'This list has 3 entries where 2 are needed: one for each round, or one for all.',
  ],
  [
    'a fabric without a name',
    { ...plain, fabrics: { right: ' ' } },
    'wrong-kind',
    'fabrics.right',
    'A fabric needs a name here.',
  ],
  [
    'a fabric that is a number',
    { ...plain, fabrics: { log: ['fern', 7] } },
    'wrong-kind',
    'fabrics.log[1]',
    'A fabric needs a name here.',
  ],
  [
    'a fabric for a part that is not there',
    { ...plain, fabrics: { border: 'fern' } },
    'unknown-field',
    'fabrics.border',
    'There is no field “border” here. The fields are: center, cornerstone, log, wide, narrow, top, right, bottom, left.',
  ],
  [
    'cornerstones in words',
    { ...plain, cornerstones: 'yes' },
    'wrong-kind',
    'cornerstones',
    'True or false is needed here, without quotes.',
  ],
  [
    'a grid with a root',
    { ...plain, grid: '√2' },
    'length-with-root',
    'grid',
    'A length without a root is needed here, such as 3 1/2, not √2.',
  ],
  [
    'a seam below nothing',
    { ...plain, seam: '-1/4' },
    'not-positive',
    'seam',
    'This length must be at least 0, not -1/4.',
  ],
  [
    'an extra below nothing',
    { ...plain, extra: -1 },
    'not-positive',
    'extra',
    'This length must be at least 0, not -1.',
  ],
  [
    'a grid of nothing',
    { ...plain, grid: 0 },
    'not-positive',
    'grid',
    'This length must be more than 0, not 0.',
  ],
];

const sizes: readonly Case[] = [
  [
    'logs that leave nothing for the center',
    { rounds: 2, finished: 4, log: 1 },
    'center-not-positive',
    'finished',
    'The logs add up to 4, which leaves 0 for the center of a block that finishes 4. Use narrower logs, fewer rounds or a larger block.',
  ],
  [
    'logs that leave less than nothing',
    { rounds: 2, finished: { width: 9, height: 3 }, log: 1 },
    'center-not-positive',
    'finished',
    'The logs add up to 4, which leaves -1 for the center of a block that finishes 3. Use narrower logs, fewer rounds or a larger block.',
  ],
  [
    'a finished size that is not the sum of center and logs',
    { ...plain, finished: 7 },
    'sizes-disagree',
    'finished',
    'The center and the logs add up to 6, but the finished size is given as 7. Change one of them, or leave the center out and it is worked out.',
  ],
  [
    'a finished height that is not the sum',
    { ...plain, finished: { width: 6, height: '6 1/8' } },
    'sizes-disagree',
    'finished',
    'The center and the logs add up to 6, but the finished size is given as 6 1/8. Change one of them, or leave the center out and it is worked out.',
  ],
  [
    'a center of nothing',
    { ...plain, center: { width: 2, height: 0 } },
    'not-positive',
    'center.height',
    'This length must be more than 0, not 0.',
  ],
];

const strips: readonly Case[] = [
  [
    'a strip too narrow for its log',
    { ...curved, strips: { wide: '1 5/8', narrow: '1 1/2' } },
    'strip-too-narrow',
    'strips.wide',
    'A log that finishes 1 1/4 needs a strip of at least 1 3/4, not 1 5/8.',
  ],
  [
    'a strip too narrow by a hair, in one round',
    { ...plain, strips: { log: ['1 1/2', '1.4999999999'] } },
    'strip-too-narrow',
    'strips.log[1]',
    'A log that finishes 1 needs a strip of at least 1 1/2, not 1 4999999999/10000000000.',
  ],
  [
    'a strip for a log that is not there',
    { ...plain, strips: { wide: 2 } },
    'unknown-field',
    'strips.wide',
    'There is no field “wide” here. The fields are: log.',
  ],
  [
    'one width of strip for wide and narrow logs',
    { ...curved, strips: { log: 2 } },
    'unknown-field',
    'strips.log',
    'There is no field “log” here. The fields are: wide, narrow.',
  ],
  [
    'too few strips in a list',
    { ...plain, strips: { log: [] } },
    'list-length',
    'strips.log',
    'This list has 0 entries where 2 are needed: one for each round, or one for all.',
  ],
  [
    'strips and an oversize',
    { ...plain, strips: { log: 2 }, trim: { oversize: '1/4' } },
    'conflicting-fields',
    'trim.oversize',
    'The strips’ widths already say how much is trimmed away. Leave “strips” or “oversize” out.',
  ],
  [
    'an oversize that is never trimmed',
    { ...plain, trim: { after: 'never', oversize: '1/4' } },
    'conflicting-fields',
    'trim.oversize',
    'A block that is never trimmed has no oversize. Trim it after each round or log, or leave “oversize” out.',
  ],
  [
    'strips that are not exact and never trimmed',
    { ...plain, strips: { log: 2 }, trim: { after: 'never' } },
    'strip-not-exact',
    'strips.log',
    'A block that is never trimmed needs strips cut exactly 1 1/2, not 2. Trim it after each round, or cut exact.',
  ],
  [
    'an unknown time to trim',
    { ...plain, trim: { after: 'sewing' } },
    'unknown-choice',
    'trim.after',
    '“sewing” is not known here. Use one of: round, log, never.',
  ],
  [
    'a misspelled trim',
    { ...plain, trim: { over: '1/4' } },
    'unknown-field',
    'trim.over',
    'There is no field “over” here. The fields are: after, oversize.',
  ],
  [
    'an oversize below nothing',
    { ...plain, trim: { oversize: '-1/4' } },
    'not-positive',
    'trim.oversize',
    'This length must be at least 0, not -1/4.',
  ],
];

const show = ([what, spec, code, field, message]: Case) => ({ what, spec, code, field, message });

describe.each([
  ['a design', designs],
  ['sizes', sizes],
  ['strips', strips],
])('%s with a fault is refused, and the sentence says what is accepted', (_, cases) => {
  it.each(cases.map(show))('$what', ({ spec, code, field, message }) => {
    expect(refusal(() => tryLogCabin(spec))).toMatchObject({ code, field, message });
  });
});

describe('null is no default', () => {
  const fields: readonly (readonly [field: string, spec: object])[] = [
    ...['rounds', 'center', 'log', 'layout', 'direction', 'start', 'seam', 'strips'],
    ...['trim', 'extra', 'fabrics', 'grid', 'cornerstones'],
  ].map((field) => [field, { ...plain, [field]: null }]);
  const inCurved = ['wide', 'narrow', 'wideSides', 'first'].map(
    (field) => [field, { ...curved, [field]: null }] as const,
  );
  const nested: readonly (readonly [field: string, spec: object])[] = [
    ['finished', { rounds: 2, log: 1, finished: null }],
    ['finished', { ...plain, finished: null }],
    ['center.height', { ...plain, center: { width: 1, height: null } }],
    ['strips.log', { ...plain, strips: { log: null } }],
    ['log[1]', { ...plain, log: [1, null] }],
    ['trim.after', { ...plain, trim: { after: null } }],
    ['trim.oversize', { ...plain, trim: { oversize: null } }],
    ['fabrics.center', { ...plain, fabrics: { center: null } }],
    ['fabrics.log', { ...plain, fabrics: { log: null } }],
    ['fabrics.top', { ...plain, fabrics: { top: null } }],
  ];
  it.each([...fields, ...inCurved, ...nested])('in %s', (field, spec) => {
    expect(refusal(() => tryLogCabin(spec)).field).toBe(field);
  });
});

describe('a field that is there but undefined', () => {
  const fields = ['layout', 'direction', 'start', 'finished', 'seam', 'strips', 'trim', 'extra'];
  it.each([...fields, 'fabrics', 'grid', 'cornerstones', 'wide'])('is left out: %s', (field) => {
    const plan = tryLogCabin({ ...plain, [field]: undefined });
    expect(JSON.stringify(plan)).toBe(JSON.stringify(tryLogCabin(plain)));
  });
});

describe('a spec of the wrong kind', () => {
  it.each([[null], [undefined], [4], ['rounds'], [true], [[plain]], [() => plain]])(
    '%o is refused',
    (spec) => {
      expect(refusal(() => tryLogCabin(spec))).toMatchObject({ code: 'wrong-kind', field: '' });
    },
  );

  it.each(['strips', 'trim', 'fabrics'])('a list is refused for %s', (field) => {
    expect(refusal(() => tryLogCabin({ ...plain, [field]: [] }))).toMatchObject({
      code: 'wrong-kind',
      field,
    });
  });
});

describe('whatever stands in a spec', () => {
  const specFields = [
    ...['rounds', 'layout', 'log', 'wide', 'narrow', 'wideSides', 'first', 'direction', 'start'],
    ...['center', 'finished', 'seam', 'strips', 'trim', 'extra', 'fabrics', 'grid', 'cornerstones'],
  ];

  /** A plan, or an error that says what it is about; anything else is thrown on. */
  function settle(spec: unknown): void {
    try {
      expect(tryLogCabin(spec).rounds.length).toBeGreaterThan(0);
    } catch (error) {
      if (!(error instanceof EighthsError)) throw error;
      expect(error.message).not.toBe('');
      const own = typeof spec === 'object' && spec !== null ? Object.keys(spec) : [];
      const known = [...specFields, ...own].some((name) => `${error.field}.`.startsWith(name));
      expect(error.code === 'wrong-kind' || known).toBe(true);
    }
  }

  /** JSON values, values that JSON cannot hold, and what is nearly right. */
  const values = fc.oneof(
    fc.jsonValue(),
    fc.anything({
      withBigInt: true,
      withNullPrototype: true,
      withSparseArray: true,
      withDate: true,
    }),
    fc.constantFrom<unknown>(1, '1/2', '√2', 'never', 'right', ['1', 2], [1, 2, 3], true, '1e399'),
    fc.constantFrom<unknown>({ toString: 1 }, { toJSON: 1 }, [{ valueOf: null }], Symbol('log')),
    fc.array(fc.constantFrom<unknown>('top', 'right', 1, '1/2', null, {}), { maxLength: 3 }),
  );
  const parts = fc.dictionary(
    fc.constantFrom(
      'width',
      'height',
      'after',
      'oversize',
      'log',
      'wide',
      'top',
      'center',
      's',
      'n',
    ),
    values,
  );

  it.each(specFields)('in %s makes a plan or an EighthsError, and nothing else', (field) => {
    fc.assert(
      fc.property(fc.constantFrom(plain, curved), fc.oneof(values, parts), (spec, value) => {
        settle({ ...spec, [field]: value });
      }),
      { numRuns: 300 },
    );
  });

  it('in several fields at once makes a plan or an EighthsError, and nothing else', () => {
    const anySpec = fc.dictionary(fc.constantFrom(...specFields), fc.oneof(values, parts));
    fc.assert(fc.property(fc.oneof(anySpec, values), settle), { numRuns: 2000 });
  });
});
