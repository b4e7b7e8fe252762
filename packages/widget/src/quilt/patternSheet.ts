import type { EighthsError } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';
import { blocksSection } from './blocksSection.js';
import { buyTable } from './buyTable.js';
import { cuttingSection } from './cutting.js';
import { finishingSections } from './finishingSection.js';
import { folded } from './folded.js';
import { kitsForm, type QuiltForm, quiltForm } from './form.js';
import { kitsAnswer } from './kitsSection.js';
import { quiltSheet } from './quiltSheet.js';
import { said } from './said.js';
import { fabricNames, type Shown } from './shown.js';
import { topSection } from './topSection.js';

/** All that the element shows. */
export interface PatternSheet {
  /** Undefined until there is a quilt. */
  readonly shown: Shown | undefined;
  /** Undefined on a page to read, and where there is no recipe. */
  readonly form: QuiltForm | undefined;
  readonly voice: Voice;
  /** What is wrong and has no input in sight: by the path of what it is about. */
  readonly faults: readonly (readonly [path: string, error: EighthsError])[];
  /** How what is shown stands to what was asked; empty where it is the answer. */
  readonly standing: string;
  /** What is said in the place of kits that are not there. */
  readonly kitsStanding: string;
}

/** Nothing of a recipe is markup: path and sentence are texts. */
const faultLine = (path: string, error: EighthsError, voice: Voice): TemplateResult =>
  html`<p class="error" role="alert">
    ${path === 'recipe' ? nothing : html`<code translate="no" .textContent=${path}></code>`}
    <span .textContent=${voice.error(error)}></span>
  </p>`;

/** What a person should know before cutting, each once. */
function warnings({ plan, voice, recipe }: Shown): TemplateResult | typeof nothing {
  const names = fabricNames(recipe);
  const told = new Set(plan.warnings.map((warning) => said(warning, voice, names)));
  if (told.size === 0) return nothing;
  return html`<ul class="warnings" part="warnings" aria-label=${voice.say('warnings')}>
    ${[...told].map((text) => html`<li translate="no" .textContent=${text}></li>`)}
  </ul>`;
}

function kitsPart(sheet: PatternSheet): TemplateResult | typeof nothing {
  const { shown, form, voice, kitsStanding } = sheet;
  if (shown === undefined || (form === undefined && shown.kits === undefined)) return nothing;
  const { kits } = shown;
  const contents = () =>
    html`${form === undefined ? nothing : kitsForm(form)}
    ${kits === undefined ? html`<p class="kits-none" .textContent=${kitsStanding}></p>` : kitsAnswer(kits, shown)}`;
  const title = html`<span .textContent=${voice.say('kits')}></span>`;
  return html`<section class="wide part">${folded('kits', title, contents, shown)}</section>`;
}

/** The pattern in the order of a printed one: the quilt, what to buy, how to cut, how to sew. */
export function patternSheet(sheet: PatternSheet): TemplateResult {
  const { shown, form, voice, faults, standing } = sheet;
  return html`${shown === undefined ? nothing : quiltSheet(shown)}
    <div>
      ${form === undefined ? nothing : quiltForm(form)}
      ${faults.map(([path, error]) => faultLine(path, error, voice))}
      <p class="standing" .textContent=${standing}></p>
      ${shown === undefined ? nothing : [buyTable(shown), warnings(shown)]}
    </div>
    ${
      shown === undefined
        ? nothing
        : html`${cuttingSection(shown)}
            ${blocksSection(shown)}
            <div class="lists wide">
              <div class="result">${topSection(shown)}</div>
              <div class="result">${finishingSections(shown)}</div>
            </div>
            ${kitsPart(sheet)}`
    }`;
}
