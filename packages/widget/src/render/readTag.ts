import { EighthsError } from '@eighths/core';

/** A tag as an author writes it into a page. */
export interface ReadTag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

const TAG = /^\s*<?\s*([a-z][\w-]*)((?:[^>"']|"[^"]*"|'[^']*')*?)\/?\s*(?:>|$)/is;
const ATTRIBUTE = /([^\s=/"'<>]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'<>]+)))?/g;
const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  gt: '>',
  lt: '<',
  quot: '"',
  '#34': '"',
  '#39': "'",
};

const decoded = (text: string): string =>
  text.replace(/&(#?\w+);/g, (entity, name: string) => ENTITIES[name] ?? entity);

/**
 * An element's opening tag, with or without its angle brackets; what follows it is not read.
 *
 * @throws EighthsError `wrong-kind` where the text does not begin with a tag.
 */
export function readTag(text: string): ReadTag {
  const [, name, written = ''] = TAG.exec(text) ?? [];
  if (name === undefined) {
    throw new EighthsError(
      'wrong-kind',
      'tag',
      { expected: '<eighths-log-cabin finished="9">' },
      'Give a tag such as {expected}.',
    );
  }
  const attributes = new Map<string, string>();
  for (const [, key = '', double, single, bare] of written.matchAll(ATTRIBUTE)) {
    const attribute = key.toLowerCase();
    // The first of two wins, as in a page.
    if (!attributes.has(attribute)) {
      attributes.set(attribute, decoded(double ?? single ?? bare ?? ''));
    }
  }
  return { name: name.toLowerCase(), attributes };
}
