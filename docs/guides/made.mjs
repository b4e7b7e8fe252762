// What stands in the guides where they say `<!-- made: name -->`: tables from the descriptions that
// editors get too and of what was measured, and drawings by the library itself.
import {
  common,
  elements,
  events,
  parts,
  properties,
} from '../../packages/widget/manifest/describe.mjs';
import { figuresTable, mutationTable } from './figures.mjs';
import { table } from './table.mjs';

/** The guides in the order in which they are listed. `index.md` is the page that the site begins with. */
export const order = [
  'paste',
  'events',
  'theming',
  'accessibility',
  'languages',
  'metric',
  'printing',
  'cautions',
  'maths',
  'arithmetic',
  'exact',
  'cutting-plans',
  'proof',
];

/** @typedef {typeof import('../../packages/core/src/index.js')} Core */

/** @type {(head: string, rows: Readonly<Record<string, string>>) => string} */
const described = (head, rows) =>
  table(
    [head, 'what it is'],
    Object.entries(rows).map(([name, description]) => [`\`${name}\``, description]),
  );

const attributes = () =>
  [
    ...Object.entries(elements).map(
      ([tag, { description, attributes: own }]) =>
        `### \`<${tag}>\`\n\n${description}\n\n${described('attribute', own)}`,
    ),
    `### On each of them\n\n${described('attribute', common)}`,
  ].join('\n\n');

/** A drawing in a line of its own: Markdown leaves a figure alone. */
const figure = (/** @type {string} */ svg) => `<figure class="drawing">${svg}</figure>`;

/** @type {(core: Core) => ReturnType<Core['logCabin']>} */
const block = ({ logCabin }) =>
  logCabin({
    rounds: 4,
    center: 2,
    wide: '1 1/4',
    narrow: '1/2',
    strips: { wide: 2, narrow: '1 1/2' },
  });

/** @type {Readonly<Record<string, (core: Core) => string>>} */
export const made = {
  attributes,
  properties: () => described('property', properties),
  parts: () => described('part', parts),
  events: () =>
    described(
      'event',
      Object.fromEntries(
        Object.entries(events).map(([name, { description }]) => [name, description]),
      ),
    ),
  figures: () => figuresTable(),
  mutation: () => mutationTable(),
  'log-cabin': (core) => figure(core.toSvg(core.drawLogCabin(block(core)))),
  trim: (core) => figure(core.toSvg(core.drawTrim(block(core), { round: 2 }))),
  'eight-at-a-time': (core) => {
    const plan = core.halfSquareTriangles({ finished: 3, method: 'eight-at-a-time' });
    return figure(core.toSvg(core.drawUnitCut(plan, { cut: 1 })));
  },
  'flying-geese': (core) => {
    const plan = core.flyingGeese({ finished: { width: 3, height: '1 1/2' } });
    return figure(core.toSvg(core.drawUnit(plan)));
  },
  'cutting-plan': (core) => {
    const plan = core.cuttingPlan({
      width: 40,
      pieces: [
        { width: '2 1/2', length: '8 1/2', count: 24 },
        { width: '2 1/2', length: '4 1/2', count: 24 },
        { width: '4 1/2', length: '4 1/2', count: 12 },
      ],
      method: 'plain',
    });
    return figure(core.toSvg(core.drawCuttingPlan(plan)));
  },
};

const MADE = /^<!-- made: ([\w-]+) -->$/gm;

/** The names of what a guide has made. */
export const madeIn = (/** @type {string} */ guide) =>
  [...guide.matchAll(MADE)].map(([, name = '']) => name);

/** @type {(guide: string, core: Core) => string} */
export const withMade = (guide, core) =>
  guide.replace(MADE, (_, /** @type {string} */ name) => {
    const make = made[name];
    if (make === undefined) throw new Error(`Nothing is made under the name “${name}”.`);
    return make(core);
  });
