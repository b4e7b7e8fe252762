import { escaped } from '../../plan/escaped.js';
import type { DocumentPart, DocumentTable, QuiltDocument } from './document.js';

/** A text as it stands in HTML. */
const escapeHtml = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they may not stand in HTML
  escaped(text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/g, ''));

const element = (name: string, content: string): string => `<${name}>${content}</${name}>`;

function htmlTable({ caption, columns, rows }: DocumentTable): string {
  const heads = columns.map(({ title }) => `<th scope="col">${escapeHtml(title)}</th>`).join('');
  const body = rows.map(([first = '', ...others]) => {
    const cells = others.map((cell) => element('td', escapeHtml(cell))).join('');
    return `<tr><th scope="row">${escapeHtml(first)}</th>${cells}</tr>`;
  });
  return [
    '<table>',
    element('caption', escapeHtml(caption)),
    element('thead', element('tr', heads)),
    '<tbody>',
    ...body,
    '</tbody>',
    '</table>',
  ].join('\n');
}

function htmlPart(part: DocumentPart, level: number): string {
  switch (part.kind) {
    case 'heading':
      return element(`h${Math.min(6, level + part.level)}`, escapeHtml(part.text));
    case 'paragraph':
      return element('p', escapeHtml(part.text));
    case 'list': {
      const entries = part.items.map((item) => element('li', escapeHtml(item)));
      return element(part.ordered ? 'ol' : 'ul', `\n${entries.join('\n')}\n`);
    }
    case 'table':
      return htmlTable(part);
  }
}

/** A document as a piece of HTML to stand in a page: without styles, scripts, ids or classes. */
export const html = ({ title, parts }: QuiltDocument, level: number): string =>
  `${[
    '<section>',
    element(`h${level}`, escapeHtml(title)),
    ...parts.map((part) => htmlPart(part, level)),
    '</section>',
  ].join('\n')}\n`;
