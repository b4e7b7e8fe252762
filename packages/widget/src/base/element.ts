import type { Drawing, EighthsError } from '@eighths/core';
import {
  html,
  LitElement,
  nothing,
  type PropertyDeclarations,
  type PropertyValues,
  type TemplateResult,
} from 'lit';
import { actionsNamed } from '../actions/actionRow.js';
import { AnswerActions } from '../actions/answerActions.js';
import { settingsIn } from '../actions/link.js';
import type { Catalog } from '../messages/catalog.js';
import { type Messages, messages } from '../messages/messages.js';
import { addCatalog, type Language, langOf, languageFor, watchLanguage } from './languages.js';
import { type Measures, measuresFor, type Units } from './measures.js';
import { propertyName } from './names.js';
import { type DecimalSign, numbersIn, withDecimalSign } from './numbers.js';
import { type ElementModel, Telling } from './telling.js';
import { textOf } from './text.js';
import { translated, type Vocabulary } from './translated.js';
import { version } from './version.js';
import { type Voice, voiceOf } from './voice.js';

/** A pause this long after the last key means that somebody has finished typing. */
const PAUSE = 700;

/** The properties that fields are set by: any value that has a text, under the attribute's name. */
export const fieldProperties = (fields: readonly string[]): PropertyDeclarations =>
  Object.fromEntries(
    fields.map((field) => [
      propertyName(field),
      // Attributes are texts already; what a framework sets as a property is read as text later.
      { attribute: field, converter: (text: string | null) => text ?? undefined },
    ]),
  );

/**
 * What the elements share: settings from attributes, properties and typing; the last good plan; when
 * an error is shown; the events. A subclass says what its settings come to, and renders.
 */
export abstract class EighthsElement<
  Field extends string,
  Plan,
  Model extends ElementModel<Plan>,
