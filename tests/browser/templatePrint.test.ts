import { drawTemplate, drunkardsPath, toSvg } from '@eighths/core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Demo, startDemo } from './support/launch.js';
import { type PdfPage, readPdf } from './support/pdfPaths.js';
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
  ['letter', '8.5in', '11in', 8.5, 11],
  ['A4', '210mm', '297mm', 210 / 25.4, 297 / 25.4],
] as const;

/** The paths on the paper that are squares of a side, within half a point. */
const squares = ({ paths }: PdfPage, inches: number) =>
  paths.filter(
    ({ width, height }) =>
      Math.abs(width - inches * INCH) < NEAR && Math.abs(height - inches * INCH) < NEAR,
  );

async function printed(svg: string, width: string, height: string): Promise<PdfPage> {
  const { page, close } = await openGuest(demo, svg);
  const pdf = await page.pdf({ width, height, margin: {}, scale: 1 });
  await close();
  const pages = readPdf(pdf);
  expect(pages.length).toBe(1);
  const [first = { width: 0, height: 0, paths: [] }] = pages;
  return first;
}

describe.each(PAPERS)('printed on %s', (_, width, height, across, down) => {
  test.each(SHEETS)('the template of the %s has its true size', async (_piece, template, side) => {
    const svg = toSvg(drawTemplate(plan, { template }), { size: 'true' });
    const page = await printed(svg, width, height);
    expect(Math.abs(page.width - across * INCH)).toBeLessThan(1);
    expect(Math.abs(page.height - down * INCH)).toBeLessThan(1);
    expect(squares(page, 1).length).toBeGreaterThan(0);
    expect(squares(page, 5 / 2.54).length).toBeGreaterThan(0);
    expect(squares(page, side).length).toBeGreaterThan(0);
  });
});

test('a sheet that is printed at another scale has squares that do not measure', async () => {
  const svg = toSvg(drawTemplate(plan), { size: 'true' });
  const { page, close } = await openGuest(demo, svg);
  const pdf = await page.pdf({ width: '8.5in', height: '11in', margin: {}, scale: 0.97 });
  await close();
  const [sheet = { width: 0, height: 0, paths: [] }] = readPdf(pdf);
  expect(squares(sheet, 1)).toEqual([]);
  expect(squares(sheet, 0.97).length).toBeGreaterThan(0);
});

test('on the screen, 96 pixels are an inch of it', async () => {
  const svg = toSvg(drawTemplate(plan), { size: 'true' });
  const { page, close } = await openGuest(demo, svg);
  const boxes = await page.locator('svg path.outline').evaluateAll((paths) =>
    paths.map((path) => {
      const { width, height } = path.getBoundingClientRect();
      return [width, height];
    }),
  );
  const [outline, inch, metric] = boxes;
  for (const [shown, inches] of [
    [outline, 3.5],
    [inch, 1],
    [metric, 5 / 2.54],
  ] as const) {
    for (const side of shown ?? [0]) expect(Math.abs(side - inches * 96)).toBeLessThan(1);
  }
  await close();
});
