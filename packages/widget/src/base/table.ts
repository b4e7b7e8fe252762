import type { LengthInput } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { measure } from './measure.js';
import type { Voice } from './voice.js';

/** A column's name, what stands in it in a row, and whether it is words: figures stand to the right. */
export interface Column<Row> {
  readonly name: string;
  readonly cell: (row: Row) => TemplateResult;
  readonly words?: boolean;
}

/** Rows that belong together, and what stands across the table above them. */
export interface RowGroup<Row> {
  readonly rows: readonly Row[];
  readonly head?: TemplateResult;
  readonly className?: string;
}

export const measureCell = (value: LengthInput, voice: Voice): TemplateResult =>
  html`<td class="figure">${measure(value, voice, voice.measures.bare)}</td>`;

export const rowHead = (words: string): TemplateResult =>
  html`<th scope="row" .textContent=${words}></th>`;

/** A table of measures; its caption names their unit. */
export function measuresTable<Row>(
  caption: string,
  columns: readonly Column<Row>[],
  groups: readonly RowGroup<Row>[],
  { measures, say }: Voice,
  className = '',
): TemplateResult {
  const unit = say(measures.units === 'metric' ? 'centimeters' : 'inches');
  return html`<table class=${className} part="table">
    <caption>
      <span .textContent=${caption}></span>
      <span class="unit" .textContent=${unit}></span>
    </caption>
    <thead>
      <tr>
        ${columns.map(
          ({ name, words }) =>
            html`<th scope="col" class=${words ? '' : 'figure'} .textContent=${name}></th>`,
        )}
      </tr>
    </thead>
    ${groups.map(
      ({ rows, head, className: groupClass = '' }) => html`<tbody class=${groupClass}>
        ${head && html`<tr><th scope="rowgroup" colspan=${columns.length}>${head}</th></tr>`}
        ${rows.map((row) => html`<tr>${columns.map(({ cell }) => cell(row))}</tr>`)}
      </tbody>`,
    )}
  </table>`;
}
