import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  backingSentences,
  bindingSentences,
  borderSentences,
  commonInputs,
  cuttingSentences,
  drawingSentences,
  fitSentences,
  joinSentences,
  kitSentences,
  layoutSentences,
  logCabinSentences,
  onHandSentences,
  packSentences,
  patternSentences,
  precutSentences,
  seamSentences,
  sheetSentences,
  tableSentences,
  UNITS,
  type UnitDefinition,
  unitSentences,
} from '@eighths/core';
import { describe, expect, test } from 'vitest';
import type { Catalog, Room, TextGroup } from '../../packages/widget/src/messages/catalog.js';
import { de } from '../../packages/widget/src/messages/de.js';
import { en } from '../../packages/widget/src/messages/en.js';
import { enFabric } from '../../packages/widget/src/messages/enFabric.js';
import { enLogCabin, enLogCabinWords } from '../../packages/widget/src/messages/enLogCabin.js';
import { enQuilt } from '../../packages/widget/src/messages/enQuilt.js';
import { enUnit, enUnitWords } from '../../packages/widget/src/messages/enUnit.js';
import { es } from '../../packages/widget/src/messages/es.js';
import { fr } from '../../packages/widget/src/messages/fr.js';
import { ja } from '../../packages/widget/src/messages/ja.js';

type Table = Readonly<Record<string, string>>;

const { words: commonWords, sentences: _, errors: __, ...common } = en;

/** The English of every group that a catalog has. */
const english: {
  readonly texts: Readonly<Record<TextGroup, Table>>;
  readonly sentences: Readonly<Record<Room, Table>>;
} = {
  texts: { common, logCabin: enLogCabin, fabric: enFabric, quilt: enQuilt, unit: enUnit },
  sentences: {
    logCabin: logCabinSentences,
    drawing: drawingSentences,
    table: tableSentences,
    seam: seamSentences,
    fit: fitSentences,
    sheet: sheetSentences,
    unit: unitSentences,
    pattern: patternSentences,
    layout: layoutSentences,
    borders: borderSentences,
    binding: bindingSentences,
    backing: backingSentences,
    kits: kitSentences,
    cutting: cuttingSentences,
    pack: packSentences,
    join: joinSentences,
    precut: precutSentences,
    onHand: onHandSentences,
  },
};

const englishWords: Table = { ...commonWords, ...enUnitWords, ...enLogCabinWords };

const definitions: readonly UnitDefinition[] = Object.values(UNITS);

/** What the units call their parts, methods and inputs; numbered fabrics share one word. */
function unitNamesOf({ inputs, methods, fabrics, example, plan }: UnitDefinition): string[] {
  const plans = methods.map(({ name }) => plan({ ...example, method: name }));
  return [
    ...methods.map(({ name }) => name),
    ...fabrics.map((fabric) => fabric.replace(/ \d+$/, '')),
    ...plans.flatMap(({ cuts }) => cuts.map(({ label }) => label)),
    ...plans.flatMap(({ trim }) => trim.map(({ role }) => `mark ${role}`)),
    ...[...inputs, ...commonInputs].flatMap((input) =>
      input.kind === 'choice' ? input.choices.map((each) => `${input.name} ${each}`) : [],
    ),
  ];
}

const nameless = ['finished', 'count', 'seam', 'grid', 'center', 'corner'];
const inputNames = definitions
  .flatMap(({ inputs, finished }) => [...inputs.map(({ name }) => name), finished])
  .filter((name) => !nameless.includes(name) && name !== 'size')
  .map((name) => `input ${name}`);

const dataWords = new Set([...definitions.flatMap(unitNamesOf), ...inputNames]);

const codesFile = new URL('../../packages/core/src/errors/codes.ts', import.meta.url);
const codesText = readFileSync(codesFile, 'utf8');
const codes = [...codesText.matchAll(/^ {2}'([a-z-]+)':/gm)].map(([, code = '']) => code);
const reasons = [...codesText.matchAll(/^ {2}\| '([a-z-]+)'/gm)].map(
  ([, reason = '']) => `length-syntax ${reason}`,
);

