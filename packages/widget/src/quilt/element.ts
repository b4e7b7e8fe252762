import {
  type Drawing,
  drawingSentences,
  drawQuiltPlan,
  type EighthsError,
  type Kits,
  kitsInParts,
  type QuiltPlan,
} from '@eighths/core';
import type { PropertyDeclarations, PropertyValues, TemplateResult } from 'lit';
import { define } from '../base/define.js';
import { EighthsElement, fieldProperties } from '../base/element.js';
import type { Measures, Units } from '../base/measures.js';
import { propertyName } from '../base/names.js';
import { rewritten } from '../base/rewritten.js';
import type { ElementModel } from '../base/telling.js';
import type { Vocabulary } from '../base/translated.js';
import type { Voice } from '../base/voice.js';
import { Working } from '../base/working.js';
import { looks } from '../look/looks.js';
import { quiltLooks } from '../look/quiltLooks.js';
import { enQuilt } from '../messages/enQuilt.js';
import { enUnitWords } from '../messages/enUnit.js';
import type { Messages } from '../messages/messages.js';
import { type CartLine, cartLines } from './cart.js';
import { DrawingColors } from './colors.js';
import { namedSize, sizeTexts, withQuiltDefaults } from './defaults.js';
import {
  type GivenQuiltSettings,
  type QuiltField,
  type QuiltSettings,
  quiltFields,
} from './fields.js';
import type { QuiltForm } from './form.js';
import { making } from './making.js';
import { inputOf, readTask } from './model.js';
import { patternSheet } from './patternSheet.js';
import type { Coloring, MadeQuilt, Shown } from './shown.js';
import { RecipeSource, type RecipeState } from './source.js';
import { summaryOf } from './summary.js';

/** What the quilt element makes of its recipe and its settings. */
export interface QuiltModel extends ElementModel<QuiltPlan> {
  readonly made?: MadeQuilt;
  readonly kits?: Kits;
}

const SIZE_FIELDS = ['size', 'across', 'down'] as const;

/** `<eighths-quilt>`: a pattern from its recipe, in any size: drawn, bought for and cut. */
export class EighthsQuilt extends EighthsElement<QuiltField, QuiltPlan, QuiltModel> {
  static override readonly styles = [looks, quiltLooks];
  static override properties: PropertyDeclarations = {
    ...EighthsElement.properties,
    ...fieldProperties(quiltFields),
    src: {},
    recipe: { attribute: false },
    readonly: {},
  };

  /** The address of the recipe. */
  declare src: string | undefined;
  /** The recipe itself, as an object or a text; it wins over `src` and over the script inside. */
  declare recipe: unknown;
  /** A page to read and print, without inputs: present, and not `false`. */
  declare readonly: unknown;

  protected override readonly fields = quiltFields;
  protected override readonly vocabulary: Vocabulary = {
    texts: ['common', 'quilt'],
    rooms: ['drawing'],
  };
  readonly #source = new RecipeSource(this, () => this.requestUpdate());
  readonly #quilting = new Working<MadeQuilt>(() => this.requestUpdate(), 'later');
  readonly #kitting = new Working<Kits>(() => this.requestUpdate(), 'later');
  readonly #colors = new DrawingColors();
  readonly #open = new Map<string, boolean>();
  #recipe: RecipeState = { kind: 'waiting' };
  /** The number of the recipe that the settings belong to. */
  #number = 0;
  /** The last quilt that was worked out: what is shown while settings make none. */
  #made: MadeQuilt | undefined;
  #kits: Kits | undefined;
  #printing = false;

  /** Registers the element, once: `EighthsQuilt.define()`. */
  static define(tag = 'eighths-quilt', registry?: CustomElementRegistry): void {
    define(tag, EighthsQuilt, registry);
  }

  /** The kits of the class, where there are people in it. */
  get kits(): Kits | undefined {
    return this.#kits;
  }

  /** What a shop's cart needs of the last quilt that could be made; empty until there is one. */
  get buy(): readonly CartLine[] {
    return this.#made?.plan.fabrics.flatMap(cartLines) ?? [];
  }

