import {
  type Drawing,
  drawingSentences,
  type Piece,
  type UnitPlan,
  unitSentences,
} from '@eighths/core';
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
import type { Vocabulary } from '../base/translated.js';
import { type Voice, voiceOf } from '../base/voice.js';
import { warningList } from '../base/warningList.js';
import { looks } from '../look/looks.js';
import { unitLooks } from '../look/unitLooks.js';
import { enUnit, enUnitWords } from '../messages/enUnit.js';
import type { Messages } from '../messages/messages.js';
import { type UnitLists, unitCutList } from './cutList.js';
import { type GivenUnitSettings, METRIC_GRID, otherUnit, withUnitDefaults } from './defaults.js';
import { facts } from './facts.js';
import { lengthFields, sizeFields, type UnitSettings, unitFields } from './fields.js';
import { isInSight, unitForm } from './form.js';
import { headline, headlineOf } from './headline.js';
import { methodTable } from './methodTable.js';
import { type UnitModel, unitModel } from './model.js';
import { readableMeasures } from './readable.js';
import { drawingsOf, unitDrawing, unitSheet } from './sheet.js';
import { trimTable } from './trimTable.js';

/** `<eighths-unit>`: a pieced unit to type in, drawn, with its cuts, its trim and its methods. */
export class EighthsUnit extends EighthsElement<string, UnitPlan, UnitModel> {
  static override readonly styles = [looks, unitLooks];
  static override properties: PropertyDeclarations = {
    ...EighthsElement.properties,
    ...fieldProperties(unitFields),
    at: { state: true },
  };

  /** The drawing that is shown: 0 is the unit, then its cuts. */
  declare protected at: number;

  protected override readonly fields = unitFields;
  protected override readonly vocabulary: Vocabulary = {
    texts: ['common', 'unit'],
    rooms: ['drawing', 'unit'],
  };
  /** The last model with a plan: what is shown while settings make none. */
  #made: UnitModel | undefined;

  constructor() {
    super();
    this.at = 0;
    this.target = '';
  }

  /** Registers the element, once: `EighthsUnit.define()`. */
  static define(tag = 'eighths-unit', registry?: CustomElementRegistry): void {
    define(tag, EighthsUnit, registry);
  }

  /** What all units take, ready for a cutting plan; empty until there is a plan. */
  get pieces(): readonly Piece[] {
    return this.plan?.pieces ?? [];
  }

  protected override get messages(): Messages {
    const common = super.messages;
    return {
      ...common,
      ...enUnit,
      words: { ...common.words, ...enUnitWords },
      sentences: { ...common.sentences, ...drawingSentences, ...unitSentences },
    };
  }

  protected override voice(grid?: string): Voice {
    const { catalog } = this.language;
    return voiceOf(this.shownMessages, readableMeasures(this.measures(grid)), catalog);
  }

  protected override fill(given: GivenUnitSettings, units: Units): UnitSettings {
    return withUnitDefaults(given, units);
  }

  /** The size stays in the inputs it is shown in, however the page has given it. */
  protected override type(texts: GivenUnitSettings, pausing?: boolean): void {
    const { settings = {} } = this;
    const shown = Object.fromEntries(sizeFields.map((field) => [field, settings[field] ?? '']));
    super.type({ ...shown, ...texts }, pausing);
  }

  protected override readModel(settings: UnitSettings, measures: Measures): UnitModel {
    return unitModel(settings, measures);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const { model } = this;
    if (model?.plan !== undefined) this.#made = model;
    const made = this.#made;
    if (made?.plan === undefined || !this.isAnswered) return;
    const voice = this.voice();
    const { plan, definition, spec } = made;
    const { name, values } = headlineOf(plan, definition, spec.finished, voice);
    this.summary = voice.speak(name, values);
  }

