import { type Drawing, drawLogCabin, type LogCabin, type LogCabinPiece } from '@eighths/core';
import {
  adoptStyles,
  type CSSResult,
  html,
  noChange,
  nothing,
  type PropertyDeclarations,
  type PropertyValues,
  type TemplateResult,
} from 'lit';
import { define } from '../base/define.js';
import { EighthsElement, fieldProperties } from '../base/element.js';
import type { Measures, Units } from '../base/measures.js';
import { rewritten } from '../base/rewritten.js';
import type { Vocabulary } from '../base/translated.js';
import { type Voice, voiceOf } from '../base/voice.js';
import { warningList } from '../base/warningList.js';
import { looks } from '../look/looks.js';
import type { Messages } from '../messages/messages.js';
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
import type { MadeBlock, Workshop } from './panels/panel.js';
import type { PanelState } from './panels/state.js';
import { logCabinSheet, sheetSteps, stepDrawing } from './sheet.js';
import { trimChart } from './trimChart.js';

/** `<eighths-log-cabin>`: a log cabin block to type in, drawn, with its cut list and trim chart. */
export class EighthsLogCabin extends EighthsElement<LogCabinField, LogCabin, LogCabinModel> {
  static override styles: CSSResult[] = [looks];
  static override properties: PropertyDeclarations = {
    ...EighthsElement.properties,
    ...fieldProperties(logCabinFields),
    panels: {},
    panelsOpen: { attribute: 'panels-open' },
    at: { state: true },
  };

  /** What there is to do below a block; a page that wants its numbers alone has none. */
  static workshop: Workshop | undefined;

  /** The names of the panels to show, separated by spaces: default all that are registered, or `none`. */
  declare panels: string | undefined;
  /** The names of the panels that are open at first. */
  declare panelsOpen: string | undefined;

  /** The drawing that is shown: 0 is the whole block, then the rounds step by step. */
  declare protected at: number;

  protected override readonly fields = logCabinFields;
  protected override readonly vocabulary: Vocabulary = {
    texts: ['common', 'logCabin'],
    rooms: ['logCabin', 'table', 'seam', 'fit', 'sheet', 'drawing'],
  };
  #made: MadeBlock | undefined;
  #panelState: PanelState | undefined;

  constructor() {
    super();
    this.at = 0;
  }

  /** Registers the element, once: `EighthsLogCabin.define()`. */
  static define(tag = 'eighths-log-cabin', registry?: CustomElementRegistry): void {
    define(tag, EighthsLogCabin, registry);
  }

  /**
   * Gives the element panels: `EighthsLogCabin.furnish(workshop)`. Blocks that a page shows already
   * have them from then on, too.
   */
  static furnish(workshop: Workshop): void {
    EighthsLogCabin.workshop = workshop;
    EighthsLogCabin.styles = [looks, workshop.looks];
    EighthsLogCabin.elementStyles = EighthsLogCabin.finalizeStyles(EighthsLogCabin.styles);
    for (const block of EighthsLogCabin.#shown) block.#furnished();
  }

  static readonly #shown = new Set<EighthsLogCabin>();

  /** What all blocks take, ready for a cutting plan; empty until there is a plan. */
  get pieces(): readonly LogCabinPiece[] {
    const blocks = this.model?.more.blocks ?? 1;
    return (this.plan?.pieces ?? []).map((piece) => ({ ...piece, count: piece.count * blocks }));
  }

  protected override get messages(): Messages {
    const common = super.messages;
    return EighthsLogCabin.workshop?.messages(common) ?? common;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    EighthsLogCabin.#shown.add(this);
    this.#furnished();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    EighthsLogCabin.#shown.delete(this);
  }

  /** Takes the panels, once there are any: on the page, or when they come. */
  #furnished(): void {
    const { workshop, elementStyles } = EighthsLogCabin;
    if (workshop === undefined || this.#panelState !== undefined) return;
    this.#panelState = workshop.begin(this);
    if (this.renderRoot instanceof ShadowRoot) adoptStyles(this.renderRoot, elementStyles);
    this.requestUpdate();
  }

  protected override fill(given: GivenSettings, units: Units): LogCabinSettings {
    return withDefaults(given, units);
  }

  protected override readModel(settings: LogCabinSettings, measures: Measures): LogCabinModel {
    return logCabinModel(settings, measures);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const { plan, model } = this;
    if (model?.plan !== undefined) this.#made = { plan: model.plan, spec: model.spec };
    if (plan === undefined || !this.isAnswered) return;
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
    this.#panelState?.rewrite(before, after);
    this.type(Object.fromEntries(texts), false);
  }

  protected override shownDrawing(): (() => Drawing) | undefined {
    const { plan } = this;
    if (plan === undefined) return undefined;
    const hand = this.shownHand;
    const step = sheetSteps(plan, hand)[this.at] ?? { round: 0, order: 1 };
    return () => stepDrawing(step, plan, hand);
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

  /** Puts what was found into the inputs, but for those that the page fixes. */
  #fillIn(texts: GivenSettings): void {
    const free = Object.entries(texts).filter(([field]) => !this.isLocked(field));
    this.type(Object.fromEntries(free), false);
  }

  #panels(settings: LogCabinSettings, voice: Voice): TemplateResult | typeof noChange | undefined {
    const { workshop } = EighthsLogCabin;
    const state = this.#panelState;
    if (workshop === undefined || state === undefined) return undefined;
    if (!state.follows(settings, !this.settled)) return noChange;
    const { plan, model } = this;
    const { measures } = voice;
    const worked = plan === undefined ? '' : measures.typed(plan.finished.width);
    const context = {
      voice,
      spoken: voiceOf(this.shownMessages, { ...measures, figures: measures.spoken }),
      settings,
      finished: settings.finished.trim() === '' ? worked : settings.finished,
      block: this.#made,
      blocks: model?.more.blocks ?? 1,
      hand: this.shownHand,
      isLocked: (field: string) => this.isLocked(field),
      fill: (texts: GivenSettings) => this.#fillIn(texts),
      state,
      host: this,
      css: EighthsLogCabin.styles.map(({ cssText }) => cssText).join(''),
    };
    const { panels } = workshop;
    const wanted = { panels, names: this.panels, opened: this.panelsOpen };
    return workshop.show(wanted, context);
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
          ${settings === undefined ? nothing : this.faultsOutOfSight((field) => isInSight(field, settings), voice)}
          <p class="standing" .textContent=${standing === undefined ? '' : voice.say(standing)}></p>
          ${answer?.chart}
          ${plan === undefined ? nothing : warningList(plan.warnings, voice)}
        </div>
        ${answer?.lists}
        ${settings === undefined ? nothing : this.#panels(settings, voice)}
`;
    return this.frame(contents, voice);
  }
}
