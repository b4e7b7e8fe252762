import { html, nothing, type TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';

/** What a reader can do with an answer. */
export const ACTIONS = ['copy', 'csv', 'svg', 'print', 'link'] as const;

export type Action = (typeof ACTIONS)[number];

/** All but the link: a page’s author asks for that, since it puts settings into the address. */
const USUAL: readonly Action[] = ['copy', 'csv', 'svg', 'print'];

/** The actions that a page names; the usual ones where it names none. */
export function actionsNamed(text: string | undefined): readonly Action[] {
  if (text === undefined) return USUAL;
  const words = text.toLowerCase().split(/[\s,]+/);
  return ACTIONS.filter((action) => words.includes(action));
}

/** What the row of actions needs to know. */
export interface ActionRow {
  readonly voice: Voice;
  readonly actions: readonly Action[];
  readonly act: (action: Action) => void;
  /** What has become of the last one. */
  readonly note: string;
  /** A text that the page may not put on the clipboard, for copying by hand. */
  readonly byHand: string | undefined;
}

/** What can be done with the answer, in a row below it. */
export function actionRow(row: ActionRow): TemplateResult | typeof nothing {
  const { voice, actions, act, note, byHand } = row;
  if (actions.length === 0) return nothing;
  const names = {
    copy: voice.say('copyText'),
    csv: voice.say('saveTables'),
    svg: voice.say('saveDrawing'),
    print: voice.say('printThis'),
    link: voice.say('copyLink'),
  };
  return html`<div class="actions wide" part="actions" role="group" aria-label=${voice.say('actions')}>
    ${actions.map(
      (action) => html`<button
        type="button"
        part="button"
        @click=${() => act(action)}
        .textContent=${names[action]}
      ></button>`,
    )}
    <span class="note" role="status" .textContent=${note}></span>
    ${
      byHand === undefined
        ? nothing
        : html`<textarea
            class="by-hand"
            part="input"
            readonly
            rows="4"
            aria-label=${voice.say('copyByHand')}
            .value=${byHand}
            @focus=${({ target }: Event) => target instanceof HTMLTextAreaElement && target.select()}
          ></textarea>`
    }
  </div>`;
}
