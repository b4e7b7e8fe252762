import type { EighthsError } from '@eighths/core';

/** What an element makes of its settings. */
export interface ElementModel<Plan> {
  readonly spec: unknown;
  readonly plan?: Plan;
  /** What a change tells besides: how many blocks, what to buy. */
  readonly more?: ChangeExtras;
  /** By the input that they are about. */
  readonly faults: ReadonlyMap<string, EighthsError>;
}

/** What a change tells besides spec and plan. */
export interface ChangeExtras {
  /** How many blocks are cut. */
  readonly blocks?: number;
  /** How many units are cut. */
  readonly units?: number;
  /** What a cart needs, where there is something to buy. */
  readonly buy?: unknown;
}

/** What `eighths-change` carries: plain JSON. */
export interface ChangeDetail extends ChangeExtras {
  /** The payload's schema. */
  readonly version: 1;
  readonly spec: unknown;
  readonly plan: unknown;
}

/** What `eighths-error` carries: plain JSON. */
export interface ErrorDetail {
  readonly code: string;
  /** The attribute whose text is at fault. */
  readonly field: string;
  readonly values: unknown;
}

const plainJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** Tells the page what has become of an element's settings, once each. */
export class Telling {
  readonly #host: EventTarget;
  #change: string | undefined;
  #error: string | undefined;

  constructor(host: EventTarget) {
    this.#host = host;
  }

  /** There is a plan. */
  change({ spec, plan, more }: ElementModel<unknown>): void {
    const text = JSON.stringify({ spec, plan, ...more });
    const first = this.#change === undefined;
    this.#error = undefined;
    if (text === this.#change) return;
    this.#change = text;
    // What the page itself asked for is no change.
    if (first) return;
    this.#dispatch('eighths-change', { version: 1, ...JSON.parse(text) });
  }

  /** There is none: the first fault is told. */
  error({ faults }: ElementModel<unknown>): void {
    const [fault] = faults;
    if (fault === undefined) return;
    const [field, { code, values }] = fault;
    const detail = { code, field, values: plainJson(values) };
    const text = JSON.stringify(detail);
    if (text === this.#error) return;
    this.#error = text;
    // The next plan is a change again, even where it is the last one mended.
    this.#change = '';
    this.#dispatch('eighths-error', detail);
  }

  #dispatch(name: string, detail: ChangeDetail | ErrorDetail): void {
    this.#host.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}