  protected override get messages(): Messages {
    const common = super.messages;
    return {
      ...common,
      ...enQuilt,
      words: { ...common.words, ...enUnitWords },
      sentences: { ...common.sentences, ...drawingSentences },
    };
  }

  protected override fill(given: GivenQuiltSettings, units: Units): QuiltSettings {
    const recipe = this.#recipe.kind === 'recipe' ? this.#recipe.recipe : undefined;
    return withQuiltDefaults(given, recipe, units);
  }

  protected override shownDrawing(): (() => Drawing) | undefined {
    if (this.#made === undefined) return undefined;
    const { plan, recipe } = this.#made;
    return () => ({ ...drawQuiltPlan(plan), fabrics: recipe.fabrics.map(({ id }) => id) });
  }

  protected override readModel(settings: QuiltSettings, measures: Measures): QuiltModel {
    const state = this.#recipe;
    if (state.kind !== 'recipe') {
      const faults = state.kind === 'error' ? [[inputOf(state.error), state.error] as const] : [];
      return { spec: {}, faults: new Map(faults) };
    }
    const { task, faults } = readTask(settings, state.recipe, measures);
    const { size, options, kits: kitsSpec } = task;
    const spec = { pattern: state.recipe.name, size, ...options };
    if (faults.size > 0) return { spec, faults };
    const asked = JSON.stringify([state.number, size, options, task.recipe.fabrics]);
    const { answer: made, error } = this.#quilting.ask(asked, () => making(task));
    if (error !== undefined) return { spec, faults: new Map([[inputOf(error), error]]) };
    if (made === undefined) return { spec, faults };
    const { plan } = made;
    const more = { buy: plan.fabrics.flatMap(cartLines) };
    if (kitsSpec === undefined) return { spec, faults, made, plan, more };
    const { recipe: _, ...kitted } = kitsSpec;
    const counted = JSON.stringify([asked, kitted]);
    const kits = this.#kitting.ask(counted, () => kitsInParts(kitsSpec));
    const kitFaults = kits.error === undefined ? [] : [[inputOf(kits.error), kits.error] as const];
    const { answer } = kits;
    return {
      ...{ spec, made, plan, more, faults: new Map(kitFaults) },
      ...(answer === undefined ? {} : { kits: answer }),
    };
  }

  protected override willUpdate(changed: PropertyValues): void {
    this.#recipe = this.#source.state;
    this.#followRecipe();
    super.willUpdate(changed);
    this.#made = this.model?.made ?? this.#made;
    this.#kits = this.model?.kits;
    if (!this.isAnswered || this.#made === undefined) return;
    this.summary = summaryOf(this.#made, this.voice());
  }

  /** What a reader chose of one recipe means nothing in the next. */
  #followRecipe(): void {
    const state = this.#recipe;
    if (state.kind !== 'recipe' || state.number === this.#number) return;
    if (this.#number > 0 && this.touched) {
      for (const field of SIZE_FIELDS) {
        Reflect.set(this, propertyName(field), this.getAttribute(field) ?? undefined);
      }
    }
    this.#number = state.number;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#source.connect();
    window.addEventListener('beforeprint', this.#print);
    window.addEventListener('afterprint', this.#printed);
    // What it was fetching when it was taken away is fetched again.
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#source.disconnect();
    window.removeEventListener('beforeprint', this.#print);
    window.removeEventListener('afterprint', this.#printed);
  }

  /** On paper nothing is folded away. */
  readonly #print = (): void => {
    this.#printing = true;
    this.requestUpdate();
  };

  readonly #printed = (): void => {
    this.#printing = false;
    this.requestUpdate();
  };

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    // Before anybody sees it, and no part of this turn's work.
    requestAnimationFrame(() => this.#colors.show(this.renderRoot));
  }

  protected override holdsLength(field: string): boolean {
    return field === 'fabric-width';
  }

  #isOpen(part: string): boolean {
    const first = part === 'kits' && (this.settings?.people ?? '') !== '';
    return this.#printing || (this.#open.get(part) ?? first);
  }

  #setOpen(part: string, open: boolean): void {
    if (this.#printing || open === this.#isOpen(part)) return;
    this.#open.set(part, open);
    this.requestUpdate();
  }

  /** The reader's change of units keeps the fabric: its width is written anew. */
  #setUnits(units: string): void {
    const before = this.voice().measures;
    this.units = units;
    const width = this.settings?.['fabric-width'] ?? '';
    this.type({ 'fabric-width': rewritten(width, before, this.voice().measures) }, false);
  }

  /** A size may be chosen before the first quilt is worked out. */
  #setSize(name: string, recipe: MadeQuilt['recipe']): void {
    const size = namedSize(recipe, name);
    if (size !== undefined) this.type(sizeTexts(size), false);
  }

  get #isReadonly(): boolean {
    const { readonly } = this;
    return readonly !== undefined && readonly !== null && String(readonly) !== 'false';
  }

  #formOf(made: Pick<MadeQuilt, 'recipe'>, settings: QuiltSettings, voice: Voice): QuiltForm {
    const { recipe } = made;
    return {
      recipe,
      settings,
      voice,
      faultAt: (field) => this.faultAt(field),
      isLocked: (field) => this.isLocked(field),
      type: (field, text, pausing) => this.type({ [field]: text }, pausing),
      settle: () => this.settle(),
      setSize: (name) => this.#setSize(name, recipe),
      setUnits: (units) => this.#setUnits(units),
      isOpen: (part) => this.#isOpen(part),
      setOpen: (part, open) => this.#setOpen(part, open),
    };
  }

