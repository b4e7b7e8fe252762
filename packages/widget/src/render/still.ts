import type { MarkupElement, MarkupNode } from './node.js';

/** What a page without script is given: words, lists and tables. */
const KEPT = new Set(
  'p h2 h3 h4 ul ol li dl dt dd table caption thead tbody tr th td strong em sub sup'.split(' '),
);
/** What makes no sense where nothing moves. */
const LEFT_OUT = new Set(
  'button details fieldset figure form input label output select summary svg'.split(' '),
);
/** Spoken doubles, and inputs that an author has fixed. */
const LEFT_OUT_CLASSES = ['unseen', 'field', 'fractions', 'stepper'];
const KEPT_ATTRIBUTES = new Set(['scope', 'colspan', 'rowspan', 'start', 'lang', 'dir']);

const isLeftOut = ({ name, attributes }: MarkupElement, inTable: boolean): boolean => {
  const classes = (attributes.get('class') ?? '').split(/\s+/);
  if (classes.some((each) => LEFT_OUT_CLASSES.includes(each))) return true;
  // A row's name may be a button that shows its drawing.
  return LEFT_OUT.has(name) && !(name === 'button' && inTable);
};

/** Runs of spaces as one; none at either end, and none that stands alone between blocks. */
function tidied(nodes: readonly MarkupNode[]): readonly MarkupNode[] {
  const joined: MarkupNode[] = [];
  for (const node of nodes) {
    const last = joined.at(-1);
    if (typeof node === 'string' && typeof last === 'string') joined.splice(-1, 1, last + node);
    else joined.push(node);
  }
  return joined
    .map((node) => (typeof node === 'string' ? node.replace(/\s+/g, ' ') : node))
    .map((node, at, all) => {
      if (typeof node !== 'string') return node;
      const start = at === 0 ? node.trimStart() : node;
      return at === all.length - 1 ? start.trimEnd() : start;
    })
    .filter((node) => typeof node !== 'string' || node.trim() !== '');
}

/** Only known elements and attributes, whatever a template comes to hold. */
function still(node: MarkupNode, inTable: boolean): readonly MarkupNode[] {
  if (typeof node === 'string') return [node];
  if (isLeftOut(node, inTable)) return [];
  // A caption names the table, and then its unit.
  if (node.name === 'caption') {
    const parts = node.children.flatMap((child) => tidied(still(child, true)));
    const words = parts.filter((part) => typeof part === 'string').join(', ');
    return [{ name: 'caption', attributes: new Map(), children: [words] }];
  }
  const within = inTable || node.name === 'table';
  const children = node.children.flatMap((child) => still(child, within));
  if (!KEPT.has(node.name)) return children;
  const kept = tidied(children);
  if (kept.length === 0 && node.name !== 'td') return [];
  const attributes = new Map([...node.attributes].filter(([name]) => KEPT_ATTRIBUTES.has(name)));
  return [{ name: node.name, attributes, children: kept }];
}

/** An element's answer without what needs a script: for search engines, and readers without one. */
export function stillNodes(nodes: readonly MarkupNode[]): readonly MarkupElement[] {
  return (
    nodes
      .flatMap((node) => still(node, false))
      // What stands in no paragraph is a label of something that was left out.
      .filter((node) => typeof node !== 'string')
  );
}
