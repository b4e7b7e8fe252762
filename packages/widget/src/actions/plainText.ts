/** What stands for an eye only, or for an ear only, and what is pressed rather than read. */
const LEFT_OUT = '.unseen, button, input, select, label, fieldset, summary, output, svg, .note';

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

/**
 * Figures as they are typed: `10 13/16` for `10¹³⁄₁₆`, `10 1/2` for `10½`. Other programs, and speech,
 * make something else of the glyphs.
 */
export const typedFigures = (text: string): string =>
  text
    .replace(/[¼-¾⅐-⅞]/g, (glyph) => ` ${glyph.normalize('NFKC')}`)
    .replace(/([⁰¹²³⁴⁵⁶⁷⁸⁹]+)⁄([₀₁₂₃₄₅₆₇₈₉]+)/g, ' $1⁄$2')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String(SUPERSCRIPTS.indexOf(digit)))
    .replace(/[₀₁₂₃₄₅₆₇₈₉]/g, (digit) => String(SUBSCRIPTS.indexOf(digit)))
    .replaceAll('⁄', '/')
    .replace(/\s+/g, ' ')
    .trim();

/** What can be read of an element, in one line. */
export function readable(element: Element): string {
  const copy = element.cloneNode(true);
  if (!(copy instanceof Element)) return '';
  // A button that names a row is read; what it does is not.
  for (const each of copy.querySelectorAll('th button')) each.replaceWith(each.textContent ?? '');
  for (const each of copy.querySelectorAll(LEFT_OUT)) each.remove();
  return typedFigures(copy.textContent ?? '');
}

/** A table's caption and rows, as text. */
export interface ReadTable {
  readonly caption: string;
  readonly rows: readonly (readonly string[])[];
}

export const readTable = (table: HTMLTableElement): ReadTable => ({
  caption: [...(table.caption?.children ?? [])].map(readable).join(', '),
  rows: [...table.rows].map(({ cells }) => [...cells].map(readable)),
});

const shown = (element: Element): boolean =>
  element.closest('details:not([open])') === null && element.closest('[hidden]') === null;

/** Everything that an element shows, in reading order, as plain text. */
export function plainText(root: ParentNode): string {
  const blocks = [...root.querySelectorAll('p, ol, ul, table, h3, h4')].filter(
    (each) => shown(each) && each.parentElement?.closest('ol, ul, table, form, .field') === null,
  );
  const texts = blocks.map((block) => {
    if (block instanceof HTMLTableElement) {
      const { caption, rows } = readTable(block);
      return [caption, ...rows.map((row) => row.join('\t'))].join('\n');
    }
    const items = [...block.querySelectorAll('li')];
    if (items.length === 0) return readable(block);
    return items
      .map((item, at) => {
        const first = block instanceof HTMLOListElement ? block.start : undefined;
        return `${first === undefined ? '–' : `${first + at}.`} ${readable(item)}`;
      })
      .join('\n');
  });
  return texts.filter((text) => text !== '').join('\n\n');
}
