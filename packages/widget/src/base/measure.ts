import type { LengthInput, Size } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import type { Voice } from './voice.js';

/**
 * A number to cut by: figures for the eye, words for the ear. Both are set as text content, on
 * elements of their own that translators leave alone: a translator that had wrapped a text node would
 * otherwise keep showing the old number.
 */
export const spokenText = (figures: string, spoken: string): TemplateResult =>
  html`<bdi dir="ltr" class="number"
    ><span aria-hidden="true" translate="no" .textContent=${figures}></span
    ><span class="unseen" translate="no" .textContent=${spoken}></span
  ></bdi>`;

export const measure = (
  value: LengthInput,
  { measures }: Voice,
  write = measures.figures,
): TemplateResult => spokenText(write(value), measures.spoken(value));

/** A measure in a table whose caption names the unit. */
export const bareMeasure = (value: LengthInput, voice: Voice): TemplateResult =>
  measure(value, voice, voice.measures.bare);

/** Width by length, as it is cut. */
export function rectangleMeasure(
  width: LengthInput,
  length: LengthInput,
  voice: Voice,
  write = voice.measures.figures,
): TemplateResult {
  const { spoken } = voice.measures;
  return spokenText(
    voice.say('by', { width: write(width), height: write(length) }),
    voice.say('by', { width: spoken(width), height: spoken(length) }),
  );
}

/** A size: one number for a square, else width by height. */
export const sizeMeasure = ({ width, height }: Size, voice: Voice): TemplateResult =>
  width.equals(height) ? measure(width, voice) : rectangleMeasure(width, height, voice);

/** A table's name, and the unit of the figures in it. */
export const measuredCaption = (words: string, voice: Voice): TemplateResult =>
  html`<caption>
    <span .textContent=${words}></span>
    <span
      class="unit"
      .textContent=${voice.say(voice.measures.units === 'metric' ? 'centimeters' : 'inches')}
    ></span>
  </caption>`;
