import { fitArc, logCabin, logCabinCurve } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measuresFor, type Units } from '../../packages/widget/src/base/measures.js';
import { voiceOf } from '../../packages/widget/src/base/voice.js';
import { type GivenSettings, withDefaults } from '../../packages/widget/src/log-cabin/defaults.js';
import { textsOfSpec } from '../../packages/widget/src/log-cabin/fill.js';
import { logCabinModel } from '../../packages/widget/src/log-cabin/model.js';
import { arcModel } from '../../packages/widget/src/log-cabin/panels/arc.js';
import {
  compareModel,
  keptAsOther,
  settingsOfOther,
  usualOther,
} from '../../packages/widget/src/log-cabin/panels/compareModel.js';
import {
  type FinderTexts,
  finderModel,
  leastTrim,
  usualFinder,
} from '../../packages/widget/src/log-cabin/panels/finderModel.js';
import { panelInputs } from '../../packages/widget/src/log-cabin/panels/inputs.js';
import { readLimits, readRatio } from '../../packages/widget/src/log-cabin/panels/limits.js';
import { Memory } from '../../packages/widget/src/log-cabin/panels/memory.js';
import { wantedPanels } from '../../packages/widget/src/log-cabin/panels/panelList.js';
import { paintedTop } from '../../packages/widget/src/log-cabin/panels/quiltTop.js';
import { seamModel, usualSeam } from '../../packages/widget/src/log-cabin/panels/seamModel.js';
import {
  sheetsModel,
  usualSheets,
} from '../../packages/widget/src/log-cabin/panels/sheetsModel.js';
import { PanelState } from '../../packages/widget/src/log-cabin/panels/state.js';
import { stripsModel } from '../../packages/widget/src/log-cabin/panels/strips.js';
import { tableModel, usualTable } from '../../packages/widget/src/log-cabin/panels/tableModel.js';
import {
  settingsFor,
  topModel,
  usualTop,
} from '../../packages/widget/src/log-cabin/panels/topModel.js';
import { workshop } from '../../packages/widget/src/log-cabin/panels/workshop.js';
import { sheetFile } from '../../packages/widget/src/log-cabin/printing/sheetDocument.js';
import { messages } from '../../packages/widget/src/messages/messages.js';

const inches = measuresFor('inches', 'en');
const voice = voiceOf(workshop.messages(messages), inches);
const json = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

const settingsOf = (given: GivenSettings = {}, units: Units = 'inches') =>
  withDefaults(given, units);

/** The nine-inch block that is the element’s own: wide 1 1/4, narrow 1/2, strips 2 and 1 1/2. */
const spec = {
  finished: 9,
  rounds: 4,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
} as const;
const block = logCabin(spec);
const plain = logCabin({ finished: 9, rounds: 4, log: '7/8' });

const finderTexts = (texts: Partial<FinderTexts> = {}): FinderTexts => ({
  ...usualFinder(settingsOf(), { finished: '9', leastTrim: '' }, 'inches', () => ''),
  ...texts,
});

describe('limits are read', () => {
  test.each([
    ['8', '"8"'],
    ['8 to 10 1/2', '{"least":"8","most":"10 1/2"}'],
    ['from 8 to 10', '{"least":"8","most":"10"}'],
    ['up to 10', '{"most":"10"}'],
    ['8 on', '{"least":"8"}'],
    ['from 1/2', '{"least":"1/2"}'],
    ['8 bis 10 1/2', '{"least":"8","most":"10 1/2"}'],
    ['bis 10', '{"most":"10"}'],
    ['ab 8', '{"least":"8"}'],
    ['de 8 à 10', '{"least":"8","most":"10"}'],
    ['jusqu’à 10', '{"most":"10"}'],
    ['à partir de 8', '{"least":"8"}'],
    ['8 a 10-1/2', '{"least":"8","most":"10 1/2"}'],
    ['desde 8 hasta 10', '{"least":"8","most":"10"}'],
    ['8から10まで', '{"least":"8","most":"10"}'],
    ['8〜10', '{"least":"8","most":"10"}'],
    ['10以下', '{"most":"10"}'],
    ['8以上', '{"least":"8"}'],
    ['8 – 10', '{"least":"8","most":"10"}'],
    ['10-1/2', '"10 1/2"'],
  ])('%s', (text, limits) => {
    expect(JSON.stringify(readLimits(text, inches.read))).toBe(limits);
  });

  test('and a word is refused as a length is', () => {
    expect(() => readLimits('8 to ten', inches.read)).toThrow('“ten” is not a length');
  });

  test.each([
    ['5 : 2', '5/2'],
    ['2,5', '5/2'],
    ['5 zu 2', '5/2'],
    ['2,5 : 1', '5/2'],
    ['5/2', '5/2'],
    ['5 to 2', '5/2'],
    ['2.5', '5/2'],
  ])('a ratio too: %s', (text, ratio) => {
    expect(readRatio(text).equals(ratio)).toBe(true);
  });

  test('but none over nothing', () => {
    expect(() => readRatio('5 : 0')).toThrow('above 0');
  });
});

