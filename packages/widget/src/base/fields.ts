import { EighthsError, type Length, length } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import type { MessageName } from '../messages/messages.js';
import { spokenText } from './measure.js';
import type { Voice } from './voice.js';

/** What a form's parts need to know of the element they stand in. */
export interface FormContext<Field extends string> {
  readonly voice: Voice;
  readonly settings: Readonly<Record<Field, string>>;
  /** The error to show at an input, if any. */
  readonly faultAt: (field: Field) => EighthsError | undefined;
  readonly isLocked: (field: string) => boolean;
  readonly type: (field: Field, text: string, pausing?: boolean) => void;
  readonly settle: () => void;
}

/** What an input is for. */
export interface InputOptions {
  readonly label: string;
  /** What stands in an empty input: what will be taken for it. */
  readonly placeholder?: string;
}

const typedIn = ({ target }: Event): string =>
  target instanceof HTMLInputElement ? target.value : '';

const text = (words: string, className: string): TemplateResult =>
  html`<span class=${className} .textContent=${words}></span>`;

/** An input's value as it was fixed by the page's author. */
const fixed = (label: string, value: string): TemplateResult =>
  html`<div class="field" part="field">${text(label, 'label')}${text(value, 'fixed')}</div>`;

/** How inputs differ. */
interface InputKind {
  readonly mode?: 'text' | 'numeric';
  /** What was understood, below the input. */
  readonly echo?: TemplateResult | typeof nothing;
  /** What the arrow keys make of it: one step up or down. */
  readonly stepped?: (steps: number) => string | undefined;
}

function textField<Field extends string>(
  field: Field,
  { label, placeholder }: InputOptions,
  context: FormContext<Field>,
  { mode = 'text', echo = nothing, stepped }: InputKind = {},
): TemplateResult {
  const value = context.settings[field];
  const onKey = (event: KeyboardEvent): void => {
    const steps = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    const next = steps === 0 ? undefined : stepped?.(steps);
    if (next === undefined) return;
    event.preventDefault();
    context.type(field, next);
  };
  if (context.isLocked(field)) return fixed(label, value);
  const fault = context.faultAt(field);
  return html`<div class="field" part="field">
    <label for=${field} .textContent=${label}></label>
    <input
      id=${field}
      part="input"
      type="text"
      inputmode=${mode}
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      enterkeyhint="next"
      placeholder=${placeholder ?? nothing}
      aria-invalid=${fault === undefined ? 'false' : 'true'}
      aria-describedby="${field}-note"
      .value=${value}
      @input=${(event: Event) => context.type(field, typedIn(event))}
      @change=${() => context.settle()}
      @keydown=${onKey}
    />
    <span id="${field}-note" class="note">
      ${fault === undefined ? echo : text(context.voice.error(fault), 'error')}
    </span>
  </div>`;
}

function lengthOf(typed: string, voice: Voice): Length | undefined {
  try {
    return voice.measures.read(typed);
  } catch (error) {
    if (error instanceof EighthsError) return undefined;
    throw error;
  }
}

/** The length as it was understood, where that is not just what was typed. */
function echo(typed: string, voice: Voice): TemplateResult | typeof nothing {
  const value = lengthOf(typed, voice);
  if (value === undefined || voice.measures.typed(value) === typed.trim()) return nothing;
  const { figures, spoken, units } = voice.measures;
  const shown = figures(value);
  return spokenText(
    units === 'metric' ? shown : voice.say('inInches', { length: shown }),
    spoken(value),
  );
}

/** One step up or down of what stands in an input; undefined where that is no single length. */
export function stepped(typed: string, steps: number, voice: Voice): string | undefined {
  const value = lengthOf(typed, voice);
  if (value === undefined) return undefined;
  const moved = value.plus(voice.measures.step.times(steps));
  return moved.sign() > 0 ? voice.measures.typed(moved) : undefined;
}