/** Another language may say a place twice, or once where English says it twice. */
const placesOf = (text: string): readonly string[] => [
  ...new Set([...text.matchAll(/\{(\w+)\}/g)].map(([, place = '']) => place).sort()),
];

const sourcesOf = (name: string): string => {
  const folder = fileURLToPath(new URL(`../../packages/${name}/src`, import.meta.url));
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts') && !path.includes('messages'))
    .map((path) => readFileSync(join(folder, path), 'utf8'))
    .join('\n');
};

const sources = sourcesOf('core') + sourcesOf('widget');

/** What an error of a code carries, as its type says. */
function valuesOf(code: string): readonly string[] {
  const written = new RegExp(`^ {2}'${code}': ([^;{]*;|\\{[^}]*\\})`, 'm');
  const [, type = ''] = written.exec(codesText) ?? [];
  return [...type.matchAll(/readonly (\w+):/g)].map(([, name = '']) => name);
}

const catalogs: readonly (readonly [string, Catalog])[] = [
  ['German', de],
  ['French', fr],
  ['Spanish', es],
  ['Japanese', ja],
];

const missing = (wanted: Iterable<string>, table: Table = {}): readonly string[] =>
  [...wanted].filter((key) => !Object.hasOwn(table, key));

type Texts = Pick<Catalog, 'texts' | 'sentences'>;

/** Every text and sentence, by where it stands. */
const entriesOf = ({ texts, sentences }: Texts) =>
  Object.entries({ texts, sentences }).flatMap(([kind, tables]) =>
    Object.entries<Table>(tables).flatMap(([group, table]) =>
      Object.entries(table).map(([key, text]) => [`${kind} ${group} ${key}`, text] as const),
    ),
  );

describe.each(catalogs)('%s', (_, catalog) => {
  test('has every text of every element', () => {
    for (const [group, table] of Object.entries(english.texts)) {
      const own: Readonly<Record<string, Table>> = catalog.texts;
      expect(missing(Object.keys(table), own[group]), group).toEqual([]);
    }
  });

  test('has every sentence of the core’s plans and drawings', () => {
    for (const [room, table] of Object.entries(english.sentences)) {
      const own: Readonly<Record<string, Table>> = catalog.sentences;
      expect(missing(Object.keys(table), own[room]), room).toEqual([]);
    }
  });

  test('has every word that data is called by', () => {
    expect(missing([...Object.keys(englishWords), ...dataWords], catalog.words)).toEqual([]);
  });

  test('has a sentence for every code of an error, and for every reason', () => {
    expect(codes.length).toBeGreaterThan(30);
    expect(reasons.length).toBeGreaterThan(10);
    expect(missing([...codes, ...reasons], catalog.errors)).toEqual([]);
  });

  test('speaks in an error of what it carries, and of nothing else', () => {
    const known = [...codes, ...reasons];
    for (const [key, text] of Object.entries(catalog.errors)) {
      const carried = known.includes(key) ? valuesOf(key.replace(/ .*/, '')) : placesOf(key);
      expect(
        placesOf(text).filter((place) => !carried.includes(place)),
        key,
      ).toEqual([]);
      if (!known.includes(key)) expect(sources, key).toContain(key);
    }
  });

  test('has the places that English has, no more and no fewer', () => {
    const own = new Map(entriesOf(catalog));
    for (const [key, text] of entriesOf(english)) {
      const said = own.get(key);
      if (said !== undefined) expect(placesOf(said), key).toEqual(placesOf(text));
    }
  });

  test('says nothing that English does not say any more', () => {
    const known = new Set(entriesOf(english).map(([key]) => key));
    const own = entriesOf(catalog).map(([key]) => key);
    expect(own.filter((key) => !known.has(key))).toEqual([]);
  });

  test('leaves nothing empty, and begins and ends no text with a space', () => {
    const all = [
      ...entriesOf(catalog),
      ...Object.entries(catalog.words),
      ...Object.entries(catalog.errors),
    ];
    const odd = all.filter(([key, text]) => text.trim() !== text && !key.endsWith(' comma'));
    expect([...odd, ...all.filter(([, text]) => text === '')]).toEqual([]);
  });
});
