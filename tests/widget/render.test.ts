import { type LogCabinSpec, logCabin } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  EighthsFabric,
  EighthsLogCabin,
  EighthsUnit,
  renderTag,
} from '../../packages/widget/src/render/index.js';

const elements = {
  'eighths-fabric': EighthsFabric,
  'eighths-log-cabin': EighthsLogCabin,
  'eighths-unit': EighthsUnit,
};
const render = (tag: string): Promise<string> => renderTag(tag, elements);

const block = '<eighths-log-cabin finished="9" rounds="4" wide="1 1/4" narrow="1/2">';

/** The texts of a table's cells, row by row. */
const cellsOf = (markup: string): readonly string[] =>
  [...markup.matchAll(/<t[hd][^>]*>([^<]*)<\/t[hd]>/g)].map(([, text = '']) => text);

describe('an element written out for a page without script', () => {
  test('stands in its own tag, with its attributes as they were given', async () => {
    const markup = await render(block);
    expect(markup.startsWith(`${block}\n`)).toBe(true);
    expect(markup.endsWith('</eighths-log-cabin>\n')).toBe(true);
  });

  test('holds the numbers of the library', async () => {
    const spec: LogCabinSpec = { finished: 9, rounds: 4, wide: '1 1/4', narrow: '1/2' };
    const markup = await render(block);
    const cells = cellsOf(markup);
    for (const { cut } of logCabin(spec).logs) {
      const written = [cut.width, cut.length].map((each) =>
        each.toString().replace(' 1/4', '¼').replace(' 1/2', '½').replace(' 3/4', '¾'),
      );
      expect(cells).toContain(written.join(' by '));
    }
    expect(markup).toContain('<p>9 finished, trim to 9½</p>');
  });

  test('is the same text every time', async () => {
    expect(await render(block)).toBe(await render(block));
  });

  test('is written in the language that its tag names', async () => {
    const markup = await render('<eighths-log-cabin lang="de" finished="10,5" rounds="2">');
    expect(markup).toContain('<p>10½ fertig, auf 11 zurückschneiden</p>');
  });

  test('names each table, and then its unit', async () => {
    expect(await render(block)).toContain('<caption>Cut list, Inches</caption>');
  });

  test.each([
    ['eighths-unit unit="hexagon" finished="2"', '<td>8</td>'],
    ['<eighths-fabric pieces="12 of 5 by 5">', 'Buy ½ yd'],
    ['<eighths-log-cabin units="metric" finished="24" rounds="3" log="3">', '24 cm finished'],
  ])('is made of %s', async (tag, part) => {
    expect(await render(tag)).toContain(part);
  });

  test('says every number once: what is only for the ear is left out', async () => {
    expect(await render(block)).not.toMatch(/inches\b.*halves|and a half|and 1 half/i);
  });

  test('has only words, lists and tables in it, whatever the attributes are', async () => {
    const known = /^(p|ul|ol|li|table|caption|thead|tbody|tr|th|td|eighths-[a-z-]+)$/;
    await fc.assert(
      fc.asyncProperty(fc.string({ maxLength: 30 }), fc.string({ maxLength: 30 }), async (a, b) => {
        const attribute = (text: string): string =>
          text.replaceAll('&', '&amp;').replaceAll('"', '&quot;');
        const tag = `<eighths-log-cabin finished="9" rounds="2" fabrics-center="${attribute(a)}" fabrics-wide="<script>${attribute(b)}</script>">`;
        const markup = await render(tag);
        const [, ...inside] = markup.split('\n');
        for (const [, name = ''] of inside.join('\n').matchAll(/<\/?([^\s>]*)/g)) {
          expect(name).toMatch(known);
        }
      }),
      { numRuns: 20 },
    );
  });

  test.each([
    ['<eighths-log-cabin finished="nine">', 'length-syntax'],
    ['<eighths-log-cabin rounds="4000">', 'not-a-count'],
    ['<div>', 'unknown-choice'],
    ['<constructor>', 'unknown-choice'],
    ['', 'wrong-kind'],
    ['9 inches', 'wrong-kind'],
  ])('%s is refused with a sentence', async (tag, code) => {
    await expect(render(tag)).rejects.toMatchObject({ name: 'EighthsError', code });
  });
});