describe('the finder', () => {
  test('finds the block above among those of its own size, with what it trims', () => {
    const trim = leastTrim(block);
    expect(json(trim)).toBe('1/4');
    const { findings } = finderModel(
      finderTexts({
        'find-wish-ratio': '5/2',
        'find-strips-wide': '2',
        'find-strips-narrow': '1 1/2',
      }),
      inches,
      {},
    );
    const [best] = findings?.fits ?? [];
    expect(json(best)).toMatchObject({ center: '2', wide: '1 1/4', narrow: '1/2' });
  });

  test('lists sizes where none is asked for', () => {
    const texts = finderTexts({
      'find-finished': '',
      'find-kind': 'plain',
      'find-log': '1',
      'find-center': 'up to 2',
      'find-rounds': '3',
    });
    const { sizes = [] } = finderModel(texts, inches, {});
    expect(sizes.map(({ finished }) => `${finished}`)).toEqual(['6 1/2', '7', '7 1/2', '8']);
  });

  test.each([
    ['find-wide', '0', 'find-wide'],
    ['find-strips-wide', '1/2', 'find-strips-wide'],
    ['find-finished', '10 to 8', 'find-finished'],
    ['find-rounds', '99', 'find-rounds'],
    ['find-wish-ratio', 'five', 'find-wish-ratio'],
    ['find-least-trim', '-1', 'find-least-trim'],
  ] as const)('says at its input what is wrong with %s %s', (field, text, at) => {
    const { faults, findings } = finderModel(finderTexts({ [field]: text }), inches, {});
    expect([...faults.keys()]).toEqual([at]);
    expect(findings).toBe(undefined);
  });

  test('says what is closest, and what to relax, where nothing fits', () => {
    const texts = finderTexts({ 'find-center': '2', 'find-wide': '1', 'find-narrow': '7/8' });
    const { findings } = finderModel(texts, inches, {});
    expect(findings?.fits).toEqual([]);
    expect(findings?.closest.length).toBeGreaterThan(0);
    expect(findings?.relax.length).toBeGreaterThan(0);
  });

  test('fills the inputs with what makes the very block that it showed', () => {
    const kinds = fc.constantFrom('plain', 'curved', 'any');
    const sizes = fc.integer({ min: 40, max: 120 });
    const trims = fc.constantFrom('', '1/8', '1/4');
    fc.assert(
      fc.property(
        kinds,
        sizes,
        fc.integer({ min: 1, max: 6 }),
        trims,
        (kind, eighths, rounds, trim) => {
          const finished = inches.typed(`${eighths}/8`);
          const texts = finderTexts({
            'find-kind': kind,
            'find-finished': finished,
            'find-rounds': String(rounds),
            'find-least-trim': trim,
          });
          for (const fit of finderModel(texts, inches, {}).findings?.fits ?? []) {
            const filled = textsOfSpec(fit.spec, fit.finished, inches);
            const { plan, faults } = logCabinModel(settingsOf(filled), inches);
            expect([...faults]).toEqual([]);
            expect(`${plan?.center.finished.width}`).toBe(`${fit.center}`);
            expect(`${plan?.finished.width}`).toBe(finished);
            expect(json(plan?.pieces)).toEqual(json(logCabin(fit.spec).pieces));
          }
        },
      ),
      { numRuns: 20 },
    );
  });
});

