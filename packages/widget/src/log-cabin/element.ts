import { drawLogCabin, type LogCabin, type LogCabinPiece } from '@eighths/core';
import {
  html,
  nothing,
  type PropertyDeclarations,
  type PropertyValues,
  type TemplateResult,
} from 'lit';
import { define } from '../base/define.js';
import { EighthsElement, fieldProperties } from '../base/element.js';
import type { Measures, Units } from '../base/measures.js';
import { rewritten } from '../base/rewritten.js';
import type { Voice } from '../base/voice.js';
import { looks } from '../look/looks.js';
import { cutList, stripList } from './cutList.js';
import { type GivenSettings, withDefaults } from './defaults.js';
import {
  type LogCabinField,
  type LogCabinSettings,
  lengthFields,
  logCabinFields,
} from './fields.js';
import { isInSight, logCabinForm } from './form.js';
import { type LogCabinModel, logCabinModel } from './model.js';
import { logCabinSheet, sheetSteps } from './sheet.js';
import { trimChart } from './trimChart.js';

/** `<eighths-log-cabin>`: a log cabin block to type in, drawn, with its cut list and trim chart. */
export class EighthsLogCabin extends EighthsElement<LogCabinField, LogCabin, LogCabinModel> {
  static override readonly styles = looks;
  static override properties: PropertyDeclarations = {
    ...EighthsElement.properties,
    ...fieldProperties(logCabinFields),
    at: { state: true },
  };

  /** The drawing that is shown: 0 is the whole block, then the rounds step by step. */
  declare protected at: number;

  protected override readonly fields = logCabinFields;

  constructor() {
    super();
    this.at = 0;
  }

  /** Registers the element, once: `EighthsLogCabin.define()`. */
  static define(tag = 'eighths-log-cabin', registry?: CustomElementRegistry): void {
    define(tag, EighthsLogCabin, registry);
  }

  /** What all blocks take, ready for a cutting plan; empty until there is a plan. */
  get pieces(): readonly LogCabinPiece[] {
    const blocks = this.model?.more.blocks ?? 1;
    return (this.plan?.pieces ?? []).map((piece) => ({ ...piece, count: piece.count * blocks }));
  }

  protected override fill(given: GivenSettings, units: Units): LogCabinSettings {
    return withDefaults(given, units);
  }

  protected override readModel(settings: LogCabinSettings, measures: Measures): LogCabinModel {
    return logCabinModel(settings, measures);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const { plan } = this;
    if (plan === undefined) return;
    if (!this.touched || !this.settled || this.stale) return;
    const { finished, unfinished, center, rounds } = plan;
    this.summary = this.voice().speak('summary', {
      finished,
      unfinished,
      center: center.finished,
      rounds: rounds.length,
    });
  }

  /** The reader's change of units keeps the block: what stands in the inputs is written anew. */
  #setUnits(units: string): void {
    const before = this.voice().measures;
    this.units = units;
    const after = this.voice().measures;
    const texts = lengthFields.map((field) => [
      field,
      rewritten(this.settings?.[field] ?? '', before, after),
    ]);
    this.type(Object.fromEntries(texts), false);
  }

  protected override holdsLength(field: string): boolean {
    return lengthFields.some((each) => each === field);
  }

  #form(settings: LogCabinSettings, voice: Voice): TemplateResult {
    return logCabinForm({
      voice,
      settings,
      plan: this.model?.plan,
      target: lengthFields.find((each) => each === this.target) ?? 'finished',
      units: this.shownUnits,
      faultAt: (field) => this.faultAt(field),
      isLocked: (field) => this.isLocked(field),
      type: (field, text, pausing) => this.type({ [field]: text }, pausing),
      settle: () => this.settle(),
      setUnits: (units) => this.#setUnits(units),
    });
  }

  #answer(
    plan: LogCabin,
    voice: Voice,
  ): Readonly<Record<'sheet' | 'chart' | 'lists', TemplateResult>> {
    const hand = this.shownHand;
    const steps = sheetSteps(plan, hand);
    const at = Math.min(this.at, steps.length - 1);
    const goTo = (step: number): void => {
      this.at = step;
    };
    const sheet = logCabinSheet({
      plan,
      voice,
      hand,
      steps,
      at,
      goTo,
      isLocked: (field) => this.isLocked(field),
      setHand: (next) => {
        this.hand = next;
      },
    });
    const chart = trimChart({
      plan,
      voice,
      round: steps[at]?.round ?? 0,
      goTo: (round) => goTo(steps.findIndex((step) => step.round === round)),
    });
    const { fabrics } = drawLogCabin(plan);
    const cuts = { plan, voice, fabrics, blocks: this.model?.more.blocks ?? 1 };
    const lists = html`<div class="lists wide">
      ${stripList(cuts)}${cutList(cuts)}
    </div>`;
    return { sheet, chart, lists };
  }

  /** What is wrong with settings that the page fixes, or that are folded away. */
  #faultsOutOfSight(settings: LogCabinSettings, voice: Voice): readonly TemplateResult[] {
    return logCabinFields.flatMap((field) => {
      const fault = this.faultAt(field);
      if (fault === undefined) return [];
      if (isInSight(field, settings) && !this.isLocked(field)) return [];
      return html`<p class="error" .textContent=${`${field}: ${voice.error(fault)}`}></p>`;
    });
  }

  #warnings({ warnings }: LogCabin, voice: Voice): TemplateResult | typeof nothing {
    if (warnings.length === 0) return nothing;
    return html`<ul class="warnings" part="warnings" aria-label=${voice.say('warnings')}>
      ${warnings.map((warning) => html`<li .textContent=${voice.notice(warning)}></li>`)}
    </ul>`;
  }

  protected override render(): TemplateResult {
    const { plan, settings, stale } = this;
    const voice = this.voice(settings?.grid);
    const answer = plan === undefined ? undefined : this.#answer(plan, voice);
    const standing = plan === undefined ? 'nothing' : stale ? 'stale' : undefined;
    const contents = html`
        ${answer?.sheet}
        <div>
          ${settings === undefined ? nothing : this.#form(settings, voice)}
          ${settings === undefined ? nothing : this.#faultsOutOfSight(settings, voice)}
          <p class="standing" .textContent=${standing === undefined ? '' : voice.say(standing)}></p>
          ${answer?.chart}
          ${plan === undefined ? nothing : this.#warnings(plan, voice)}
        </div>
        ${answer?.lists}
`;
    return this.frame(contents, voice);
  }
}
