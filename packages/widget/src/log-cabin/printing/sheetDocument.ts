import type { SheetPage } from '@eighths/core';
import { svgElement } from './svgNodes.js';

/** One sheet a page, and no margin but the sheet’s own, so that nothing has to be scaled. */
export function sheetCss([first]: readonly SheetPage[]): string {
  const { width = '8.5in', height = '11in' } = first?.image.attributes ?? {};
  return [
    `@page{size:${width} ${height};margin:0}`,
    'html,body{margin:0;color:#000;background:#fff}',
    'body>svg{display:block}',
    'body>svg:not(:last-child){break-after:page}',
  ].join('');
}

export const putSheets = (page: Document, pages: readonly SheetPage[]): void =>
  page.body.append(...pages.map(({ image }) => svgElement(page, image)));

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

/** The sheets as a page by itself, to keep, to send to the copy shop, or to print. */
export function sheetFile(title: string, pages: readonly SheetPage[]): string {
  const name = title.replace(/[&<>]/g, (sign) => ESCAPES[sign] ?? sign);
  const sheets = pages.map(({ svg }) => svg).join('\n');
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<title>${name}</title>
<style>${sheetCss(pages)}</style>
<body>
${sheets}
</body>
</html>
`;
}