> extends LitElement {
  static readonly version = version;

  /**
   * Takes the words of another language, for all elements: `addMessages('de', german)`. They are shown
   * where the page's `lang`, or the element's own, asks for them.
   */
  static addMessages(language: string, catalog: Catalog): void {
    addCatalog(language, catalog);
  }

  static override properties: PropertyDeclarations = {
    units: {},
    hand: {},
    locked: {},
    theme: { reflect: true },
    actions: {},
    settled: { state: true },
    target: { state: true },
    summary: { state: true },
  };

  /** `inches` (default) or `metric`. */
  declare units: string | undefined;
  /** `right` (default) or `left`: the hand that holds the cutter. */
  declare hand: string | undefined;
  /** The names of inputs that the page's author fixes, separated by spaces. */
  declare locked: string | undefined;
  /** `light`, `dark` or `auto` (default: as the page). */
  declare theme: string | undefined;
  /** What a reader can do with the answer: any of `copy csv svg print link`, or `none`. */
  declare actions: string | undefined;
  /** Whether the reader has paused, so that what is wrong may be said. */
  declare protected settled: boolean;
  /** The length input that was used last: fractions are put there. */
  declare protected target: string;
  /** What a screen reader is told when a change has settled. */
  declare protected summary: string;

  protected abstract readonly fields: readonly Field[];
  /** Where its words stand in another language's catalog. */
  protected abstract readonly vocabulary: Vocabulary;
  /** What is not given is filled in. */
  protected abstract fill(
    given: Readonly<Partial<Record<Field, string>>>,
    units: Units,
  ): Readonly<Record<Field, string>>;
  protected abstract readModel(
    settings: Readonly<Record<Field, string>>,
    measures: Measures,
  ): Model;

  /** The drawing that is shown now, to be saved, where there is one. */
  protected abstract shownDrawing(): (() => Drawing) | undefined;

  protected settings: Readonly<Record<Field, string>> | undefined;
  protected model: Model | undefined;
  /** Whether the reader has changed anything yet. */
  protected touched = false;
  #plan: Plan | undefined;
  readonly #telling = new Telling(this);
  #pause: ReturnType<typeof setTimeout> | undefined;
  #language: Language | undefined;
  #unwatch: (() => void) | undefined;
  readonly #answer = new AnswerActions({
    host: this,
    css: () => this.css,
    drawing: () => this.shownDrawing(),
    settings: () => ({ units: this.shownUnits, ...this.settings }),
  });

  constructor() {
    super();
    this.settled = true;
    this.target = '';
    this.summary = '';
  }

  /** Whether an input holds a length, so that fractions and steps make sense there. */
  protected abstract holdsLength(field: string): boolean;

  /** The plan of the last settings that could be made; undefined until there is one. */
  get plan(): Plan | undefined {
    return this.#plan;
  }

  /** Every word of the element, in English. */
  protected get messages(): Messages {
    return messages;
  }

  /** Every word in the language that the page asks for, and in English where that lacks it. */
  protected get shownMessages(): Messages {
    return translated(this.messages, this.language.catalog, this.vocabulary);
  }

  protected get language(): Language {
    this.#language ??= languageFor(langOf(this));
    return this.#language;
  }

  protected get shownUnits(): Units {
    return this.units === 'metric' || this.units === 'cm' ? 'metric' : 'inches';
  }

  protected get shownHand(): 'left' | 'right' {
    return this.hand === 'left' ? 'left' : 'right';
  }

  protected get decimalSign(): DecimalSign {
    return numbersIn(this.language.locale).decimalSign;
  }

  protected voice(grid = ''): Voice {
    return voiceOf(this.shownMessages, this.measures(grid), this.language.catalog);
  }

  protected measures(grid = ''): Measures {
    const { locale, words: language, catalog } = this.language;
    return measuresFor(this.shownUnits, locale, grid, { language, catalog });
  }

  /** Its style sheets as a text, for a copy of it on another page. */
  protected get css(): string {
    const { elementStyles } = this.constructor as typeof LitElement;
    return elementStyles.map((style) => ('cssText' in style ? style.cssText : '')).join('');
  }

  protected isLocked(field: string): boolean {
    return (this.locked ?? '').split(/[\s,]+/).includes(field);
  }

  /** The error to show beside an input: none while somebody is typing. */
  protected faultAt(field: string): EighthsError | undefined {
    return this.settled ? this.model?.faults.get(field) : undefined;
  }

  /** Whether what is shown belongs to earlier settings. */
  protected get stale(): boolean {
    return this.model !== undefined && this.model.plan === undefined;
  }

  /** Whether a change of the reader's has settled in an answer, so that it may be told aloud. */
  protected get isAnswered(): boolean {
    return this.touched && this.settled && !this.stale;
  }

  /** What is wrong with settings that the page fixes, or that are folded away. */
  protected faultsOutOfSight(
    isInSight: (field: string) => boolean,
    voice: Voice,
  ): readonly TemplateResult[] {
    return [...(this.model?.faults.keys() ?? [])].flatMap((field) => {
      const fault = this.faultAt(field);
      if (fault === undefined || (isInSight(field) && !this.isLocked(field))) return [];
      return html`<p class="error" .textContent=${`${field}: ${voice.error(fault)}`}></p>`;
    });
  }

  /** What the reader types or chooses. */
  protected type(texts: Readonly<Partial<Record<Field, string>>>, pausing = true): void {
    this.touched = true;
    // From now on nothing is left to defaults: they would change while the reader types.
    const settings = { ...this.settings, ...this.#given(), ...texts };
    for (const each of this.fields) Reflect.set(this, propertyName(each), settings[each] ?? '');
    clearTimeout(this.#pause);
    this.settled = !pausing;
    if (pausing) this.#pause = setTimeout(() => this.settle(), PAUSE);
  }

  /** The reader has paused or left the input. */
  protected settle(): void {
    clearTimeout(this.#pause);
    this.settled = true;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#followLink();
    this.#unwatch = watchLanguage(this, () => this.requestUpdate());
    // It may stand in another language now.
    if (this.hasUpdated) this.requestUpdate();
  }

  /** A link may carry settings for this element, where the page's author allows links. */
  #followLink(): void {
    if (!actionsNamed(this.actions ?? '').includes('link')) return;
    const fields = ['units', ...this.fields].filter((field) => !this.isLocked(field));
    const linked = settingsIn(location.hash, this.id || this.localName, fields);
    for (const [field, text] of linked) Reflect.set(this, propertyName(field), text);
  }

  /** Another document drops its style sheets, and takes only such as are made for it. */
  adoptedCallback(): void {
    const view = this.ownerDocument.defaultView;
    if (!this.shadowRoot || !view) return;
    const sheet = new view.CSSStyleSheet();
    sheet.replaceSync(this.css);
    this.shadowRoot.adoptedStyleSheets = [sheet];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#unwatch?.();
    this.settle();
  }

  /** The text of an input for what a page sets as its value. */
  protected textOf(_field: Field, value: unknown): string {
    return textOf(value, this.decimalSign);
  }

  #given(): Partial<Record<Field, string>> {
    const given: Partial<Record<Field, string>> = {};
    for (const field of this.fields) {
      const value: unknown = Reflect.get(this, propertyName(field));
      if (value !== undefined && value !== null) given[field] = this.textOf(field, value);
    }
    return given;
  }

  /** What is not given is filled in, with the decimal signs of the language. */
  #filled(): Readonly<Record<Field, string>> {
    const given = this.#given();
    const settings: Record<Field, string> = { ...this.fill(given, this.shownUnits) };
    const texts = new Set(Object.values(given));
    const { decimalSign } = this;
    for (const field of this.fields) {
      if (texts.has(settings[field]) || !this.holdsLength(field)) continue;
      settings[field] = withDecimalSign(settings[field], '.', decimalSign);
    }
    return settings;
  }

  /** The page's language may have changed: what stands in the inputs is written as that does. */
  #followLanguage(): void {
    // Apart from any page it keeps what it spoke on the last one.
    if (!this.isConnected && this.hasUpdated) return;
    const before = this.hasUpdated ? this.decimalSign : undefined;
    this.#language = undefined;
    const after = this.decimalSign;
    if (before === undefined || before === after) return;
    for (const field of this.fields) {
      const value: unknown = Reflect.get(this, propertyName(field));
      if (typeof value !== 'string' || !this.holdsLength(field)) continue;
      Reflect.set(this, propertyName(field), withDecimalSign(value, before, after));
    }
  }

  protected override willUpdate(_changed: PropertyValues): void {
    this.#followLanguage();
    this.settings = this.#filled();
    this.model = this.readModel(this.settings, this.voice().measures);
    this.#plan = this.model.plan ?? this.#plan;
  }

  protected override updated(_changed: PropertyValues): void {
    const { model } = this;
    if (model === undefined) return;
    if (model.plan !== undefined) this.#telling.change(model);
    else if (this.settled) this.#telling.error(model);
  }

  #noteTarget({ target }: Event): void {
    if (target instanceof HTMLInputElement && this.holdsLength(target.id)) this.target = target.id;
  }

  /** What every element stands in: it keeps its inputs' own events to itself, and tells what changed. */
  protected frame(contents: TemplateResult, voice: Voice): TemplateResult {
    const stop = (event: Event): void => event.stopPropagation();
    return html`<div
      class="root ${this.stale ? 'stale' : ''}"
      part="root"
      lang=${this.language.words}
      @input=${stop}
      @change=${stop}
      @focusin=${this.#noteTarget}
    >
      <div class="page">
        ${contents}
        ${this.#plan === undefined ? nothing : this.#answer.row(this.actions, voice)}
        <p class="caution wide" .textContent=${voice.say('caution')}></p>
      </div>
      <output class="unseen" .textContent=${this.summary}></output>
    </div>`;
  }
}
