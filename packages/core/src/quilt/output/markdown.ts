import type { DocumentPart, DocumentTable, QuiltDocument } from './document.js';

/** A text as it stands in a line of Markdown: nothing in it is a sign of Markdown or of HTML. */
export function escapeMarkdown(text: string): string {
  return oneLine(text)
    .replace(/[\\`*_[\]<>|~&#$]/g, '\\$&')
    .replace(/^([-+=])/, '\\$1')
    .replace(/^(\d+)([.)])(?=\s|$)/, '$1\\$2');
}

/** Controls and line breaks are spaces, and spaces at the ends are none. */
const oneLine = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
  text.replace(/[\u0000-\u001f\u007f\u2028\u2029]+/g, ' ').trim();

function markdownTable({ caption, columns, rows }: DocumentTable): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    `**${escapeMarkdown(caption)}**`,
    '',
    line(columns.map(({ title }) => escapeMarkdown(title))),
    line(columns.map(({ align }) => (align === 'end' ? '--:' : '---'))),
    ...rows.map((row) => line(row.map(escapeMarkdown))),
  ].join('\n');
}

function markdownPart(part: DocumentPart): string {
  switch (part.kind) {
    case 'heading':
      return `${'#'.repeat(part.level + 1)} ${escapeMarkdown(part.text)}`;
    case 'paragraph':
      return escapeMarkdown(part.text);
    case 'list':
      return part.items
        .map((item, index) => `${part.ordered ? `${index + 1}.` : '-'} ${escapeMarkdown(item)}`)
        .join('\n');
    case 'table':
      return markdownTable(part);
  }
}

/** A document in Markdown, with tables as most sites read them. */
export const markdown = ({ title, parts }: QuiltDocument): string =>
  `${[`# ${escapeMarkdown(title)}`, ...parts.map(markdownPart)].join('\n\n')}\n`;
