import { type Drawing, toSvg } from '@eighths/core';
import type { nothing, TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';
import { type Action, actionRow, actionsNamed } from './actionRow.js';
import { copyInto, paperCss } from './answerCopy.js';
import { csv } from './csv.js';
import { linkWith } from './link.js';
import { plainText, readTable } from './plainText.js';
import { printAlone } from './printAlone.js';
import { saveFile } from './saveFile.js';

/** Milliseconds that the clipboard may take before the text is laid out. */
const PATIENCE = 1000;

/** What the actions need to know of the element whose answer it is. */
export interface Answering {
  readonly host: HTMLElement & { requestUpdate(): void };
  /** The element's style sheets, for its copy on paper. */
  readonly css: () => string;
  /** The drawing that is shown. */
  readonly drawing: () => (() => Drawing) | undefined;
  /** What stands in the inputs, by the names of attributes. */
  readonly settings: () => Readonly<Record<string, string>>;
}

/** What a reader does with an answer: copies it, saves it, prints it, or links to it. */
export class AnswerActions {
  readonly #of: Answering;
  #note = '';
  #byHand: string | undefined;

  constructor(of: Answering) {
    this.#of = of;
  }

  /** The row of actions that a page names. */
  row(named: string | undefined, voice: Voice): TemplateResult | typeof nothing {
    const drawn = this.#of.drawing() !== undefined;
    const actions = actionsNamed(named).filter((action) => action !== 'svg' || drawn);
    const act = (action: Action): void => this.#act(action, voice);
    return actionRow({ voice, actions, act, note: this.#note, byHand: this.#byHand });
  }

  #act(action: Action, voice: Voice): void {
    const { host, css, drawing, settings } = this.#of;
    const root = host.shadowRoot;
    if (root === null) return;
    const name = host.localName.replace(/^eighths-/, '');
    this.#tell('');
    switch (action) {
      case 'copy':
        void this.#copy(plainText(root), voice);
        break;
      case 'csv': {
        const tables = [...root.querySelectorAll('table')].map(readTable);
        saveFile(`${name}.csv`, csv(tables), 'text/csv');
        break;
      }
      case 'svg': {
        const shown = drawing()?.();
        const words = voice.drawingWords;
        if (shown === undefined) break;
        const svg = toSvg(shown, { write: voice.measures.figures, words });
        saveFile(`${name}.svg`, svg, 'image/svg+xml');
        break;
      }
      case 'print': {
        const fill = (page: Document): void => copyInto(page, host, css());
        const title = document.title;
        printAlone(root, { title, css: paperCss, fill }, () => window.print());
        break;
      }
      case 'link':
        void this.#copy(linkWith(location.href, host.id || host.localName, settings()), voice);
    }
  }

  /**
   * A page may not be allowed the clipboard, or nobody may answer whether it is: then the text is laid
   * out to be copied by hand.
   */
  async #copy(text: string, voice: Voice): Promise<void> {
    const layOut = (): void => this.#tell(voice.say('copyByHand'), text);
    const waiting = setTimeout(layOut, PATIENCE);
    try {
      await navigator.clipboard.writeText(text);
      this.#tell(voice.say('copied'));
    } catch {
      layOut();
    } finally {
      clearTimeout(waiting);
    }
  }

  #tell(note: string, byHand?: string): void {
    this.#note = note;
    this.#byHand = byHand;
    this.#of.host.requestUpdate();
  }
}
