import { drawTemplate, drunkardsPath, toSvg } from '@eighths/core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inChromium } from './support/engine.js';
import { type Demo, startDemo } from './support/launch.js';
import { printed } from './support/paper.js';
import type { PdfPage } from './support/pdfPaths.js';
import { openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

/** Points to the inch. */
const INCH = 72;
const NEAR = 0.5;

const plan = drunkardsPath({ finished: 4, radius: 3 });

const SHEETS = [
  ['inside curve', 1, 3.5],
  ['outside curve', 2, 4.5],
] as const;

const PAPERS = [
  ['letter', 8.5, 11],
  ['A4', 210 / 25.4, 297 / 25.4],
] as const;

/** The paths on the paper that are squares of a side, within half a point. */
const squares = ({ paths }: PdfPage, inches: number) =>
  paths.filter(
    ({ width, height }) =>
      Math.abs(width - inches * INCH) < NEAR && Math.abs(height - inches * INCH) < NEAR,
  );

/** The one page that a sheet comes out on. */
async function sheetOn(svg: string, paper: Parameters<typeof printed>[1]): Promise<PdfPage> {
  const { page, close } = await openGuest(demo, svg);
  const pages = await printed(page, paper);
  await close();
  expect(pages.length).toBe(1);
  const [first = { width: 0, height: 0, paths: [] }] = pages;
  return first;
}

describe.each(PAPERS)('printed on %s', (_, width, height) => {
  test.each(SHEETS)('the template of the %s has its true size', async (_piece, template, side) => {
    const svg = toSvg(drawTemplate(plan, { template }), { size: 'true' });
    const page = await sheetOn(svg, { width, height });
    expect(Math.abs(page.width - width * INCH)).toBeLessThan(1);
    expect(Math.abs(page.height - height * INCH)).toBeLessThan(1);
    expect(squares(page, 1).length).toBeGreaterThan(0);
    expect(squares(page, 5 / 2.54).length).toBeGreaterThan(0);
    expect(squares(page, side).length).toBeGreaterThan(0);
  });
});

// Firefox’s driver fits a page to its paper, and leaves no other scale.
test.runIf(inChromium)(
  'a sheet that is printed at another scale has squares that do not measure',
  async () => {
    const svg = toSvg(drawTemplate(plan), { size: 'true' });
    const sheet = await sheetOn(svg, { width: 8.5, height: 11, scale: 0.97 });
    expect(squares(sheet, 1)).toEqual([]);
    expect(squares(sheet, 0.97).length).toBeGreaterThan(0);
  },
);

test('on the screen, 96 pixels are an inch of it', async () => {
  const svg = toSvg(drawTemplate(plan), { size: 'true' });
  const { page, close } = await openGuest(demo, svg);
  const boxes = await page.locator('svg path.outline').evaluateAll((paths) =>
    paths.map((path) => {
      // The lines’ middles: whether their thickness counts, browsers answer differently.
      if (!(path instanceof SVGGraphicsElement)) return [];
      const { width, height } = path.getBBox();
      const { a = 0, d = 0 } = path.getScreenCTM() ?? {};
      return [width * a, height * d];
    }),
  );
  const [outline, inch, metric] = boxes;
  for (const [shown, inches] of [
    [outline, 3.5],
    [inch, 1],
    [metric, 5 / 2.54],
  ] as const) {
    expect(shown).toHaveLength(2);
    for (const side of shown ?? []) expect(Math.abs(side - inches * 96)).toBeLessThan(1);
  }
  await close();
});
