import { html, type TemplateResult } from 'lit';
import type { Voice } from './voice.js';

/** Where somebody is in a row of drawings. */
export interface Stepping {
  readonly voice: Voice;
  /** What is drawn, in words. */
  readonly name: string;
  readonly at: number;
  readonly steps: number;
  readonly goTo: (step: number) => void;
}

/** Back and on through the drawings. At either end a button stays, so that the focus does. */
export function stepper({ voice, name, at, steps, goTo }: Stepping): TemplateResult {
  const button = (message: 'back' | 'next', to: number) => {
    const there = to >= 0 && to < steps;
    return html`<button
      type="button"
      part="button"
      aria-disabled=${there ? 'false' : 'true'}
      @click=${() => goTo(there ? to : at)}
      .textContent=${voice.say(message)}
    ></button>`;
  };
  return html`<div class="stepper" role="group" aria-label=${voice.say('show')}>
    ${button('back', at - 1)}
    <span class="where" aria-live="polite" .textContent=${name}></span>
    ${button('next', at + 1)}
  </div>`;
}
