import type { Length, MethodComparison, UnitComparison } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { measure, rectangleMeasure, spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import type { MessageName } from '../messages/messages.js';
import { titleOf } from './words.js';

/** What the table of methods needs to know. */
export interface MethodTable {
  readonly comparison: UnitComparison;
  readonly voice: Voice;
  readonly count: number;
  /** The method that the sheet shows. */
  readonly chosen: string;
  readonly isLocked: boolean;
  readonly choose: (method: string) => void;
}

/** An area in whole square inches or centimeters: it is there to compare, not to cut by. */
function area(value: Length, { measures }: Voice): TemplateResult {
  const square = measures.units === 'metric' ? value.times('2.54').times('2.54') : value;
  const text = square.toGrid(1, 'nearest').toString();
  return spokenText(text, text);
}

const number = (value: number): TemplateResult =>
  html`<span translate="no" .textContent=${String(value)}></span>`;

function cutsOf({ cuts }: MethodComparison, voice: Voice): TemplateResult {
  const { bare } = voice.measures;
  return html`${cuts.map(({ count, width, height, shape }) => {
    const size =
      shape === 'strip' || width.equals(height)
        ? measure(height, voice, bare)
        : rectangleMeasure(width, height, voice, bare);
    return html`<div>${sentence('countOf', { count: number(count), size }, voice)}</div>`;
  })}`;
}

/** The methods in columns, so that their figures stand beside each other. */
export function methodTable(table: MethodTable): TemplateResult {
  const { comparison, voice, count, chosen, isLocked, choose } = table;
  const { methods, refused } = comparison;
  const column = (method: string): TemplateResult => {
    const name = titleOf(method, voice);
    const is = method === chosen;
    return html`<th scope="col" class="figure ${is ? 'chosen-method' : ''}">
      ${
        isLocked
          ? html`<span .textContent=${name}></span>`
          : html`<button
              type="button"
              class="link"
              part="button"
              aria-pressed=${is ? 'true' : 'false'}
              @click=${() => choose(method)}
              .textContent=${name}
            ></button>`
      }
    </th>`;
  };
  const row = (name: MessageName, cell: (method: MethodComparison) => TemplateResult) =>
    html`<tr>
      <th scope="row" .textContent=${voice.say(name)}></th>
      ${methods.map((method) => html`<td class="figure">${cell(method)}</td>`)}
    </tr>`;
  const inMetric = voice.measures.units === 'metric';
  return html`<div class="methods">
    <table part="table">
      <caption .textContent=${voice.say('compare', { count })}></caption>
      <thead>
        <tr>
          <th scope="col" .textContent=${voice.say('figure')}></th>
          ${methods.map(({ method }) => column(method))}
        </tr>
      </thead>
      <tbody>
        ${row('cuts', (method) => cutsOf(method, voice))}
        ${row('makes', ({ plan }) => number(plan.yield))}
        ${row('sets', ({ sets }) => number(sets))}
        ${row('leftOver', ({ leftOver }) => number(leftOver))}
        ${row(inMetric ? 'fabricAreaMetric' : 'fabricArea', ({ fabric }) => area(fabric, voice))}
        ${row('wasteArea', ({ waste }) => area(waste, voice))}
        ${row('biasHandled', ({ biasEdges }) => number(biasEdges))}
        ${row('biasOutside', ({ biasOutside }) => number(biasOutside))}
        ${row('seams', ({ seams }) => number(seams))}
        ${row('trims', ({ trims }) => number(trims))}
      </tbody>
    </table>
    ${refused.map(({ method, error }) => {
      const reason = voice.error(error);
      return html`<p
        class="minor"
        .textContent=${voice.say('refused', { method: titleOf(method, voice), reason })}
      ></p>`;
    })}
  </div>`;
}
