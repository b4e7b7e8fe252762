import {
  type CuttingPlan,
  cuttingRows,
  cuttingStepText,
  drawCuttingPlan,
  formatLength,
  type OnHand,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { measure, rectangleMeasure, spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import { drawingView } from '../drawing/drawingView.js';
import type { FabricAnswer } from './solving.js';

/** More rows than this are a blanket of drawings, and say nothing that the steps do not. */
const MOST_ROWS = 6;

/** What to buy, in the shop's own measure and the other one. */
function toBuy({ fabric, yardage }: FabricAnswer, voice: Voice): TemplateResult {
  const { buy, meters } = yardage;
  const spoken = formatLength(buy, { unit: 'yd', style: 'spoken' });
  const yards = spokenText(yardage.yards, spoken);
  const name = html`<span .textContent=${fabric ?? ''}></span>`;
  const metric = html`<bdi dir="ltr" translate="no" .textContent=${meters}></bdi>`;
  return html`<p class="headline" part="headline">
    ${sentence(fabric === undefined ? 'buy' : 'buyFabric', { yards, fabric: name }, voice)}
    <span class="minor">${sentence('meters', { meters: metric }, voice)}</span>
  </p>`;
}

/** What the amount is made up of, what is proven of it, and what is left. */
function reckoning({ yardage }: FabricAnswer, voice: Voice): TemplateResult {
  const { bare, spare, straightening, shrinkage, need, plan, leftOver, purchaseProven } = yardage;
  const shown = (value: Parameters<typeof measure>[0]) => measure(value, voice);
  const percent = html`<span
    translate="no"
    .textContent=${(plan.used * 100).toFixed(0)}
  ></span>`;
  const proof = plan.optimal
    ? sentence('proven', {}, voice)
    : purchaseProven
      ? sentence('purchaseProven', {}, voice)
      : sentence('unproven', { lowerBound: shown(plan.lowerBound) }, voice);
  return html`<p>
    ${sentence(
      'need',
      {
        bare: shown(bare),
        spare: shown(spare),
        straightening: shown(straightening),
        shrinkage: shown(shrinkage),
        need: shown(need),
      },
      voice,
    )}
    ${proof} ${sentence('share', { percent }, voice)}
    ${sentence('leftOver', { leftOver: rectangleMeasure(leftOver.width, leftOver.height, voice) }, voice)}
  </p>`;
}

function steps({ steps: cuts }: CuttingPlan, voice: Voice): TemplateResult {
  return html`<ol class="steps" part="steps" aria-label=${voice.say('steps')} start="0">
    ${cuts.map(
      ({ code, values }) =>
        html`<li
          translate="no"
          .textContent=${cuttingStepText(code, values, undefined, voice.write)}
        ></li>`,
    )}
  </ol>`;
}

function layout({ rows: listed, yardage: { plan } }: FabricAnswer, voice: Voice): TemplateResult {
  const numbers = listed.map((row) => row + 1);
  const rows = cuttingRows(plan);
  const shown = Array.from({ length: Math.min(rows, MOST_ROWS) }, (_, index) => index + 1);
  return html`<div class="rows">
      ${shown.map(
        (row) => html`<figure>
          ${rows === 1 ? nothing : html`<figcaption .textContent=${voice.say('row', { row, rows })}></figcaption>`}
          ${drawingView(drawCuttingPlan(plan, { row, numbers }), voice)}
        </figure>`,
      )}
    </div>
    ${rows > MOST_ROWS ? html`<p .textContent=${voice.say('moreRows')}></p>` : nothing}`;
}

/** How many sets a piece on hand gives. */
export const onHandAnswer = ({ sets, proven }: OnHand, voice: Voice): TemplateResult =>
  html`<p
    class="headline"
    part="headline"
    .textContent=${voice.say(proven ? 'sets' : 'setsUnproven', { sets })}
  ></p>`;

/** One fabric: what to buy, how to cut it, and where everything lies. */
export const fabricAnswer = (answer: FabricAnswer, voice: Voice): TemplateResult =>
  html`<section class="sheet" part="sheet">
    ${toBuy(answer, voice)} ${reckoning(answer, voice)} ${steps(answer.yardage.plan, voice)}
    ${layout(answer, voice)}
  </section>`;