  /** Another unit in the same size, or in its own where that cannot be made. */
  #setUnit(unit: string): void {
    const { measures } = this.voice();
    const makes = (settings: UnitSettings): boolean =>
      unitModel(settings, measures).plan !== undefined;
    this.at = 0;
    this.type(otherUnit(unit, this.settings ?? {}, this.shownUnits, makes), false);
  }

  /** The reader's change of units keeps the unit: what stands in the inputs is written anew. */
  #setUnits(units: string): void {
    const before = this.voice().measures;
    this.units = units;
    const after = this.voice().measures;
    const { settings = {} } = this;
    const texts = lengthFields.map((field) => [
      field,
      rewritten(settings[field] ?? '', before, after),
    ]);
    // The usual grid of one measure is no grid of the other.
    const usual: Readonly<Record<Units, string>> = { inches: '', metric: METRIC_GRID };
    const isUsual = settings.grid === usual[before.units];
    const grid = isUsual ? { grid: usual[after.units] } : {};
    this.type({ ...Object.fromEntries(texts), ...grid }, false);
  }

  protected override shownDrawing(): (() => Drawing) | undefined {
    const { plan } = this;
    if (plan === undefined) return undefined;
    return () => unitDrawing(Math.min(this.at, drawingsOf(plan) - 1), plan, this.shownHand);
  }

  protected override holdsLength(field: string): boolean {
    return lengthFields.some((each) => each === field);
  }

  #form({ definition, plan }: UnitModel, settings: UnitSettings, voice: Voice): TemplateResult {
    return unitForm({
      voice,
      settings,
      definition,
      plan,
      target: this.#targetIn(settings),
      faultAt: (field) => this.faultAt(field),
      isLocked: (field) => this.isLocked(field),
      type: (field, text, pausing) => this.type({ [field]: text }, pausing),
      settle: () => this.settle(),
      setUnit: (unit) => this.#setUnit(unit),
      setUnits: (units) => this.#setUnits(units),
    });
  }

  /** Fractions go to the finished size until another length is used. */
  #targetIn(settings: UnitSettings): string {
    if (this.target !== '') return this.target;
    return settings['finished-width'] === '' ? 'finished' : 'finished-width';
  }

  #sheet({ plan, definition, spec }: UnitModel, voice: Voice): TemplateResult | typeof nothing {
    if (plan === undefined) return nothing;
    return unitSheet({
      plan,
      voice,
      headline: headline(headlineOf(plan, definition, spec.finished, voice), voice),
      hand: this.shownHand,
      setHand: (hand) => {
        this.hand = hand;
      },
      isLocked: (field) => this.isLocked(field),
      at: Math.min(this.at, drawingsOf(plan) - 1),
      goTo: (step) => {
        this.at = step;
      },
    });
  }

  #lists({ plan, comparison }: UnitModel, voice: Voice): TemplateResult | typeof nothing {
    if (plan === undefined) return nothing;
    const lists: UnitLists = { plan, voice, fabrics: fabricsOf(plan) };
    const methods =
      comparison &&
      methodTable({
        comparison,
        voice,
        count: plan.count,
        chosen: plan.method,
        isLocked: this.isLocked('method'),
        choose: (method) => this.type({ method }, false),
      });
    return html`<div class="lists wide">
      <div class="result">${stepList(plan, voice)}${trimTable(lists)}</div>
      <div class="result">${facts(plan, voice)}${methods}</div>
    </div>`;
  }

  protected override render(): TemplateResult {
    const { model, settings, stale } = this;
    const made = this.#made;
    const voice = this.voice(settings?.grid);
    const standing = made === undefined ? 'nothing' : stale ? 'stale' : undefined;
    const contents = html`
        ${made === undefined ? nothing : this.#sheet(made, voice)}
        <div>
          ${model === undefined || settings === undefined ? nothing : [this.#form(model, settings, voice), this.faultsOutOfSight((field) => isInSight(field, model.definition), voice)]}
          <p class="standing" .textContent=${standing === undefined ? '' : voice.say(standing)}></p>
          ${made?.plan === undefined ? nothing : warningList(made.plan.warnings, voice)}
          ${made?.plan === undefined ? nothing : unitCutList({ plan: made.plan, voice, fabrics: fabricsOf(made.plan) })}
        </div>
        ${made === undefined ? nothing : this.#lists(made, voice)}
`;
    return this.frame(contents, voice);
  }
}

/** What is done, in order. */
const stepList = ({ steps }: UnitPlan, voice: Voice): TemplateResult => {
  const name = voice.say('unitSteps');
  return html`<div class="steps" part="steps">
    <p class="title" .textContent=${name}></p>
    <ol aria-label=${name}>
      ${steps.map((step) => html`<li translate="no" .textContent=${voice.notice(step)}></li>`)}
    </ol>
  </div>`;
};

/** The fabrics in the order of their tints in the drawing. */
const fabricsOf = ({ patches }: UnitPlan): readonly string[] => [
  ...new Set(patches.map(({ fabric }) => fabric)),
];
