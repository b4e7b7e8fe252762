import type { Catalog } from '../messages/catalog.js';

/** What an element speaks, and how it writes numbers. */
export interface Language {
  /** The language of its words: a catalog's, or English where there is none. */
  readonly words: string;
  /** The locale that its numbers are written in. */
  readonly locale: string;
  readonly catalog: Catalog | undefined;
}

const ENGLISH = 'en';

const catalogs = new Map<string, Catalog>();
const listeners = new Set<() => void>();

/** Takes a language's catalog; elements on the page that speak it are shown anew. */
export function addCatalog(language: string, catalog: Catalog): void {
  const tag = language.toLowerCase();
  if (catalogs.get(tag) === catalog) return;
  catalogs.set(tag, catalog);
  for (const changed of listeners) changed();
}

/** A locale that numbers can be written in; unknown and malformed tags are English. */
function localeOf(tag: string): string {
  try {
    return Intl.NumberFormat.supportedLocalesOf([tag])[0] ?? ENGLISH;
  } catch {
    return ENGLISH;
  }
}

/** What is spoken where a page says `lang="de-CH"`: a catalog of that tag, or of what it begins with. */
export function languageFor(lang: string): Language {
  const tag = lang.trim().replace(/_/g, '-');
  const locale = localeOf(tag);
  const subtags = tag.toLowerCase().split('-');
  for (let taken = subtags.length; taken > 0; taken -= 1) {
    const words = subtags.slice(0, taken).join('-');
    const catalog = catalogs.get(words);
    if (catalog !== undefined) return { words, locale, catalog };
  }
  return { words: ENGLISH, locale, catalog: undefined };
}

// Not by `instanceof`: nodes that a frame has made are of the frame's own classes.
const isElement = (node: Node): node is Element => node.nodeType === 1;
const isShadowRoot = (node: Node): node is ShadowRoot => 'host' in node && 'mode' in node;

/** An element and all that it stands in, out through shadow hosts. */
function* upFrom(element: Element): Generator<Element> {
  yield element;
  let node: Node | null = element.parentNode;
  while (node) {
    if (isElement(node)) yield node;
    node = isShadowRoot(node) ? node.host : node.parentNode;
  }
}

/** What the nearest `lang` says, that of the element itself first; English where there is none. */
export function langOf(element: Element): string {
  for (const each of upFrom(element)) {
    const lang = each.getAttribute('lang');
    if (lang !== null) return lang;
  }
  return ENGLISH;
}

/**
 * Calls back when `lang` changes on the element or on anything it stands in, and when a catalog
 * arrives, until the function that is returned is called. Where it stands cannot change meanwhile
 * without a disconnection.
 */
export function watchLanguage(element: Element, changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  for (const each of upFrom(element)) observer.observe(each, { attributeFilter: ['lang'] });
  listeners.add(changed);
  return () => {
    observer.disconnect();
    listeners.delete(changed);
  };
}
