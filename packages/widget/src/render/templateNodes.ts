import { nothing } from 'lit';
import { type MarkupNode, VOID } from './node.js';

/** What of Lit's results is read here. */
interface Template {
  readonly strings: readonly string[];
  readonly values: readonly unknown[];
}

const isTemplate = (value: unknown): value is Template =>
  typeof value === 'object' && value !== null && 'strings' in value && 'values' in value;

/** Stands for a value; no template of ours holds this character. */
const PLACE = '\u0001';

/** An end tag, a start tag with its attributes, a comment, or text. */
const TOKEN =
  /<\/([\w-]+)\s*>|<([\w-]+)((?:\s+[^\s=>/]+(?:=(?:"[^"]*"|[^\s>]+))?)*)\s*(\/?)>|<!--.*?-->|[^<]+/gs;
const ATTRIBUTE = /([^\s=]+)(?:=(?:"([^"]*)"|(\S+)))?/g;

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  ensp: ' ',
  gt: '>',
  lt: '<',
  nbsp: '\u00a0',
  quot: '"',
};

const decoded = (text: string): string =>
  text.replace(/&(\w+);/g, (entity, name: string) => ENTITIES[name] ?? entity);

interface OpenElement {
  readonly name: string;
  readonly attributes: Map<string, string>;
  readonly children: MarkupNode[];
}

const asText = (value: unknown): string =>
  value === nothing || value === undefined || value === null ? '' : String(value);

/** The element that a start tag opens; event listeners and properties but text content are left. */
function opened(name: string, written: string, next: () => unknown): OpenElement {
  const attributes = new Map<string, string>();
  const children: MarkupNode[] = [];
  for (const [, key = '', quoted, bare] of written.matchAll(ATTRIBUTE)) {
    const parts = (quoted ?? bare ?? '').split(PLACE);
    const values = parts.slice(1).map(next);
    if (key === '.textContent') children.push(asText(values[0]));
    if (key.startsWith('?') && values[0] === true) attributes.set(key.slice(1), '');
    if (/^[@.?]/.test(key) || values.includes(nothing)) continue;
    const value = parts.map((part, at) => (at === 0 ? '' : asText(values[at - 1])) + part).join('');
    attributes.set(key, decoded(value));
  }
  return { name, attributes, children };
}

/**
 * What a Lit template would render, as data, without a document. Templates are read as they are
 * written here: well formed, and attribute values with spaces in double quotes.
 */
export function templateNodes(value: unknown): readonly MarkupNode[] {
  if (Array.isArray(value)) return value.flatMap(templateNodes);
  if (!isTemplate(value)) return asText(value) === '' ? [] : [asText(value)];
  let used = 0;
  const next = (): unknown => {
    used += 1;
    return value.values[used - 1];
  };
  const root: OpenElement = { name: '', attributes: new Map(), children: [] };
  const open = [root];
  for (const [token, end, start, written = '', closed] of value.strings
    .join(PLACE)
    .matchAll(TOKEN)) {
    const inside = open.at(-1) ?? root;
    if (end !== undefined) open.pop();
    else if (start !== undefined) {
      const element = opened(start, written, next);
      inside.children.push(element);
      if (closed === '' && !VOID.has(start)) open.push(element);
    } else if (!token.startsWith('<!--')) {
      token.split(PLACE).forEach((text, at) => {
        if (at > 0) inside.children.push(...templateNodes(next()));
        if (text !== '') inside.children.push(decoded(text));
      });
    }
  }
  return root.children;
}
