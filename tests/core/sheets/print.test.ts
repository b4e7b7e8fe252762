import { foundationSheets, logCabin, type Paper, trimSheets } from '@eighths/core';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ensureBrowser } from '../../../tools/browser.mjs';
import { type PdfBox, strokedBoxes } from './pdfLines.js';

const block = logCabin({
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
});

const POINTS = 72;
const NEAR = 0.5;

let browser: Browser;
beforeAll(async () => {
  const root = process.getuid?.() === 0;
  browser = await chromium.launch({
    executablePath: await ensureBrowser(),
    args: [...(root ? ['--no-sandbox'] : []), '--disable-gpu'],
  });
});
afterAll(() => browser?.close());

/** What Chromium prints of sheets, each on a page of its own. */
async function printed(svgs: readonly string[], paper: Paper): Promise<Buffer> {
  const page = await browser.newPage();
  await page.setContent(
    `<style>@page { size: ${paper}; margin: 0 } body { margin: 0 } svg { display: block; break-after: page }</style>${svgs.map((svg) => `<div>${svg}</div>`).join('')}`,
  );
  const pdf = await page.pdf({ preferCSSPageSize: true });
  await page.close();
  return pdf;
}

/** How many of the boxes are a square of so many inches, to half a point. */
const squares = (boxes: readonly PdfBox[], inches: number): number =>
  boxes.filter(
    ({ width, height }) =>
      Math.abs(width - inches * POINTS) < NEAR && Math.abs(height - inches * POINTS) < NEAR,
  ).length;

describe.each<Paper>(['letter', 'a4'])('printed on %s', (paper) => {
  it('the check squares measure 1 inch and 5 cm, and each template what it says', async () => {
    const sheets = trimSheets(block, { paper });
    const boxes = strokedBoxes(
      await printed(
        sheets.map(({ svg }) => svg),
        paper,
      ),
    );
    expect(squares(boxes, 1)).toBe(sheets.length);
    expect(squares(boxes, 5 / 2.54)).toBe(sheets.length);
    for (const { number, trimTo } of block.rounds) {
      const copies = sheets.filter(({ round }) => round === number).length;
      const drawn = squares(boxes, trimTo.width.toNumber());
      // A sheet that shows only figures beyond the template has none of its lines.
      expect(drawn).toBeGreaterThan(0);
      expect(drawn).toBeLessThanOrEqual(copies);
    }
  });

  it('the foundation measures what is cut', async () => {
    const sheets = foundationSheets(block, { paper });
    const boxes = strokedBoxes(
      await printed(
        sheets.map(({ svg }) => svg),
        paper,
      ),
    );
    expect(squares(boxes, 9.5)).toBe(sheets.length);
  });
});
