import {
  Length,
  length,
  type Size,
  type SizeInput,
  type UnitDefinition,
  type UnitPlan,
} from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { measure, sizeMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import type { MessageName } from '../messages/messages.js';
import { nameOf } from './words.js';

/** The unit in numbers: what it is named by, and what it is trimmed to or cut from. */
interface Headline {
  readonly name: MessageName;
  readonly values: Readonly<Record<string, Length | Size | string>>;
}

const sizeOf = (input: SizeInput): Size | Length =>
  typeof input === 'object' && 'width' in input
    ? { width: length(input.width), height: length(input.height) }
    : length(input);

/** What is trimmed has its two sizes; a shape that is only cut has its strip or its square. */
export function headlineOf(
  plan: UnitPlan,
  { finished: meaning }: UnitDefinition,
  finished: SizeInput | undefined,
  voice: Voice,
): Headline {
  const { trims, trimTo, strip, cuts } = plan;
  const [cut] = cuts;
  if (trims > 0 || finished === undefined || cut === undefined) {
    return { name: 'headlineTrim', values: { finished: plan.finished, trimTo } };
  }
  const values = { finished: sizeOf(finished), meaning: nameOf(meaning, voice, 'named') };
  if (strip === undefined) {
    return {
      name: 'headlineCut',
      values: { ...values, cut: { width: cut.width, height: cut.height } },
    };
  }
  return strip.width.equals(cut.height)
    ? { name: 'headlineStrip', values: { ...values, cut: strip.width } }
    : { name: 'headlineSet', values: { ...values, cut: strip.step } };
}

function shown(value: Length | Size | string, voice: Voice): TemplateResult {
  if (typeof value === 'string') return html`<span .textContent=${value}></span>`;
  return value instanceof Length ? measure(value, voice) : sizeMeasure(value, voice);
}

export const headline = ({ name, values }: Headline, voice: Voice): TemplateResult => {
  const places = Object.entries(values).map(([place, value]) => [place, shown(value, voice)]);
  return html`<p class="headline" part="headline">
    ${sentence(name, Object.fromEntries(places), voice)}
  </p>`;
};
