import type { KitFabric, Kits, Margin } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import { amount, incrementOf, moneyText, unitsFor } from './amounts.js';
import { swatchedName } from './buyTable.js';
import { said } from './said.js';
import { fabricNames, type Shown } from './shown.js';

const FIGURES = ['kitLength', 'kitsSeparate', 'kitsPooled', 'bolts'] as const;

const count = (value: number): TemplateResult => spokenText(String(value), String(value));

function fabricRow(fabric: KitFabric, shown: Shown): TemplateResult {
  const { voice } = shown;
  const { id, name, perKit, separate, pooled, saves, bolts, kit, backing } = fabric;
  const increment = incrementOf({ ...(kit && { yardage: kit }), ...(backing && { backing }) });
  const [unit] = unitsFor(increment);
  return html`<tr>
    <th scope="row">${swatchedName(id, name, shown)}</th>
    ${[perKit, separate].map((value) => html`<td class="figure">${amount(value, unit, voice)}</td>`)}
    <td class="figure">
      ${amount(pooled, unit, voice)}
      <div class="minor">
        ${sentence('kitsSaves', { amount: amount(saves, unit, voice) }, voice)}
      </div>
    </td>
    <td class="figure">
      ${count(bolts.bolts)}
      <div class="minor">
        ${sentence('kitsPerBolt', { kits: count(bolts.kitsPerBolt) }, voice)}
      </div>
      ${bolts.bolts > 1 ? html`<div class="minor">${sentence('boltRemnant', { amount: amount(bolts.remnant, unit, voice) }, voice)}</div>` : nothing}
    </td>
  </tr>`;
}

/** Each kit's own pieces against all kits from one length, and the bolts. */
const fabricTable = ({ fabrics }: Kits, shown: Shown): TemplateResult =>
  html`<table class="kits-table" part="table">
    <caption .textContent=${shown.voice.say('kitsTable')}></caption>
    <thead>
      <tr>
        <th scope="col" .textContent=${shown.voice.say('fabric')}></th>
        ${FIGURES.map(
          (name) =>
            html`<th scope="col" class="figure" .textContent=${shown.voice.say(name)}></th>`,
        )}
      </tr>
    </thead>
    <tbody>
      ${fabrics.map((fabric) => fabricRow(fabric, shown))}
    </tbody>
  </table>`;

/** A margin in hundredths of the price, down to a tenth of one. */
const percentOf = ({ share }: Margin, { measures }: Voice): string =>
  measures.count(share.times(100).toGrid('1/10', 'down').toNumber());

function costTable({ fabrics, price, kits, people }: Kits, { voice }: Shown) {
  if (price === undefined) return nothing;
  const row = (name: string, text: string): TemplateResult =>
    html`<tr>
      <th scope="row" .textContent=${name}></th>
      <td class="figure" translate="no" .textContent=${text}></td>
    </tr>`;
  return html`<table part="table">
    <caption .textContent=${voice.say('costTable')}></caption>
    <thead>
      <tr>
        <th scope="col" .textContent=${voice.say('costPart')}></th>
        <th scope="col" class="figure" .textContent=${voice.say('cost')}></th>
      </tr>
    </thead>
    <tbody>
      ${fabrics.map(({ name, cost }) => row(name, cost === undefined ? '' : moneyText(cost, voice)))}
    </tbody>
    <tfoot>
      ${row(voice.say('oneKit'), moneyText(price.cost, voice))}
      ${row(voice.say('allKits', { kits }), moneyText(price.total, voice))}
      ${price.price === undefined ? nothing : row(voice.say('soldFor'), moneyText(price.price, voice))}
      ${price.margin === undefined ? nothing : row(voice.say('leftOfKit', { percent: percentOf(price.margin, voice) }), moneyText(price.margin.gain, voice))}
      ${price.gain === undefined ? nothing : row(voice.say('leftOfAll', { people }), moneyText(price.gain, voice))}
    </tfoot>
  </table>`;
}

const madeBy = ({ makes }: Kits, { voice }: Shown): string =>
  makes
    .map(({ name, count }) => voice.say('times', { count, block: name }))
    .join(voice.say('comma'));

/** What all kits take, hold and cost. */
export function kitsAnswer(kits: Kits, shown: Shown): TemplateResult {
  const { voice, recipe } = shown;
  const names = fabricNames(recipe);
  return html`<p class="headline" part="headline">${sentence('kitsHeadline', { kits: count(kits.kits) }, voice)}</p>
    <p .textContent=${voice.say('kitMakes', { made: madeBy(kits, shown) })}></p>
    ${kits.warnings.map(
      (warning) => html`<p translate="no" .textContent=${said(warning, voice, names)}></p>`,
    )}
    <div class="lists">
      <div class="result">
        ${fabricTable(kits, shown)}
        <p class="minor" .textContent=${voice.say('pooledNote')}></p>
      </div>
      ${costTable(kits, shown)}
    </div>`;
}