describe('the arc', () => {
  const texts = {
    'arc-finished': '9',
    'arc-rounds': '4',
    'arc-center': '2',
    'arc-strips-wide': '2',
    'arc-strips-narrow': '1 1/2',
    'arc-least-trim': '',
  };

  test('has the widths of the library, and they fill the inputs as lists', () => {
    const { arc, finished } = arcModel(texts, inches, {});
    const strips = { wide: 2, narrow: '1 1/2' };
    expect(json(arc)).toEqual(json(fitArc({ finished: 9, rounds: 4, center: 2, strips })));
    if (arc === undefined || finished === undefined) throw new Error('There is no arc.');
    const filled = textsOfSpec(arc.spec, finished, inches);
    expect(filled.wide?.split('; ')).toHaveLength(4);
    const { plan } = logCabinModel(settingsOf(filled), inches);
    const own = logCabinCurve(block).leastGreatest?.greatest ?? 0;
    const bent = plan === undefined ? 1 : (logCabinCurve(plan).leastGreatest?.greatest ?? 1);
    expect(bent).toBeLessThan(own / 10);
  });

  test.each([
    ['arc-strips-wide', ''],
    ['arc-strips-narrow', '1/4'],
    ['arc-rounds', '13'],
    ['arc-center', 'x'],
    ['arc-finished', '90'],
  ] as const)('says at its input what is wrong with %s %s', (field, text) => {
    expect([...arcModel({ ...texts, [field]: text }, inches, {}).faults.keys()]).toEqual([field]);
  });
});

describe('the other block', () => {
  test('is the same with the other pair first, until somebody types', () => {
    const settings = settingsOf();
    const { both } = compareModel(settings, usualOther(settings), inches);
    // 2 × wide × narrow a round: 2 × 5/8 × 4 = 5 more square inches of wide.
    expect(
      both?.map(({ shares }) => `${shares.find(({ fabric }) => fabric === 'wide')?.area}`),
    ).toEqual(['52 1/2', '57 1/2']);
  });

  test('of a plain block is laid out the other way', () => {
    expect(usualOther(settingsOf({ log: '1' }))['other-layout']).toBe('courthouse');
    expect(usualOther(settingsOf({ log: '1', layout: 'courthouse' }))['other-layout']).toBe(
      'spiral',
    );
  });

  test('can be the block above, and change places with it', () => {
    const settings = settingsOf();
    const kept = keptAsOther(settings);
    expect(compareModel(settings, kept, inches).both?.map(({ plan }) => json(plan))).toEqual(
      Array(2).fill(json(logCabinModel(settings, inches).plan)),
    );
    expect({ ...settings, ...settingsOfOther(kept) }).toEqual({
      ...settings,
      first: 'wide',
      layout: 'spiral',
    });
  });

  test('says at its own inputs what is wrong', () => {
    const settings = settingsOf();
    const texts = { ...usualOther(settings), 'other-wide': 'x' };
    const { both, faults } = compareModel(settings, texts, inches);
    expect(both).toBe(undefined);
    expect([...faults.keys()]).toEqual(['other-wide']);
  });
});

