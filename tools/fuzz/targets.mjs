// What is tried: each target makes an input from chance, and a call that answers it or throws.
import { anyData } from './data.mjs';
import { anyText } from './texts.mjs';

/**
 * @typedef {import('./random.mjs').Chance} Chance
 * @typedef {object} Target
 * @property {string} name
 * @property {number} share how many inputs it gets for each that `length` gets
 * @property {(by: Chance) => unknown} input
 * @property {(input: unknown) => unknown} call
 *
 * @typedef {typeof import('../../packages/core/src/index.js')} Core
 * @typedef {typeof import('../../packages/widget/src/render/index.js')} Rendering
 */

/** @param {boolean} holds @param {string} claim */
function must(holds, claim) {
  if (!holds) throw new Error(`It is not so that ${claim}.`);
}

const CURVED = { finished: 9, rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' };
const LOG_CABINS = [
  {
    ...CURVED,
    strips: { wide: 2, narrow: ['1 1/2', '1 1/4', 1, '3/4'] },
    wideSides: ['top', 'left'],
  },
  { rounds: 3, center: { width: 2, height: 3 }, log: [1, '3/4', '2 cm'], layout: 'courthouse' },
  {
    finished: '26.5 cm',
    rounds: 2,
    log: '1 1/2',
    layout: 'quarter',
    cornerstones: true,
    trim: { after: 'log', oversize: '1/8' },
    fabrics: { center: 'red', log: ['light', 'dark'], top: 'night' },
  },
];
const FABRICS = [
  {
    width: 42,
    pieces: [
      { width: '2 1/2', length: '8 1/2', count: 48, fabric: 'night' },
      { width: 5, length: 11, count: 7, turnable: true },
    ],
    layers: 4,
  },
  { width: '110 cm', method: 'plain', pieces: [{ width: '4 1/2', length: '5√2', count: 9 }] },
];

/** Enough for a plan of each kind, and so little that a million inputs end. */
const EFFORT = 20_000;

/** @param {Core} core @param {readonly unknown[]} recipes @returns {readonly Target[]} */
export function coreTargets(core, recipes) {
  const { cuttingPlan, EighthsError, formatLength, length, logCabin, planUnit, readRecipe } = core;
  const units = core.unitNames().map((name) => ({ name, spec: core.UNITS[name].example }));
  /**
   * What stands there, handed on as whatever is asked for: that it may not be that is the point.
   *
   * @template Wanted
   * @param {unknown} input
   * @param {string} key
   * @returns {Wanted}
   */
  const part = (input, key) =>
    /** @type {Wanted} */ (
      typeof input === 'object' && input !== null ? Reflect.get(input, key) : input
    );
  return [
    {
      name: 'length',
      share: 1,
      input: (by) => ({
        text: anyText(by),
        options: {
          ...(by.often(0.3) ? { unit: by.one(['in', 'ft', 'yd', 'mm', 'cm', 'm', 'ell']) } : {}),
          ...(by.often(0.3) ? { decimal: by.one(['.', ',']) } : {}),
        },
      }),
      call: (input) => {
        const read = length(part(input, 'text'), part(input, 'options'));
        must(length(String(read)).equals(read), 'a length is read again from its text');
        must(formatLength(read, { unit: 'cm' }) !== '', 'a length that was read can be written');
      },
    },
    {
      name: 'readRecipe',
      share: 1 / 20,
      input: (by) => anyData(by, recipes),
      call: (input) => {
        const read = readRecipe(input);
        must(readRecipe(structuredClone(read)) !== undefined, 'a recipe that was read is one');
      },
    },
    {
      name: 'logCabin',
      share: 1 / 20,
      input: (by) => anyData(by, LOG_CABINS),
      call: (input) =>
        logCabin(/** @type {import('../../packages/core/src/index.js').LogCabinSpec} */ (input)),
    },
    {
      name: 'cuttingPlan',
      share: 1 / 100,
      input: (by) => anyData(by, FABRICS),
      call: (input) => {
        if (typeof input !== 'object' || input === null) return cuttingPlan(part(input, ''));
        return cuttingPlan(
          /** @type {import('../../packages/core/src/index.js').CuttingSpec} */ ({
            effort: EFFORT,
            ...input,
          }),
        );
      },
    },
    {
      name: 'planUnit',
      share: 1 / 20,
      input: (by) => anyData(by, units),
      call: (input) => planUnit(part(input, 'name'), part(input, 'spec')),
    },
    {
      name: 'EighthsError',
      share: 1 / 1000,
      input: anyText,
      call: (input) => {
        const error = new EighthsError(
          'wrong-kind',
          'tag',
          { expected: `${input}` },
          'Give {expected}.',
        );
        must(error.message === `Give ${input}.`, 'a sentence holds what it speaks of');
      },
    },
  ];
}

const escaped = (/** @type {string} */ text) =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

/** Attributes that make a plan together, so that not everything stops at the first fault. */
const TAGS = {
  'eighths-fabric': { pieces: '48 of 2 1/2 by 8 1/2; 7 of 5 by 11, turned', width: '42' },
  'eighths-log-cabin': { finished: '9', rounds: '4', wide: '1 1/4', narrow: '1/2', center: '2' },
  'eighths-quilt': { size: 'Crib' },
  'eighths-unit': { unit: 'flying-geese', finished: '3 by 6', count: '8' },
};
const WORDS = [
  '',
  'true',
  'false',
  'all',
  'metric',
  'inches',
  'cm',
  'de',
  'ja',
  '4',
  '9 by 12',
  '1; 2',
];

/** @param {Rendering} rendering @param {readonly unknown[]} recipes @returns {readonly Target[]} */
export function tagTargets(rendering, recipes) {
  const { renderTag } = rendering;
  const classes = {
    'eighths-fabric': rendering.EighthsFabric,
    'eighths-log-cabin': rendering.EighthsLogCabin,
    'eighths-quilt': rendering.EighthsQuilt,
    'eighths-unit': rendering.EighthsUnit,
  };
  /** @param {keyof typeof classes} name @returns {Target} */
  const target = (name) => ({
    name,
    share: 1 / 500,
    input: (by) => {
      /** @type {Record<string, string>} */
      const attributes = by.often(0.7) ? { ...TAGS[name] } : {};
      for (let times = by.whole(0, 3); times > 0; times -= 1) {
        const attribute = by.one([...classes[name].observedAttributes, 'lang', 'theme', 'onload']);
        attributes[attribute] = by.often(0.3) ? by.one(WORDS) : anyText(by);
      }
      const written = Object.entries(attributes).map(([key, text]) => ` ${key}="${escaped(text)}"`);
      const inside =
        name === 'eighths-quilt'
          ? `<script type="application/json">${JSON.stringify(anyData(by, recipes.slice(0, 1)), (_, value) => (typeof value === 'bigint' ? `${value}` : value))}</script>`
          : '';
      return by.often(0.05) ? anyText(by) : `<${name}${written.join('')}>${inside}`;
    },
    call: async (input) => {
      const html = await renderTag(`${input}`, classes);
      const answer = html.slice(html.indexOf('\n')).replace(/<script.*<\/script>/s, '');
      must(!/<(?:img|script|svg|iframe)/i.test(answer), 'no attribute becomes markup');
    },
  });
  return [
    target('eighths-fabric'),
    target('eighths-log-cabin'),
    target('eighths-quilt'),
    target('eighths-unit'),
  ];
}
