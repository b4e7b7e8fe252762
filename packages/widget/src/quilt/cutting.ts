import {
  type CuttingPlan,
  cuttingRows,
  cuttingSentences,
  cuttingStepText,
  type Drawing,
  drawCuttingPlan,
  type QuiltFabric,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { sentence } from '../base/sentence.js';
import { drawingView } from '../drawing/drawingView.js';
import { amount, incrementOf, unitsFor } from './amounts.js';
import { swatchedName } from './buyTable.js';
import { cutList } from './cutList.js';
import { folded } from './folded.js';
import { type Shown, TINTS, tintOf } from './shown.js';

/** More rows than these are a blanket of drawings, and say nothing that the steps do not. */
const MOST_ROWS = 6;

type Step = CuttingPlan['steps'][number];

/** A strip that is one piece, such as binding, is not subcut. */
function wholeStrip({ values }: Step, { width }: CuttingPlan): boolean {
  const { count1, length1, count2, width: strip } = values;
  return (
    strip !== undefined &&
    count1 === 1 &&
    count2 === undefined &&
    typeof length1 === 'object' &&
    'toJSON' in length1 &&
    width.equals(length1.toJSON())
  );
}

function stepText(step: Step, plan: CuttingPlan, { voice }: Shown): string {
  const { strips = 1, width = '' } = step.values;
  if (wholeStrip(step, plan)) {
    return voice.say(strips === 1 ? 'cutWholeOne' : 'cutWhole', { strips, width });
  }
  const sentences = { ...cuttingSentences, ...voice.catalog?.sentences.cutting };
  return cuttingStepText(step.code, step.values, sentences, voice.write);
}

const steps = (name: string, plan: CuttingPlan, shown: Shown): TemplateResult =>
  html`<ol class="steps" part="steps" aria-label=${name} start="0">
    ${plan.steps.map(
      (step) => html`<li translate="no" .textContent=${stepText(step, plan, shown)}></li>`,
    )}
  </ol>`;

/** All pieces in their fabric's tint: the numbers tell them apart. */
function inTint(drawing: Drawing, tint: number): Drawing {
  const name = (index: number): string => `tint ${index}`;
  return {
    ...drawing,
    fabrics: Array.from({ length: TINTS }, (_, index) => name(index)),
    shapes: drawing.shapes.map((shape) =>
      shape.kind === 'area' && shape.fabric !== undefined
        ? { ...shape, fabric: name(tint) }
        : shape,
    ),
  };
}

function layout(plan: CuttingPlan, tint: number, { voice }: Shown): TemplateResult {
  const rows = cuttingRows(plan);
  const drawn = Array.from({ length: Math.min(rows, MOST_ROWS) }, (_, index) => index + 1);
  return html`<div class="rows">
      ${drawn.map(
        (row) => html`<figure>
          ${rows === 1 ? nothing : html`<figcaption .textContent=${voice.say('row', { row, rows })}></figcaption>`}
          ${drawingView(inTint(drawCuttingPlan(plan, { row }), tint), voice, TINTS)}
        </figure>`,
      )}
    </div>
    ${rows > MOST_ROWS ? html`<p .textContent=${voice.say('moreRows')}></p>` : nothing}`;
}

/** The cuts, what is done, and where everything lies. */
function fabricContents(fabric: QuiltFabric, shown: Shown): TemplateResult {
  const { voice, recipe } = shown;
  const { id, name, cuts, yardage, backing } = fabric;
  const tint = tintOf(recipe, id);
  return html`${
    yardage === undefined
      ? nothing
      : html`<div class="cutting">
          <div>
            ${cutList(voice.say('cutList'), cuts, shown)}
            ${steps(voice.say('steps', { fabric: name }), yardage.plan, shown)}
          </div>
          ${layout(yardage.plan, tint, shown)}
        </div>`
  }
  ${
    backing === undefined
      ? nothing
      : html`<div class="cutting">
          ${steps(voice.say('backingSteps', { fabric: name }), backing.plan, shown)}
          ${layout(backing.plan, tint, shown)}
        </div>`
  }`;
}

/** Fabric by fabric, each folded away. */
export function cuttingSection(shown: Shown): TemplateResult {
  const { plan, voice } = shown;
  return html`<section class="wide part">
    <h3 .textContent=${voice.say('howToCut')}></h3>
    <p class="minor" .textContent=${voice.say('piecesNumbered')}></p>
    ${plan.fabrics.map((fabric) => {
      const { id, name, buy } = fabric;
      const [unit] = unitsFor(incrementOf(fabric));
      const title = sentence(
        'cutFabric',
        { fabric: swatchedName(id, name, shown), yards: amount(buy, unit, voice) },
        voice,
      );
      return folded(`cut ${id}`, title, () => fabricContents(fabric, shown), shown);
    })}
  </section>`;
}
