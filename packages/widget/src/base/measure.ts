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
