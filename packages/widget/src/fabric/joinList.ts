import type { JoinedLengths, StripJoin } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { measure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import { warningList } from './notes.js';

/** More pieces than these are not told of one by one. */
const MOST_TOLD = 8;

/** The joins of each piece that has any. */
function byPiece(joins: readonly StripJoin[]): readonly (readonly StripJoin[])[] {
  const groups = new Map<string, StripJoin[]>();
  for (const join of joins) {
    const key = `${join.piece} ${join.copy}`;
    groups.set(key, [...(groups.get(key) ?? []), join]);
  }
  return [...groups.values()];
}

function joinsOf(
  joins: readonly StripJoin[],
  rows: readonly number[],
  voice: Voice,
): TemplateResult {
  const { piece = 0, copy = 1 } = joins[0] ?? {};
  const number = (value: number) =>
    html`<span translate="no" .textContent=${String(value)}></span>`;
  const places = html`${joins.map(
    ({ from }, at) => html`${at === 0 ? '' : voice.template('comma')}${measure(from, voice)}`,
  )}`;
  const values = { number: number((rows[piece] ?? piece) + 1), copy: number(copy), places };
  return html`<li>${sentence('joinsIn', values, voice)}</li>`;
}

/** Where joins fall in the pieces, and what to know of that. */
export function joinList(
  { joins, warnings }: JoinedLengths,
  rows: readonly number[],
  voice: Voice,
): TemplateResult | typeof nothing {
  if (joins.length === 0) return nothing;
  const pieces = byPiece(joins);
  return html`<h3 .textContent=${voice.say('joins')}></h3>
    <ul class="plain">
      ${pieces.slice(0, MOST_TOLD).map((each) => joinsOf(each, rows, voice))}
    </ul>
    ${pieces.length > MOST_TOLD ? html`<p .textContent=${voice.say('moreJoins')}></p>` : nothing}
    ${warningList(warnings, voice)}`;
}
