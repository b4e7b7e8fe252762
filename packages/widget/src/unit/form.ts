import {
  UNITS,
  type UnitDefinition,
  type UnitInput,
  type UnitPlan,
  unitNames,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import {
  choiceField,
  countField,
  type FormContext,
  fractionRow,
  lengthField,
  named,
  wordField,
} from '../base/fields.js';
import { selectField } from '../base/selectField.js';
import { titleOf } from './words.js';

/** A unit's form needs to know besides: what it asks for, and what came of it. */
export interface UnitForm extends FormContext<string> {
  readonly definition: UnitDefinition;
  readonly plan: UnitPlan | undefined;
  /** The length input that was used last. */
  readonly target: string;
  readonly setUnit: (unit: string) => void;
  readonly setUnits: (units: string) => void;
}

/** What has a usual answer, out of the way until it is wanted. */
const SELDOM = ['oversize', 'usable'];

function labelOf({ name }: UnitInput, { definition, voice }: UnitForm): string {
  return titleOf(name === 'finished' ? definition.finished : name, voice, 'input');
}

function choose(
  name: string,
  label: string,
  choices: readonly string[],
  chosen: string,
  form: UnitForm,
): TemplateResult {
  const { voice, type } = form;
  const words = choices.map((value) => [value, titleOf(value, voice, name)] as const);
  return choiceField(name, label, words, {
    ...form,
    chosen,
    choose: (value) => type(name, value, false),
  });
}

/** What stands in an empty input: the usual length, or that it follows from the others. */
const usualOf = (text: string | undefined, { voice }: UnitForm): string =>
  text === undefined ? voice.say('solved') : voice.measures.typed(text);

/** The input that a unit's data asks for. */
function inputOf(input: UnitInput, form: UnitForm): TemplateResult {
  const { name } = input;
  const { settings, voice, plan } = form;
  const label = labelOf(input, form);
  switch (input.kind) {
    case 'length':
      return lengthField(name, { label, placeholder: usualOf(input.default, form) }, form);
    case 'size': {
      const height = plan?.finished.height;
      const solved = height === undefined ? voice.say('solved') : voice.measures.typed(height);
      return html`${lengthField('finished-width', { label: voice.say('finished-width') }, form)}
      ${lengthField(
        'finished-height',
        { label: voice.say('finished-height'), placeholder: solved },
        form,
      )}`;
    }
    case 'lengths':
      return lengthField(name, { label }, form);
    case 'count':
      return countField(name, { label, placeholder: String(input.default) }, form);
    case 'degrees':
      return wordField(name, { label, placeholder: String(input.default) }, form);
    case 'choice':
      return choose(name, label, input.choices, settings[name] || input.default, form);
    case 'flag': {
      const off = settings[name] === '' ? !input.default : settings[name] === 'false';
      return choose(name, label, ['true', 'false'], off ? 'false' : 'true', form);
    }
  }
}

/** The unit, how it is made, its size, and how many. */
function essentials(form: UnitForm): TemplateResult {
  const { voice, definition, settings, plan, setUnit } = form;
  const units = unitNames().map(
    (name) => [name, titleOf(UNITS[name].name, voice, 'unit')] as const,
  );
  const methods = definition.methods.map(({ name }) => name);
  const method = settings.method || plan?.method || methods[0];
  const unit = { ...form, chosen: definition.name, choose: setUnit };
  const inputs = definition.inputs.filter(({ name }) => !SELDOM.includes(name));
  return html`<div class="fields" part="essentials">
      ${selectField('unit', voice.say('unit'), units, unit)}
      ${methods.length > 1 ? choose('method', voice.say('method'), methods, method ?? '', form) : nothing}
      ${inputs.map((input) => inputOf(input, form))}
      ${countField('count', { label: voice.say('count') }, form)}
    </div>
    ${fractionRow(form.target, form)}`;
}

function more(form: UnitForm): TemplateResult {
  const { voice, definition } = form;
  const { units, typed } = voice.measures;
  const seldom = definition.inputs.filter(({ name }) => SELDOM.includes(name));
  const measures = named(voice, ['inches', 'inches'], ['metric', 'centimeters']);
  return html`<details part="more">
    <summary .textContent=${voice.say('more-unit')}></summary>
    <div class="fields">
      ${lengthField('seam', { label: voice.say('seam'), placeholder: typed('1/4') }, form)}
      ${seldom.map((input) => inputOf(input, form))}
      ${choiceField('units', voice.say('units'), measures, { ...form, chosen: units, choose: form.setUnits })}
    </div>
  </details>`;
}

export const unitForm = (form: UnitForm): TemplateResult =>
  html`<div class="form" part="form" role="group" aria-label=${form.voice.say('unitSizes')}>
    ${essentials(form)}${more(form)}
  </div>`;

/** Whether a field has an input in sight, where its error stands. */
export function isInSight(field: string, { inputs }: UnitDefinition): boolean {
  const names = inputs.filter(({ kind }) => kind !== 'choice' && kind !== 'flag');
  const own = names.flatMap(({ kind, name }) =>
    kind === 'size' ? [`${name}-width`, `${name}-height`] : [name],
  );
  return [...own, 'count'].includes(field) && !SELDOM.includes(field);
}
