/**
 * A table in Markdown.
 *
 * @type {(heads: readonly string[], rows: readonly (readonly string[])[]) => string}
 */
export const table = (heads, rows) =>
  [heads, heads.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
