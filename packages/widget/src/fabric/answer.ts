import { html, nothing, type TemplateResult } from 'lit';
import { amountOf } from '../base/amount.js';
import type { Voice } from '../base/voice.js';
import { onHandAnswer } from './onHandAnswer.js';
import { precutAnswer, precutsNeeded } from './precutAnswer.js';
import type { FabricAnswer } from './solving.js';
import { shopUnit, yardsAnswer } from './yardsAnswer.js';

/**
 * One fabric: what there is of it, what to buy, how to cut it, and where everything lies.
 *
 * @param asked the method that was asked for, or an empty text
 */
export const fabricAnswer = (
  { fabric, rows, onHand, yardage, precuts }: FabricAnswer,
  asked: string,
  voice: Voice,
): TemplateResult =>
  html`<section class="sheet" part="sheet">
    ${yardage === undefined ? nothing : yardsAnswer(fabric, yardage, rows, asked, voice)}
    ${precuts === undefined ? nothing : precutAnswer(fabric, precuts, rows, voice)}
    ${
      onHand === undefined
        ? nothing
        : html`<div class="on-hand">${onHandAnswer(fabric, onHand, rows, voice)}</div>`
    }
  </section>`;

/** The same in a sentence, for the ear. */
export function spokenAnswer({ fabric, yardage, precuts }: FabricAnswer, voice: Voice): string {
  const of = { fabric: fabric ?? '' };
  if (yardage !== undefined) {
    const { buy, increment } = yardage;
    const { spoken: yards } = amountOf(buy, shopUnit(increment), voice.measures);
    return voice.say(fabric === undefined ? 'buy' : 'buyFabric', { yards, ...of });
  }
  if (precuts !== undefined) return precutsNeeded(fabric, precuts, voice);
  return voice.say(fabric === undefined ? 'handAll' : 'handAllFabric', of);
}

/** What a cart needs of one fabric: a length, or precuts; undefined where nothing is to be bought. */
export function toCart({ fabric: name, yardage, precuts }: FabricAnswer) {
  const fabric = name ?? null;
  if (yardage !== undefined) {
    const { buy, increment, yards, meters, plan } = yardage;
    const method = 'method' in plan ? plan.method : (plan.across?.method ?? 'plain');
    const increments = buy.dividedBy(increment).toNumber();
    return { fabric, length: buy, increment, increments, yards, meters, method };
  }
  if (precuts === undefined) return undefined;
  const { kind, needed, packs, packOf } = precuts;
  return { fabric, precut: kind, count: needed, packs, packOf };
}
