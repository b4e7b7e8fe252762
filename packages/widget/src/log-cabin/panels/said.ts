import type { LengthInput, Notice, SentenceValues } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { measure } from '../../base/measure.js';
import type { MessageName } from '../../messages/messages.js';
import type { BlocklessContext } from './panel.js';

type Voices = Pick<BlocklessContext, 'voice' | 'spoken'>;

/** A sentence with figures for the eye, and with words for the ear. */
const twice = (seen: string, heard: string): TemplateResult =>
  seen === heard
    ? html`<span translate="no" .textContent=${seen}></span>`
    : html`<span aria-hidden="true" translate="no" .textContent=${seen}></span
        ><span class="unseen" translate="no" .textContent=${heard}></span>`;

/** What a plan says. */
export const saidNotice = (notice: Notice<string>, { voice, spoken }: Voices): TemplateResult =>
  twice(voice.notice(notice), spoken.notice(notice));

/** A message, its places filled. */
export const said = (
  name: MessageName,
  values: SentenceValues,
  { voice, spoken }: Voices,
): TemplateResult => twice(voice.say(name, values), spoken.say(name, values));

/** Several lengths in one place. */
export const measures = (values: readonly LengthInput[], { voice }: Voices): TemplateResult =>
  html`${values.map(
    (value, index) => html`${index === 0 ? '' : ', '}${measure(value, voice, voice.measures.bare)}`,
  )}`;

export const number = (value: number): TemplateResult =>
  html`<span translate="no" .textContent=${String(value)}></span>`;

/** What follows from pressing it stands in its name. */
export const action = (name: string, act: () => void, className = ''): TemplateResult =>
  html`<button
    type="button"
    class=${className}
    part="button"
    @click=${act}
    .textContent=${name}
  ></button>`;

/** What is said beside an answer, one line each. */
export const notes = (
  all: readonly Notice<string>[],
  voices: Voices,
  className = 'notes',
): TemplateResult =>
  html`${
    all.length === 0
      ? ''
      : html`<ul class=${className}>
          ${all.map((each) => html`<li>${saidNotice(each, voices)}</li>`)}
        </ul>`
  }`;