/** An input for a length (or several): what is typed stays as it is, with what was understood below. */
export function lengthField<Field extends string>(
  field: Field,
  options: InputOptions,
  context: FormContext<Field>,
): TemplateResult {
  const { settings, voice } = context;
  const typed = settings[field];
  return textField(field, options, context, {
    echo: echo(typed, voice),
    stepped: (steps) => stepped(typed, steps, voice),
  });
}

/** An input for a whole number; the arrow keys count. */
export function countField<Field extends string>(
  field: Field,
  options: InputOptions,
  context: FormContext<Field>,
): TemplateResult {
  const counted = (steps: number): string | undefined => {
    const next = Number(context.settings[field]) + steps;
    return Number.isInteger(next) && next > 0 ? String(next) : undefined;
  };
  return textField(field, options, context, { mode: 'numeric', stepped: counted });
}

/** An input for a word, such as a fabric's name. */
export const wordField = <Field extends string>(
  field: Field,
  options: InputOptions,
  context: FormContext<Field>,
): TemplateResult => textField(field, options, context);

/** Nothing is sent anywhere: Enter would load the page anew. */
const stay = (event: Event): void => event.preventDefault();

/**
 * One of a few words, all of them in sight. Their form is there for Chromium (seen in 156): a shadow root
 * keeps every radio button that is taken out of it, with all that it stood among, but a form does not.
 */
export function choiceField(
  field: string,
  label: string,
  choices: readonly (readonly [value: string, label: string])[],
  context: {
    readonly isLocked: (field: string) => boolean;
    readonly chosen: string;
    readonly choose: (value: string) => void;
  },
): TemplateResult {
  const { chosen, isLocked, choose } = context;
  if (isLocked(field)) {
    return fixed(label, choices.find(([value]) => value === chosen)?.[1] ?? chosen);
  }
  return html`<fieldset class="field choice" part="field">
    <legend .textContent=${label}></legend>
    <form autocomplete="off" @submit=${stay}>
      ${choices.map(
        ([value, words]) => html`<label class="option">
          <input
            type="radio"
            name=${field}
            value=${value}
            .checked=${value === chosen}
            @change=${(event: Event) => choose(typedIn(event))}
          />${text(words, '')}</label
        >`,
      )}
    </form>
  </fieldset>`;
}

const EIGHTHS = [1, 2, 3, 4, 5, 6, 7].map((eighths) => length(eighths).dividedBy(8));

/** What stands in an input with its fraction replaced. */
function withFraction(typed: string, fraction: Length, voice: Voice): string {
  const value = lengthOf(typed, voice) ?? typed.match(/^\d{1,6}/)?.[0] ?? 0;
  return voice.measures.typed(length(value).toGrid(1, 'down').plus(fraction));
}

/**
 * Fractions to put into the input last used, and steps: a phone's keypad has no slash. A press leaves
 * the focus where it is.
 */
export function fractionRow<Field extends string>(
  target: Field,
  context: FormContext<Field>,
): TemplateResult | typeof nothing {
  const { voice, settings, type, isLocked } = context;
  if (voice.measures.units === 'metric' || isLocked(target)) return nothing;
  const { figures, spoken, step } = voice.measures;
  const typed = settings[target];
  const button = (label: string, words: string, next: string | undefined) =>
    html`<button
      type="button"
      part="button"
      aria-label=${words}
      @pointerdown=${(event: Event) => event.preventDefault()}
      @click=${() => next !== undefined && type(target, next, false)}
      .textContent=${label}
    ></button>`;
  return html`<div class="fractions" role="group" aria-label=${voice.say('fractions')}>
    ${EIGHTHS.map((each) => button(figures(each), spoken(each), withFraction(typed, each, voice)))}
    ${button(`− ${figures(step)}`, voice.say('less'), stepped(typed, -1, voice))}
    ${button(`+ ${figures(step)}`, voice.say('greater'), stepped(typed, 1, voice))}
  </div>`;
}

/** The choices of a setting, each with the message of its name. */
export const named = (
  voice: Voice,
  ...choices: readonly (readonly [value: string, name: MessageName])[]
): readonly (readonly [string, string])[] =>
  choices.map(([value, name]) => [value, voice.say(name)]);
