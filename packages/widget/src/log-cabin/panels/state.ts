import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Measures } from '../../base/measures.js';
import { rewritten } from '../../base/rewritten.js';
import { type PanelTexts, panelLengths } from './inputs.js';

/** A pause this long after the last key means that somebody has finished typing. */
const PAUSE = 700;

/** Panels follow what is typed above them this much later, so that the sheet is not kept waiting. */
const MOMENT = 100;

/** From one length to another, each by itself. */
const TO = /(\s+to\s+)/i;

/** What the reader has typed in the panels of an element, and which are open. */
export class PanelState implements ReactiveController {
  texts: PanelTexts = {};
  /** Whether the reader has paused, so that what is wrong may be said. */
  settled = true;
  readonly #host: ReactiveControllerHost;
  readonly #open = new Map<string, boolean>();
  /** Whether anything has changed in the panels themselves since they were shown. */
  #changed = false;
  #shown = '';
  #later: ReturnType<typeof setTimeout> | undefined;
  #pause: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#later);
    this.#shown = '';
    this.settle();
  }

  /**
   * Whether the panels are to be shown anew, for what stands in the element’s own inputs. While somebody
   * types there, they follow when the next key is a moment away.
   */
  follows(settings: object, typing: boolean): boolean {
    const now = JSON.stringify(settings);
    clearTimeout(this.#later);
    if (typing && !this.#changed && now !== this.#shown && this.#shown !== '') {
      this.#later = setTimeout(() => this.#update(), MOMENT);
      return false;
    }
    this.#changed = false;
    this.#shown = now;
    return true;
  }

  #update(): void {
    this.#changed = true;
    this.#host.requestUpdate();
  }

  type(texts: PanelTexts, pausing = true): void {
    this.texts = { ...this.texts, ...texts };
    clearTimeout(this.#pause);
    this.settled = !pausing;
    if (pausing) this.#pause = setTimeout(() => this.settle(), PAUSE);
    this.#update();
  }

  /** The reader has paused or left the input. */
  settle(): void {
    clearTimeout(this.#pause);
    this.settled = true;
    this.#update();
  }

  /** As the reader has left it, else as the page wishes it. */
  isOpen(panel: string, atFirst: boolean): boolean {
    return this.#open.get(panel) ?? atFirst;
  }

  setOpen(panel: string, open: boolean): void {
    this.#open.set(panel, open);
    this.#update();
  }

  /** The reader’s change of units: what was typed is written anew. */
  rewrite(before: Measures, after: Measures): void {
    const texts = panelLengths.flatMap((field) => {
      const typed = this.texts[field];
      if (typed === undefined) return [];
      const parts = typed.split(TO);
      const written = parts.map((part, at) =>
        at % 2 === 1 ? part : rewritten(part, before, after),
      );
      return [[field, written.join('')] as const];
    });
    this.texts = { ...this.texts, ...Object.fromEntries(texts) };
  }
}
