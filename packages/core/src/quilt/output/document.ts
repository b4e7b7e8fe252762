/** One column of a table. */
export interface DocumentColumn {
  readonly title: string;
  /** Numbers stand at the end of their cell. */
  readonly align?: 'end';
}

/** A table; the first cell of a row names it. */
export interface DocumentTable {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly DocumentColumn[];
  readonly rows: readonly (readonly string[])[];
}

/** A part of a document. */
export type DocumentPart =
  | { readonly kind: 'heading'; readonly level: 1 | 2; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly string[] }
  | DocumentTable;

/**
 * What is written about a plan, as data: Markdown and HTML are made from it, so that nothing is worded
 * twice. All texts are plain; what writes them escapes them.
 */
export interface QuiltDocument {
  readonly title: string;
  readonly parts: readonly DocumentPart[];
}

export const heading = (text: string, level: 1 | 2 = 1): DocumentPart => ({
  kind: 'heading',
  level,
  text,
});

export const paragraph = (text: string): DocumentPart => ({ kind: 'paragraph', text });

export const items = (texts: readonly string[], ordered = false): DocumentPart[] =>
  texts.length === 0 ? [] : [{ kind: 'list', ordered, items: texts }];

/** A table; a column whose title ends in `#` holds numbers. */
export const table = (
  caption: string,
  titles: readonly string[],
  rows: readonly (readonly string[])[],
): DocumentTable => ({
  kind: 'table',
  caption,
  columns: titles.map((title) =>
    title.endsWith('#') ? { title: title.slice(0, -1), align: 'end' } : { title },
  ),
  rows,
});
