import { drawingSentences, EighthsError, formatLength, type Piece } from '@eighths/core';
import { html, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { define } from '../base/define.js';
import { EighthsElement, type ElementModel, fieldProperties } from '../base/element.js';
import type { Measures, Units } from '../base/measures.js';
import { attributeName } from '../base/names.js';
import { rewritten } from '../base/rewritten.js';
import type { Voice } from '../base/voice.js';
import { fabricLooks } from '../look/fabricLooks.js';
import { looks } from '../look/looks.js';
import { enFabric } from '../messages/enFabric.js';
import type { Messages } from '../messages/messages.js';
import { fabricAnswer, onHandAnswer } from './answer.js';
import { type GivenFabricSettings, withFabricDefaults } from './defaults.js';
import { type FabricField, type FabricSettings, fabricFields } from './fields.js';
import { fabricForm } from './form.js';
import { cellName, fabricTasks, inputTexts } from './model.js';
import {
  emptyRow,
  PIECE_COLUMNS,
  type PieceRow,
  piecesText,
  readPieceRows,
  writePieceRows,
} from './pieceRows.js';
import { type FabricAnswer, type FabricPlan, solving } from './solving.js';

type FabricModel = ElementModel<FabricPlan>;

/** Work for this long, in milliseconds, and then let the page breathe. */
const SLICE = 8;

const TINTS = 8;

const LENGTHS: readonly FabricField[] = [
  'width',
  'straightening',
  'spare',
  'on-hand-width',
  'on-hand-length',
];

/** What was asked last, and what has become of it. */
interface Question {
  readonly text: string;
  readonly making: Generator<void, FabricPlan>;
  plan?: FabricPlan;
  error?: EighthsError;
}

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
  /** Pieces to cut, as a list or a text: `24 of 2 1/2 by 8 1/2, dusk; 12 of 5 by 5`. */
  declare pieces: unknown;

  protected override readonly fields = fabricFields;
  #question: Question | undefined;
  #source: Element | undefined;

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
    return { ...common, ...enFabric, sentences: { ...common.sentences, ...drawingSentences } };
  }

  protected override textOf(field: FabricField, value: unknown): string {
    return field === 'pieces' && Array.isArray(value)
      ? piecesText(value)
      : super.textOf(field, value);
  }

  protected override fill(given: GivenFabricSettings, units: Units): FabricSettings {
    return withFabricDefaults(given, units);
  }

  protected override readModel(settings: FabricSettings, measures: Measures): FabricModel {
    const tasks = fabricTasks(settings, measures);
    const { faults, ...spec } = tasks;
    if (faults.size > 0) return { spec, faults };
    const text = JSON.stringify(spec);
    if (this.#question?.text !== text) {
      this.#question = { text, making: solving(tasks) };
      if (!this.#work(this.#question)) this.#workLater(this.#question);
    }
    const { plan, error } = this.#question;
    if (error !== undefined) return { spec, faults: new Map([[inputOf(error), error]]) };
    if (plan === undefined) return { spec, faults };
    return { spec, faults, plan, more: { buy: plan.fabrics.map(toBuy) } };
  }

  /** Works on a question for a slice of time; says whether it is settled. */
  #work(question: Question): boolean {
    const end = performance.now() + SLICE;
    try {
      do {
        const state = question.making.next();
        if (state.done) question.plan = state.value;
      } while (question.plan === undefined && performance.now() < end);
    } catch (error) {
      if (!(error instanceof EighthsError)) throw error;
      question.error = error;
    }
    return question.plan !== undefined || question.error !== undefined;
  }

  /** The page gets a turn first; another question in the meantime ends this one. */
  #workLater(question: Question): void {
    setTimeout(() => {
      if (question !== this.#question) return;
      if (this.#work(question)) this.requestUpdate();
      else this.#workLater(question);
    });
  }

  /** What a cell of the table, or an input, is given. */
  #typeIn(field: string, text: string, pausing?: boolean): void {
    const known = fabricFields.find((each) => each === field);
    if (known !== undefined) {
      this.type({ [known]: text }, pausing);
      return;
    }
    const rows = this.#rows().map((row, index) => {
      const column = PIECE_COLUMNS.find((each) => cellName(index, each) === field);
      return column === undefined ? row : { ...row, [column]: text };
    });
    this.#setRows(rows, pausing);
  }

  #rows(): readonly PieceRow[] {
    return readPieceRows(this.settings?.pieces ?? '');
  }

  #setRows(rows: readonly PieceRow[], pausing = false): void {
    this.type({ pieces: writePieceRows(rows) }, pausing);
  }

  /** The reader's change of units keeps the pieces: what stands in the inputs is written anew. */
  #setUnits(units: string): void {
    const before = this.voice().measures;
    this.units = units;
    const after = this.voice().measures;
    const texts = LENGTHS.map((field) => [
      field,
      rewritten(this.settings?.[field] ?? '', before, after),
    ]);
    const rows = this.#rows().map((row) => ({
      ...row,
      width: rewritten(row.width, before, after),
      length: rewritten(row.length, before, after),
    }));
    this.type({ ...Object.fromEntries(texts), pieces: writePieceRows(rows) }, false);
  }

  protected override holdsLength(field: string): boolean {
    return /\.(width|length)$/.test(field) || LENGTHS.some((each) => each === field);
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    if (changed.has('from')) this.#listen();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) this.#listen();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#source?.removeEventListener('eighths-change', this.#receive);
    this.#source = undefined;
  }

  /** Finds the element that `from` names, and takes its cut list now and after each change. */
  #listen(): void {
    this.#source?.removeEventListener('eighths-change', this.#receive);
    this.#source = undefined;
    const root = this.getRootNode();
    if (!this.from || !(root instanceof Document || root instanceof ShadowRoot)) return;
    const source = root.querySelector(`#${CSS.escape(this.from)}`);
    if (source === null) return;
    this.#source = source;
    source.addEventListener('eighths-change', this.#receive);
    void customElements.whenDefined(source.localName).then(this.#receive);
  }

  readonly #receive = async (): Promise<void> => {
    const source = this.#source;
    if (source === undefined) return;
    await Reflect.get(source, 'updateComplete');
    const pieces: unknown = Reflect.get(source, 'pieces');
    if (!Array.isArray(pieces)) return;
    const { typed } = this.voice().measures;
    this.pieces = writePieceRows(
      pieces.map(({ count, width, length, fabric }: Piece) => ({
        count: String(count),
        width: typed(width),
        length: typed(length),
        fabric: fabric ?? '',
      })),
    );
  };

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (!this.touched || !this.settled || this.stale) return;
    const voice = this.voice();
    this.summary = (this.plan?.fabrics ?? [])
      .map(({ fabric, yardage: { buy } }) => {
        const yards = formatLength(buy, { unit: 'yd', style: 'spoken' });
        return voice.say(fabric === undefined ? 'buy' : 'buyFabric', {
          yards,
          fabric: fabric ?? '',
        });
      })
      .join('. ');
  }

  #form(settings: FabricSettings, voice: Voice): TemplateResult {
    return fabricForm({
      voice,
      settings: inputTexts(settings),
      rows: this.#rows(),
      target: this.target,
      tintOf: (index) =>
        (this.plan?.fabrics ?? []).reduce(
          (tint, { rows }) => Math.max(tint, rows.indexOf(index)),
          0,
        ) % TINTS,
      faultAt: (field) => this.faultAt(field),
      isLocked: (field) =>
        this.isLocked(field) || (field.startsWith('pieces[') && this.isLocked('pieces')),
      type: (field, text, pausing) => this.#typeIn(field, text, pausing),
      settle: () => this.settle(),
      addRow: () => this.#setRows([...this.#rows(), emptyRow]),
      removeRow: (index) => this.#setRows(this.#rows().filter((_, each) => each !== index)),
      setUnits: (units) => this.#setUnits(units),
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
          ${plan?.onHand === undefined ? '' : onHandAnswer(plan.onHand, voice)}
          ${plan?.fabrics.map((answer) => fabricAnswer(answer, voice))}
        </div>
`;
    return this.frame(contents, voice);
  }

  /** What is wrong with the list as a whole has no input of its own. */
  #errorOfWhole(voice: Voice): string {
    const fault = this.faultAt('pieces');
    return fault === undefined ? '' : voice.error(fault);
  }
}

/** The input that an error of the core is about. */
const inputOf = ({ field }: EighthsError): string =>
  /^pieces\[\d+\]\.\w+$/.test(field)
    ? field
    : (fabricFields.find((known) => known === attributeName(field)) ?? 'pieces');

/** What a cart needs of one fabric: the length, and how many of the shop's increments that is. */
const toBuy = ({ fabric, yardage: { buy, increment, yards, meters } }: FabricAnswer) => ({
  fabric: fabric ?? null,
  length: buy,
  increment,
  increments: buy.dividedBy(increment).toNumber(),
  yards,
  meters,
});
