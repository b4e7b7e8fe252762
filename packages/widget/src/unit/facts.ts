import type { UnitPatch, UnitPlan } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { measure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';

const number = (value: number): TemplateResult =>
  html`<span translate="no" .textContent=${String(value)}></span>`;

function yields(plan: UnitPlan, voice: Voice): TemplateResult {
  const { yield: made, count, sets, leftOver, strip, cuts } = plan;
  const places = {
    made: number(made),
    count: number(count),
    sets: number(sets),
    leftOver: number(leftOver),
  };
  if (strip === undefined) return html`<li>${sentence('yields', places, voice)}</li>`;
  const { width, usable, perStrip, first } = strip;
  // A set is wider than each of its strips.
  const isSet = cuts.every(({ height }) => height.compareTo(width) < 0);
  const cut = {
    width: measure(width, voice),
    usable: measure(usable, voice),
    perStrip: number(perStrip),
  };
  return html`<li>${sentence('yields', places, voice)}</li>
    <li>
      ${sentence(isSet ? 'perSet' : 'perStrip', cut, voice)}
      ${first.sign() > 0 ? sentence('firstCut', { first: measure(first, voice) }, voice) : nothing}
    </li>`;
}

function bias({ bias: { outside, seams, sewnFirst } }: UnitPlan, voice: Voice): TemplateResult {
  const places = { outside: number(outside), seams: number(seams) };
  return html`<li>
    ${sentence('biasEdges', places, voice)}
    ${sewnFirst && seams > 0 ? sentence('sewnFirst', {}, voice) : nothing}
  </li>`;
}

/** How the threads run in the patches, each fabric named once. */
function grain({ patches }: UnitPlan, voice: Voice): readonly TemplateResult[] {
  const kinds = [
    ['straight', 'grainStraight'],
    ['diagonal', 'grainDiagonal'],
  ] as const;
  return kinds.flatMap(([kind, message]) => {
    const runs = (patch: UnitPatch): boolean => patch.grain === kind;
    const fabrics = [...new Set(patches.filter(runs).map(({ fabric }) => fabric))];
    if (fabrics.length === 0) return [];
    return html`<li .textContent=${voice.say(message, { fabrics: voice.list(fabrics) })}></li>`;
  });
}

function bonusOf({ bonus, steps }: UnitPlan, voice: Voice): TemplateResult | typeof nothing {
  if (bonus === undefined || steps.some(({ code }) => code === 'bonus')) return nothing;
  const places = { count: number(bonus.count), finished: measure(bonus.finished, voice) };
  return html`<li>${sentence('bonus', places, voice)}</li>`;
}

/** Yield, bias and grain: what a person knows before choosing a method. */
export function facts(plan: UnitPlan, voice: Voice): TemplateResult {
  const name = voice.say('facts');
  return html`<div class="facts">
    <p class="title" .textContent=${name}></p>
    <ul aria-label=${name}>
      ${yields(plan, voice)}${bias(plan, voice)}${grain(plan, voice)}${bonusOf(plan, voice)}
    </ul>
  </div>`;
}
