import {
  formatMoney,
  type Length,
  type LengthInput,
  type Money,
  type QuiltFabric,
} from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { amountOf, shopUnit } from '../base/amount.js';
import { spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';

/** What the shop cuts a fabric in. */
export const incrementOf = ({
  yardage,
  backing,
}: Pick<QuiltFabric, 'yardage' | 'backing'>): Length | undefined => (yardage ?? backing)?.increment;

/** An amount of fabric as the shop measures it. */
export function amount(value: LengthInput, unit: 'yd' | 'm', voice: Voice): TemplateResult {
  const { figures, spoken } = amountOf(value, unit, voice.measures);
  return spokenText(figures, spoken);
}

/** The shop's own measure first, then the other. */
export const unitsFor = (increment: Length | undefined): readonly ['yd' | 'm', 'yd' | 'm'] =>
  increment !== undefined && shopUnit(increment) === 'm' ? ['m', 'yd'] : ['yd', 'm'];

/** What to buy, in the shop's measure and small in the other one. */
export function bothAmounts(
  value: LengthInput,
  increment: Length | undefined,
  voice: Voice,
): TemplateResult {
  const [own, other] = unitsFor(increment);
  return html`${amount(value, own, voice)}
    <div class="minor">${sentence('orAmount', { amount: amount(value, other, voice) }, voice)}</div>`;
}

export const moneyText = (value: Money, { measures }: Voice): string =>
  formatMoney(value, measures.locale);

export const moneyCell = (value: Money | undefined, voice: Voice): TemplateResult =>
  html`<td
    class="figure"
    translate="no"
    .textContent=${value === undefined ? '' : moneyText(value, voice)}
  ></td>`;
