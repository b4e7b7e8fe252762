import {
  type Drawing,
  drawCuttingPlan,
  drawingSentences,
  joinSentences,
  type LengthInput,
  onHandSentences,
  precutSentences,
} from '@eighths/core';
import { html, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { define } from '../base/define.js';
import { EighthsElement, fieldProperties } from '../base/element.js';
import type { Measures, Units } from '../base/measures.js';
import { rewritten } from '../base/rewritten.js';
import type { ElementModel } from '../base/telling.js';
import { textOf } from '../base/text.js';
import type { Vocabulary } from '../base/translated.js';
import type { Voice } from '../base/voice.js';
import { Working } from '../base/working.js';
import { fabricLooks } from '../look/fabricLooks.js';
import { looks } from '../look/looks.js';
import { enFabric } from '../messages/enFabric.js';
import type { Messages } from '../messages/messages.js';
import { fabricAnswer, spokenAnswer, toCart } from './answer.js';
import { cellAt, TABLES } from './cells.js';
import { type GivenFabricSettings, withFabricDefaults } from './defaults.js';
import { inputOf, WITHOUT_INPUT } from './faultPlace.js';
import { type FabricField, type FabricSettings, fabricFields, lengthFields } from './fields.js';
import { fabricForm } from './form.js';
import { fabricTasks } from './model.js';
import { readOnHandRows } from './onHandRows.js';
import { piecesText, readPieceRows } from './pieceRows.js';
import { type FabricPlan, solving } from './solving.js';
import { SourceList } from './sourceList.js';
import {
  inputTexts,
  isLengthColumn,
  withCell,
  withLengths,
  withoutRow,
  withRow,
} from './tables.js';
import { isWhole } from './yards.js';

type FabricModel = ElementModel<FabricPlan>;

const TINTS = 8;

/** `<eighths-fabric>`: pieces to cut, how much fabric to buy for them, and how to cut it. */
export class EighthsFabric extends EighthsElement<FabricField, FabricPlan, FabricModel> {
  static override readonly styles = [looks, fabricLooks];
  static override properties: PropertyDeclarations = {
    ...EighthsElement.properties,
    ...fieldProperties(fabricFields),
    from: {},
  };

  /** The id of an element on the page whose cut list flows in here. */
  declare from: string | undefined;
  /** Pieces to cut, as a list or a text: `24 of 2 1/2 by 8 1/2, dusk; 12 of 5 by 7, turned`. */
  declare pieces: unknown;

  protected override readonly fields = fabricFields;
  protected override readonly vocabulary: Vocabulary = {
    texts: ['common', 'fabric'],
    rooms: ['drawing', 'cutting', 'pack', 'join', 'precut', 'onHand'],
  };
  readonly #working = new Working<FabricPlan>(() => this.requestUpdate());
  readonly #source = new SourceList((pieces) => this.#take(pieces));

  constructor() {
    super();
    this.target = 'width';
  }

  /** Registers the element, once: `EighthsFabric.define()`. */
  static define(tag = 'eighths-fabric', registry?: CustomElementRegistry): void {
    define(tag, EighthsFabric, registry);
  }

  protected override get messages(): Messages {
    const common = super.messages;
    const sentences = {
      ...common.sentences,
      ...drawingSentences,
      ...joinSentences,
      ...precutSentences,
      ...onHandSentences,
    };
    return { ...common, ...enFabric, sentences };
  }

  protected override textOf(field: FabricField, value: unknown): string {
    return field === 'pieces' && Array.isArray(value)
      ? piecesText(value, (each) => textOf(each, this.decimalSign))
      : super.textOf(field, value);
  }

  protected override fill(given: GivenFabricSettings, units: Units): FabricSettings {
    return withFabricDefaults(given, units);
  }

  protected override readModel(settings: FabricSettings, measures: Measures): FabricModel {
    const tasks = fabricTasks(settings, measures);
    const { faults, ...spec } = tasks;
    if (faults.size > 0) return { spec, faults };
    const asked = this.#working.ask(JSON.stringify(spec), () => solving(tasks));
    const { answer: plan, error } = asked;
    if (error !== undefined) return { spec, faults: new Map([[inputOf(error), error]]) };
    if (plan === undefined) return { spec, faults };
    return {
      spec,
      faults,
      plan,
      more: { buy: plan.fabrics.flatMap((each) => toCart(each) ?? []) },
    };
  }

  /** What a cell of a table, or an input, is given. */
  #typeIn(field: string, text: string, settings: FabricSettings, pausing?: boolean): void {
    const known = fabricFields.find((each) => each === field);
    const edit = known === undefined ? withCell(field, text, settings) : { [known]: text };
    if (edit !== undefined) this.type(edit, pausing);
  }

  /** The reader's change of units keeps the pieces: what stands in the inputs is written anew. */
  #setUnits(units: string, settings: FabricSettings): void {
    const before = this.voice().measures;
    this.units = units;
    const after = this.voice().measures;
    const rewrite = (text: string): string => rewritten(text, before, after);
    const lengths = lengthFields.map((field) => [field, rewrite(settings[field])] as const);
    this.type({ ...Object.fromEntries(lengths), ...withLengths(settings, rewrite) }, false);
  }

  /** The strips of the first fabric that is cut from the bolt. */
  protected override shownDrawing(): (() => Drawing) | undefined {
    const [plan] = (this.plan?.fabrics ?? []).flatMap(({ yardage }) => yardage?.plan ?? []);
    const strips = plan === undefined || !isWhole(plan) ? plan : plan.across;
    return strips && (() => drawCuttingPlan(strips));
  }

  protected override holdsLength(field: string): boolean {
    return (
      isLengthColumn(cellAt(field)?.column ?? '') ||
      [...TABLES, ...lengthFields].some((each) => each === field)
    );
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    if (changed.has('from')) this.#source.follow(this.from, this.getRootNode());
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) this.#source.follow(this.from, this.getRootNode());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#source.leave();
  }

  /** Another element's cut list, as it would be typed. */
  #take(pieces: readonly unknown[]): void {
    const { typed } = this.voice().measures;
    const isLength = (value: unknown): value is LengthInput =>
      typeof value === 'object' && value !== null;
    this.pieces = piecesText(pieces, (value) => (isLength(value) ? typed(value) : textOf(value)));
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (!this.isAnswered) return;
    const voice = this.voice();
    this.summary = (this.plan?.fabrics ?? [])
      .map((answer) => spokenAnswer(answer, voice))
      .join('. ');
  }

  #form(settings: FabricSettings, voice: Voice): TemplateResult {
    const texts = inputTexts(settings);
    return fabricForm({
      voice,
      settings: texts,
      pieceRows: readPieceRows(settings.pieces),
      onHandRows: readOnHandRows(settings['on-hand']),
      // The row of the input last used may be gone.
      target: texts[this.target] === undefined ? 'width' : this.target,
      tintOf: (index) =>
        (this.plan?.fabrics ?? []).reduce(
          (tint, { rows }) => Math.max(tint, rows.indexOf(index)),
          0,
        ) % TINTS,
      faultAt: (field) => this.faultAt(field),
      isLocked: (field) => this.isLocked(cellAt(field)?.table ?? field),
      type: (field, text, pausing) => this.#typeIn(field, text, settings, pausing),
      settle: () => this.settle(),
      addRow: (table) => this.type(withRow(table, settings), false),
      removeRow: (table, index) => this.type(withoutRow(table, index, settings), false),
      setUnits: (units) => this.#setUnits(units, settings),
    });
  }

  protected override render(): TemplateResult {
    const { plan, settings, stale, model } = this;
    const voice = this.voice();
    const working = stale && model?.faults.size === 0;
    const standing = working ? 'working' : plan === undefined ? 'nothing' : 'stale';
    const contents = html`
        <div>
          ${settings === undefined ? '' : this.#form(settings, voice)}
          <p class="error" .textContent=${this.#errorOfWhole(voice)}></p>
          <p class="standing" .textContent=${stale ? voice.say(standing) : ''}></p>
        </div>
        <div class="answers">
          ${plan?.fabrics.map((each) => fabricAnswer(each, settings?.method ?? '', voice))}
        </div>
`;
    return this.frame(contents, voice);
  }

  /** What is wrong with a list as a whole, or with a choice, has no input of its own. */
  #errorOfWhole(voice: Voice): string {
    const fault = WITHOUT_INPUT.map((field) => this.faultAt(field)).find(
      (each) => each !== undefined,
    );
    return fault === undefined ? '' : voice.error(fault);
  }
}
