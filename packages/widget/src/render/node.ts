/** A piece of markup as data: a text, or an element with its attributes and what stands in it. */
export type MarkupNode = string | MarkupElement;

export interface MarkupElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly MarkupNode[];
}

/** Elements that have no end tag. */
export const VOID = new Set(['br', 'col', 'hr', 'img', 'input', 'link', 'meta']);

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const attributeText = ([name, value]: readonly [string, string]): string =>
  value === '' ? ` ${name}` : ` ${name}="${escaped(value).replaceAll('"', '&quot;')}"`;

/** An opening tag, on one line. */
export const openingTag = ({ name, attributes }: Omit<MarkupElement, 'children'>): string =>
  `<${name}${[...attributes].map(attributeText).join('')}>`;

/** Elements whose contents stand on lines of their own. */
const SPACIOUS = new Set(['table', 'thead', 'tbody', 'tr', 'ol', 'ul', 'dl']);

/** Markup as text; every text and attribute in it is escaped. */
export function writeMarkup(nodes: readonly MarkupNode[], indent = ''): string {
  return nodes
    .map((node) => {
      if (typeof node === 'string') return escaped(node);
      const { name, children } = node;
      const tag = openingTag(node);
      if (VOID.has(name)) return tag;
      if (!SPACIOUS.has(name)) return `${tag}${writeMarkup(children)}</${name}>`;
      const inner = `${indent}  `;
      const lines = children.map((child) => `${inner}${writeMarkup([child], inner)}\n`).join('');
      return `${tag}\n${lines}${indent}</${name}>`;
    })
    .join('');
}
