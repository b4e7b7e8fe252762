import type { Page } from 'playwright-core';
import { inChromium } from './engine.js';
import { type PdfPage, readPdf } from './pdfPaths.js';

/** A paper in inches, and how a page is laid on it. */
interface Paper {
  readonly width: number;
  readonly height: number;
  readonly margin?: number;
  readonly scale?: number;
}

/** Playwright 1.63 hands Firefox the inches where WebDriver BiDi takes centimeters. */
const unit = inChromium ? 1 : 2.54;

const inches = (value: number): string => `${value * unit}in`;

/** A page as it comes out of the printer. A size that its own `@page` rule asks for goes before. */
export async function printed(page: Page, paper: Paper): Promise<readonly PdfPage[]> {
  const { width, height, margin = 0, scale = 1 } = paper;
  const edge = inches(margin);
  const file = await page.pdf({
    width: inches(width),
    height: inches(height),
    margin: { top: edge, right: edge, bottom: edge, left: edge },
    scale,
    preferCSSPageSize: true,
  });
  return readPdf(file);
}
