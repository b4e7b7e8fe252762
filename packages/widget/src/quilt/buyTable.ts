import type { Length, QuiltFabric } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { measure, sizeMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { amount, bothAmounts, incrementOf, moneyCell, moneyText, unitsFor } from './amounts.js';
import { type Shown, tintOf } from './shown.js';

/** What a fabric is for, once for each purpose. */
function purposes({ role, backing }: QuiltFabric, { voice }: Shown): string {
  const back = voice.say('forBacking');
  const told = [role, backing !== undefined && role !== 'backing' ? back : undefined];
  return told.filter((purpose) => purpose !== undefined).join(voice.say('comma'));
}

/** The swatch repeats the tint of the drawing; the name says it without color. */
export const swatchedName = (id: string, name: string, { recipe }: Pick<Shown, 'recipe'>) =>
  html`<span class="fabric-name"
    ><span class="swatch tint-${tintOf(recipe, id)}"></span><span .textContent=${name}></span
  ></span>`;

/** The swatch is the input of its fabric's color; what it shows is set when it stands on the page. */
function colorInput(id: string, name: string, { recipe, voice, coloring }: Shown) {
  const tint = tintOf(recipe, id);
  const onInput = ({ target }: Event): void => {
    if (target instanceof HTMLInputElement) coloring?.choose(tint, target.value);
  };
  return html`<span class="fabric-name"
    ><input
      type="color"
      part="input"
      data-tint=${tint}
      aria-label=${voice.say('colorOf', { fabric: name })}
      @input=${onInput}
    /><span .textContent=${name}></span
  ></span>`;
}

/** What the swatches are for, and the way back. */
function coloringNote({ coloring, voice }: Shown): TemplateResult | typeof nothing {
  if (coloring === undefined) return nothing;
  return html`<p class="minor coloring">
    <span .textContent=${voice.say('colors')}></span>
    ${
      coloring.any
        ? html`<button
            type="button"
            part="button"
            @click=${coloring.reset}
            .textContent=${voice.say('pageColors')}
          ></button>`
        : nothing
    }
  </p>`;
}

/** Only a width that is not that of most fabrics is worth saying. */
function widthNote({ width }: QuiltFabric, usual: Length | undefined, { voice }: Shown) {
  return usual === undefined || width.equals(usual)
    ? nothing
    : html`<div class="minor">
        ${sentence('usableWidth', { width: measure(width, voice) }, voice)}
      </div>`;
}

function fabricRow(fabric: QuiltFabric, priced: boolean, shown: Shown): TemplateResult {
  const { voice, plan } = shown;
  const { id, name, buy, price, cost } = fabric;
  const each = price?.per === 'meter' ? 'perMeter' : 'perYard';
  return html`<tr>
    <th scope="row">
      ${shown.coloring === undefined ? swatchedName(id, name, shown) : colorInput(id, name, shown)}
      <div class="minor" .textContent=${purposes(fabric, shown)}></div>
      ${widthNote(fabric, plan.fabrics[0]?.width, shown)}
    </th>
    <td class="figure">${bothAmounts(buy, incrementOf(fabric), voice)}</td>
    ${
      priced
        ? html`<td
              class="figure price"
              translate="no"
              .textContent=${price === undefined ? '' : voice.say(each, { money: moneyText(price.each, voice) })}
            ></td>
            ${moneyCell(cost, voice)}`
        : nothing
    }
  </tr>`;
}

/** The smallest package that is large enough, or else what is cut off a roll. */
function battingRow(columns: number, { plan: { batting, fabrics }, voice }: Shown) {
  if (batting === undefined) return nothing;
  const [packaged] = batting.packages;
  const [roll] = batting.roll;
  const [unit] = unitsFor(fabrics.map(incrementOf).find((each) => each !== undefined));
  const bought =
    packaged === undefined
      ? sentence(
          'ofRoll',
          { amount: amount(roll.buy, unit, voice), width: measure(batting.rollWidth, voice) },
          voice,
        )
      : sentence('package', { size: sizeMeasure(packaged.size, voice) }, voice);
  return html`<tr>
    <th scope="row" .textContent=${voice.say('batting')}></th>
    <td class="batting" colspan=${columns - 1}>
      ${bought}
      <div class="minor">
        ${sentence('atLeast', { size: sizeMeasure(batting.target, voice) }, voice)}
      </div>
    </td>
  </tr>`;
}

/** A line for each fabric, the batting, and what the fabrics cost where all have prices. */
export function buyTable(shown: Shown): TemplateResult {
  const { plan, voice } = shown;
  const priced = plan.fabrics.some(({ price }) => price !== undefined);
  const heads = priced ? (['price', 'cost'] as const) : [];
  const columns = 2 + heads.length;
  return html`<table class="buy" part="table">
    <caption .textContent=${voice.say('toBuy')}></caption>
    <thead>
      <tr>
        <th scope="col" .textContent=${voice.say('fabric')}></th>
        <th scope="col" class="figure" .textContent=${voice.say('buyAmount')}></th>
        ${heads.map(
          (head) =>
            html`<th scope="col" class="figure ${head}" .textContent=${voice.say(head)}></th>`,
        )}
      </tr>
    </thead>
    <tbody>
      ${plan.fabrics.map((fabric) => fabricRow(fabric, priced, shown))}
      ${battingRow(columns, shown)}
    </tbody>
    ${
      plan.cost === undefined
        ? nothing
        : html`<tfoot>
            <tr>
              <th scope="row" .textContent=${voice.say('allFabrics')}></th>
              <td></td>
              <td class="price"></td>
              ${moneyCell(plan.cost, voice)}
            </tr>
          </tfoot>`
    }
  </table>
  ${coloringNote(shown)}`;
}