  #coloring(): Coloring {
    return {
      any: this.#colors.any,
      choose: (tint, color) => {
        if (this.#colors.choose(tint, color, this.renderRoot)) this.requestUpdate();
      },
      reset: () => {
        this.#colors.reset(this.renderRoot);
        this.requestUpdate();
      },
    };
  }

  protected override render(): TemplateResult {
    const { settings, model, stale } = this;
    const made = this.#made;
    const voice = this.voice();
    const state = this.#recipe;
    const readonly = this.#isReadonly;
    const shown: Shown | undefined = made && {
      ...made,
      voice,
      readonly,
      kits: this.#kits,
      coloring: readonly || this.isLocked('colors') ? undefined : this.#coloring(),
      isOpen: (part) => this.#isOpen(part),
      setOpen: (part, open) => this.#setOpen(part, open),
    };
    const form =
      readonly || settings === undefined || state.kind !== 'recipe'
        ? undefined
        : this.#formOf(state, settings, voice);
    const contents = patternSheet({
      shown,
      form,
      voice,
      faults: this.#faultsOutOfSight(),
      standing:
        state.kind === 'waiting'
          ? voice.say('fetching')
          : !stale
            ? ''
            : model?.faults.size === 0
              ? voice.say('working')
              : made === undefined
                ? voice.say('recipeFault')
                : voice.say('stale'),
      kitsStanding:
        (settings?.people ?? '') === ''
          ? voice.say('kitsNone')
          : // What is wrong is said at its input, and nothing is at work on it.
            model?.faults.size === 0
            ? voice.say('kitsWorking')
            : '',
    });
    return this.frame(contents, voice);
  }

  /** What is wrong with the recipe, and with settings that are folded away, by its path. */
  #faultsOutOfSight(): readonly (readonly [path: string, error: EighthsError])[] {
    const inSight = ['size', 'across', 'down'];
    if (this.#isOpen('more')) inSight.push('fabric-width');
    if (this.#isOpen('kits')) inSight.push('people', 'each', 'spares', 'bolt', 'price', 'margin');
    const readonly = this.#isReadonly;
    return [...(this.model?.faults.keys() ?? [])].flatMap((path) => {
      const error = this.faultAt(path);
      const isSeen = inSight.includes(path) && !readonly && !this.isLocked(path);
      return error === undefined || isSeen ? [] : [[path, error] as const];
    });
  }
}