describe('a quilt top', () => {
  test('has circles for curved blocks, and sunshine and shadow for plain ones', () => {
    expect(settingsFor(block)).toContain('circles');
    expect(settingsFor(block)).not.toContain('sunshine-and-shadow');
    expect(settingsFor(plain)).toContain('sunshine-and-shadow');
    expect(settingsFor(plain)).not.toContain('circles');
  });

  test('counts its blocks and adds up their sizes', () => {
    const { top } = topModel({ ...usualTop, 'top-across': '6', 'top-down': '8' }, block, inches);
    expect([top?.blocks, `${top?.finished.width}`, `${top?.finished.height}`]).toEqual([
      48,
      '54',
      '72',
    ]);
  });

  test.each([
    ['3', '4', 'top-across'],
    ['4', '21', 'top-down'],
  ])('of %s by %s circles is refused at its input', (across, down, at) => {
    const texts = { 'top-setting': 'circles', 'top-across': across, 'top-down': down };
    const { top, faults } = topModel(texts, block, inches);
    expect(top).toBe(undefined);
    expect([...faults.keys()]).toEqual([at]);
  });

  test('is a handful of paths, however many blocks it has, with every log in them', () => {
    const painted = (count: string) => {
      const { top } = topModel(
        { ...usualTop, 'top-across': count, 'top-down': count },
        block,
        inches,
      );
      if (top === undefined) throw new Error('There is no top.');
      return paintedTop(top.drawing, voice).marks;
    };
    const closed = (marks: ReturnType<typeof painted>) =>
      marks
        .flatMap((mark) => (mark.kind === 'path' && mark.role === 'fabric' ? [mark.d] : []))
        .join('')
        .match(/z/gi)?.length;
    expect(painted('20')).toHaveLength(painted('2').length);
    expect(painted('2').length).toBeLessThan(16);
    expect([closed(painted('2')), closed(painted('4'))]).toEqual([4 * 17, 16 * 17]);
  });
});

describe('at the table', () => {
  test('every step stands in its round, in order', () => {
    const { rounds } = tableModel(usualTable, block, { hand: 'right', blocks: 1 }, inches);
    expect(rounds.map(({ round }) => round)).toEqual([0, 1, 2, 3, 4]);
    for (const { steps } of rounds.slice(1)) {
      expect(steps.map(({ code }) => code).at(-1)).toBe('check-size');
    }
  });

  test('a ruler on hand that is too short is warned of, and layers are counted', () => {
    const texts = { ...usualTable, 'table-ruler': '9 1/2', 'table-layers': '4' };
    const { tools, cuts } = tableModel(texts, block, { hand: 'left', blocks: 16 }, inches);
    expect(tools?.warnings.map(({ code }) => code)).toEqual(['ruler-too-short']);
    expect(cuts.every(({ count, cuts: made }) => made === count / 4)).toBe(true);
    expect(cuts).toHaveLength(block.pieces.length);
  });

  test('what cannot be read is said at its input', () => {
    const texts = { ...usualTable, 'table-mat-side': 'x', 'table-layers': '13' };
    const { faults } = tableModel(texts, block, { hand: 'right', blocks: 1 }, inches);
    expect([...faults.keys()].sort()).toEqual(['table-layers', 'table-mat-side']);
  });
});

describe('my seam', () => {
  const usual = usualSeam(inches, '9');

  test('three strips of 1 1/2 would measure 3 1/2; nothing is said of a seam not measured', () => {
    const { expected, test: tested, rows } = seamModel(usual, block, inches);
    expect([`${expected}`, tested, rows]).toEqual(['3 1/2', undefined, []]);
  });

  test('a deep seam makes the block short by 4ne, 2ne or nothing', () => {
    const { rows, drift } = seamModel({ ...usual, 'seam-measured': '3 3/8' }, block, inches);
    expect(rows.map(({ by, large }) => [`${by}`, large])).toEqual([
      ['1/2', false],
      ['1/4', false],
      ['0', false],
    ]);
    expect(drift?.covered).toBe(true);
  });

  test('a scant one makes it large', () => {
    const { rows } = seamModel({ ...usual, 'seam-measured': '3 5/8' }, block, inches);
    expect(rows[0]).toMatchObject({ large: true });
    expect(rows[0]?.by.sign()).toBe(1);
  });

  test('blocks that came out unlike have two ways out', () => {
    const { rescue } = seamModel({ ...usual, 'rescue-measured': '9 1/2; 9 1/4' }, block, inches);
    expect(json(rescue)).toMatchObject({ trim: { trimTo: '9 1/4' }, cope: { trimTo: '9 1/2' } });
  });

  test.each([
    ['seam-measured', '5'],
    ['seam-strips', '1'],
    ['rescue-measured', '1/4'],
    ['rescue-across', '0'],
  ] as const)('%s %s is refused at its input', (field, text) => {
    const texts = { ...usual, 'rescue-measured': '9', [field]: text };
    expect([...seamModel(texts, block, inches).faults.keys()]).toEqual([field]);
  });
});

