import { checkFields, countField } from '../../plan/field.js';
import { kitsDocument } from '../kits/kitsDocument.js';
import { cutSheet } from '../kits/kitTables.js';
import type { Kits } from '../kits/plan.js';
import type { QuiltPlan } from '../pattern/plan.js';
import { csv } from './csv.js';
import type { QuiltDocument } from './document.js';
import { html } from './html.js';
import { markdown } from './markdown.js';
import { quiltDocument } from './quiltDocument.js';
import { shoppingList } from './shoppingList.js';
import { type Writing, type WritingOptions, writingOf } from './writing.js';

/** How HTML is written. */
export interface HtmlOptions extends WritingOptions {
  /** The level of the title's heading, from 1 to 5; default 2, to stand in a page that has a title. */
  readonly headingLevel?: number;
}

const documentOf = (plan: QuiltPlan | Kits, writing: Writing): QuiltDocument =>
  plan.kind === 'quilt' ? quiltDocument(plan, writing) : kitsDocument(plan, writing);

/**
 * A quilt's pattern, or a class's kits, in Markdown. Whatever a recipe's texts hold stays text.
 *
 * @throws EighthsError `unknown-field`, `unknown-choice`
 * @example
 * const recipe = {
 *   name: 'Nine *Windows*',
 *   fabrics: [{ id: 'linen' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * toMarkdown(quilt(recipe)).split('\n')[0]; // '# Nine \*Windows\*, Cushion'
 */
export const toMarkdown = (plan: QuiltPlan | Kits, options: WritingOptions = {}): string =>
  markdown(documentOf(plan, writingOf(options)));

/**
 * The same as HTML to paste into a page: headings, lists and tables with captions and scopes, without
 * styles, scripts, ids or classes. Whatever a recipe's texts hold stays text.
 *
 * @throws EighthsError `unknown-field`, `unknown-choice`, `not-a-count`
 * @example
 * const recipe = {
 *   name: 'Nine <Windows>',
 *   fabrics: [{ id: 'linen' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * toHtml(quilt(recipe)).split('\n')[1]; // '<h2>Nine &lt;Windows&gt;, Cushion</h2>'
 */
export function toHtml(plan: QuiltPlan | Kits, options: HtmlOptions = {}): string {
  checkFields(options, '', ['units', 'locale', 'headingLevel']);
  const { headingLevel = 2, ...writing } = options;
  const level = countField(headingLevel, 'headingLevel', 1, 5);
  return html(documentOf(plan, writingOf(writing)), level);
}

/**
 * A quilt's shopping list, or the cut sheet of a class's kits, as a table for spreadsheets: commas,
 * quotes and line breaks are kept, and no cell is taken for a formula.
 *
 * @throws EighthsError `unknown-field`, `unknown-choice`
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen', name: '=SUM(A1)' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * toCsv(quilt(recipe)).split('\r\n')[1]; // "'=SUM(A1),top,40″,1⅛ yd,,"
 */
export function toCsv(plan: QuiltPlan | Kits, options: WritingOptions = {}): string {
  const writing = writingOf(options);
  return csv(plan.kind === 'quilt' ? shoppingList(plan, writing) : cutSheet(plan, writing));
}
