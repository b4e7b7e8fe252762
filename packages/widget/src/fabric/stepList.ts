import {
  type CuttingStepCode,
  cuttingSentences,
  cuttingStepText,
  type JoinStepCode,
  type OnHandStepCode,
  type PackStepCode,
  type PrecutStepCode,
  packSentences,
  packStepText,
  type Step,
} from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';

/** All that a plan for fabric may tell somebody to do. */
export type FabricStep = Step<
  CuttingStepCode | PackStepCode | JoinStepCode | OnHandStepCode | PrecutStepCode
>;

const isIn = <Code extends string>(
  sentences: Readonly<Record<Code, string>>,
  code: string,
): code is Code => Object.hasOwn(sentences, code);

function stepText(step: FabricStep, voice: Voice): string {
  const { code, values } = step;
  const own = voice.catalog?.sentences;
  if (isIn(cuttingSentences, code)) {
    return cuttingStepText(code, values, { ...cuttingSentences, ...own?.cutting }, voice.write);
  }
  if (isIn(packSentences, code)) {
    return packStepText(code, values, { ...packSentences, ...own?.pack }, voice.write);
  }
  return voice.notice(step);
}

/** What to do, in order; `start` is the first one's number. */
export const stepList = (
  steps: readonly FabricStep[],
  start: number,
  voice: Voice,
): TemplateResult =>
  html`<ol class="steps" part="steps" aria-label=${voice.say('steps')} start=${start}>
    ${steps.map((step) => html`<li translate="no" .textContent=${stepText(step, voice)}></li>`)}
  </ol>`;