describe('strips on hand', () => {
  const texts = { 'have-0': '', 'have-1': '', 'have-2': '', 'have-3': '', 'have-length': '40' };

  test('make as many blocks as those that run out first', () => {
    const { answer } = stripsModel(
      { ...texts, 'have-0': '20', 'have-1': '20' },
      spec,
      block.strips,
      inches,
    );
    expect(answer?.blocks).toBe(Math.min(...(answer?.shares.map(({ blocks }) => blocks) ?? [])));
    expect(answer?.shares.map(({ fabric }) => fabric)).toEqual(['wide', 'narrow']);
  });

  test('shorter than a log are refused at the length', () => {
    const { faults } = stripsModel(
      { ...texts, 'have-0': '20', 'have-length': '3' },
      spec,
      block.strips,
      inches,
    );
    expect([...faults.keys()]).toEqual(['have-length']);
  });
});

describe('sheets', () => {
  test('are every round’s, one round’s or the foundation’s', () => {
    const pagesOf = (texts: object) =>
      sheetsModel({ ...usualSheets(false), ...texts }, block, voice).pages;
    const all = pagesOf({});
    const second = pagesOf({ 'sheet-round': '2' });
    expect(all.length).toBeGreaterThan(second.length);
    expect(second.map(({ title }) => title.code)).toEqual(['round-template-title']);
    expect(pagesOf({ 'sheet-kind': 'foundation' })[0]?.title.code).toBe('foundation-title');
    expect(pagesOf({ 'sheet-paper': 'a4' })[0]?.image.attributes.width).toBe('210mm');
    expect(pagesOf({ 'sheet-round': '5' })).toEqual(all);
  });

  test('in a file stand on pages of their paper, with a title that is text', () => {
    const { pages } = sheetsModel(usualSheets(true), block, voice);
    const file = sheetFile('<b>Sheets & more</b>', pages);
    expect(file).toContain('@page{size:210mm 297mm;margin:0}');
    expect(file).toContain('<title>&lt;b&gt;Sheets &amp; more&lt;/b&gt;</title>');
    expect(file.match(/<svg [^>]*role="img"/g)).toHaveLength(pages.length);
    expect(file).not.toContain('<script');
  });
});

describe('panels', () => {
  const names = workshop.panels.map(({ name }) => name);

  test('are all there are, those that a page names, or none', () => {
    const wanted = (text?: string) => wantedPanels(workshop.panels, text).map(({ name }) => name);
    expect(wanted()).toEqual(names);
    expect(wanted('seam finder')).toEqual(['finder', 'seam']);
    expect(wanted('none')).toEqual([]);
    expect(new Set(names).size).toBe(names.length);
  });

  test('are each named in words', () => {
    const own = workshop.messages(messages);
    for (const { summary } of workshop.panels) expect(own[summary]).toMatch(/\w/);
  });

  test('write their lengths anew when the reader changes the units, and nothing else', () => {
    const state = new PanelState({
      addController: () => undefined,
      removeController: () => undefined,
      requestUpdate: () => undefined,
      updateComplete: Promise.resolve(true),
    });
    state.type(
      { 'find-finished': '8 to 10', 'find-rounds': '4', 'rescue-measured': '9 1/2; 9' },
      false,
    );
    state.rewrite(inches, measuresFor('metric', 'en'));
    expect(state.texts).toEqual({
      'find-finished': '20.32 to 25.4',
      'find-rounds': '4',
      'rescue-measured': '24.13; 22.86',
    });
    expect(panelInputs['find-rounds']).toBe('other');
  });

  test('work something out anew only where what it is made from changes', () => {
    const memory = new Memory<number>();
    let made = 0;
    const count = (owner: object, from: unknown) => memory.of(owner, from, () => ++made);
    const [one, other] = [{}, {}];
    expect([count(one, ['a']), count(one, ['a']), count(one, ['b']), count(other, ['b'])]).toEqual([
      1, 1, 2, 3,
    ]);
  });
});
