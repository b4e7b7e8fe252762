import type { UncutPiece, Warning } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { rectangleMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';

/** What a person should know of a plan. */
export const warningList = (
  warnings: readonly Warning[],
  voice: Voice,
): TemplateResult | typeof nothing =>
  warnings.length === 0
    ? nothing
    : html`<ul class="warnings" part="warnings">
        ${warnings.map((warning) => html`<li .textContent=${voice.notice(warning)}></li>`)}
      </ul>`;

/** Pieces that were not cut, by their numbers in the table. */
export function missingList(
  missing: readonly UncutPiece[],
  rows: readonly number[],
  voice: Voice,
): TemplateResult {
  const number = (value: number) =>
    html`<span translate="no" .textContent=${String(value)}></span>`;
  return html`<ul class="plain">
    ${missing.map(({ piece, count, width, length }) => {
      const values = {
        count: number(count),
        number: number((rows[piece] ?? piece) + 1),
        size: rectangleMeasure(width, length, voice),
      };
      return html`<li>${sentence('missing', values, voice)}</li>`;
    })}
  </ul>`;
}
