import { addCatalog } from '../base/languages.js';
import type { Catalog } from '../messages/catalog.js';

/** The tags under which a page may have the elements from a script file of their own. */
const TAGS = ['eighths-log-cabin', 'eighths-unit', 'eighths-quilt', 'eighths-fabric'];

const takesMessages = (
  element: CustomElementConstructor,
): element is CustomElementConstructor & {
  readonly addMessages: (language: string, catalog: Catalog) => void;
} => 'addMessages' in element && typeof element.addMessages === 'function';

/**
 * Gives a language to the elements: to those that a bundler has put beside this module, and to those
 * that the page has, or will have, from script files. It may be called before or after they are
 * registered, and twice.
 */
export function speak(language: string, catalog: Catalog): void {
  addCatalog(language, catalog);
  // Nothing is registered where pages are made on a server.
  if (typeof customElements === 'undefined') return;
  for (const tag of TAGS) {
    void customElements.whenDefined(tag).then((element) => {
      if (takesMessages(element)) element.addMessages(language, catalog);
    });
  }
}
