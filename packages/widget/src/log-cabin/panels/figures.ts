import type { Length } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { spokenText } from '../../base/measure.js';
import type { Voice } from '../../base/voice.js';
import type { MessageName } from '../../messages/messages.js';

/** A number that is no length to cut, to so many decimals, for the eye and for the ear. */
function figure(
  value: number,
  places: number,
  [seen, heard]: readonly [MessageName, MessageName],
  { measures, say }: Voice,
): TemplateResult {
  const number = measures.count(Number(value.toFixed(places)));
  return spokenText(say(seen, { number }), say(heard, { number }));
}

/** An area in whole square inches or centimeters: it is there to compare, not to cut by. */
export function areaText(squareInches: Length, { measures }: Voice): string {
  const metric = measures.units === 'metric';
  const square = metric ? squareInches.times('2.54').times('2.54') : squareInches;
  return square.toGrid(1, 'nearest').toString();
}

/** A share in tenths of a percent. */
export const percent = (share: Length, voice: Voice): TemplateResult =>
  figure(share.times(100).toNumber(), 1, ['percent', 'spokenPercent'], voice);

/** An angle to a tenth of a degree. */
export const angle = (degrees: number, voice: Voice): TemplateResult =>
  figure(degrees, 1, ['degrees', 'spokenDegrees'], voice);

const inInches = (length: Length | number): number =>
  typeof length === 'number' ? length : length.toNumber();

/** A radius, to a tenth of an inch or of a centimeter. */
export const radius = (length: Length | number, voice: Voice): TemplateResult =>
  voice.measures.units === 'metric'
    ? figure(inInches(length) * 2.54, 1, ['roughCentimeters', 'spokenRoughCentimeters'], voice)
    : figure(inInches(length), 1, ['roughInches', 'spokenRoughInches'], voice);

/** How far a corner lies from an arc: thousandths of an inch, hundredths of a millimeter. */
export const offArc = (length: Length | number, voice: Voice): TemplateResult =>
  voice.measures.units === 'metric'
    ? figure(inInches(length) * 25.4, 2, ['roughMillimeters', 'spokenRoughMillimeters'], voice)
    : figure(inInches(length), 3, ['roughInches', 'spokenRoughInches'], voice);

/** The parts of a list, one below the other. */
export const lines = (parts: readonly TemplateResult[]): TemplateResult =>
  html`${parts.map((part) => html`<div>${part}</div>`)}`;
