import { PRECUT_NAMES } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import {
  choiceField,
  countField,
  fractionRow,
  lengthField,
  named,
  wordField,
} from '../base/fields.js';
import { selectField } from '../base/selectField.js';
import { onHandTable, pieceTable, type TableContext } from './tableForms.js';

/** What the fabric element's form needs to know besides. */
export interface FabricForm extends TableContext {
  /** The length input that was used last. */
  readonly target: string;
  readonly setUnits: (units: string) => void;
}

type Choices = readonly (readonly [value: string, label: string])[];

/** A setting's choices in sight. */
const choice = (field: 'increment' | 'method' | 'join', choices: Choices, form: FabricForm) =>
  choiceField(field, form.voice.say(field), choices, {
    ...form,
    chosen: form.settings[field] || (field === 'join' ? 'diagonal' : ''),
    choose: (value) => form.type(field, value, false),
  });

function increments(form: FabricForm): TemplateResult {
  const { voice, settings } = form;
  const choices = named(
    voice,
    ['1/8 yd', 'increment-eighths'],
    ['1/8 yd; 1/3 yd', 'increment-thirds'],
    ['0.1 m', 'increment-tenths'],
  );
  const chosen = settings.increment ?? '';
  const own = choices.some(([value]) => value === chosen) ? [] : [[chosen, chosen] as const];
  return choice('increment', [...choices, ...own], form);
}

const methods = (form: FabricForm): TemplateResult =>
  choice(
    'method',
    named(form.voice, ['', 'method-'], ['plain', 'method-plain'], ['thrifty', 'method-thrifty']),
    form,
  );

function joins(form: FabricForm): TemplateResult | typeof nothing {
  if (form.pieceRows.every(({ may }) => may !== 'joined')) return nothing;
  const choices = named(form.voice, ['diagonal', 'join-diagonal'], ['straight', 'join-straight']);
  return choice('join', choices, form);
}

/** By the yard or in precuts, and what has to be known for either. */
function bought(form: FabricForm): TemplateResult {
  const { voice, settings, type } = form;
  const precut = settings.precut ?? '';
  const choices = (['', ...PRECUT_NAMES] as const).map(
    (name) => [name, voice.say(`precut-${name}`)] as const,
  );
  const kind = selectField('precut', voice.say('precut'), choices, {
    ...form,
    chosen: precut,
    choose: (value) => type('precut', value, false),
  });
  const packOf = () =>
    countField('pack-of', { label: voice.say('pack-of'), placeholder: '1' }, form);
  return html`${kind} ${precut === '' ? nothing : packOf()} ${joins(form)}
  ${precut === '' ? html`${increments(form)} ${methods(form)}` : nothing}`;
}

function more(form: FabricForm): TemplateResult {
  const { voice } = form;
  const { units } = voice.measures;
  const input = (field: 'straightening' | 'spare', placeholder: string) =>
    lengthField(field, { label: voice.say(field), placeholder }, form);
  return html`<details part="more">
    <summary .textContent=${voice.say('more-fabric')}></summary>
    <div class="fields">
      ${input('straightening', voice.measures.typed(1))}
      ${input('spare', voice.say('spare-usual'))}
      ${wordField('shrinkage', { label: voice.say('shrinkage'), placeholder: '0 %' }, form)}
      ${countField('layers', { label: voice.say('layers'), placeholder: '1' }, form)}
      ${choiceField('units', voice.say('units'), named(voice, ['inches', 'inches'], ['metric', 'centimeters']), { ...form, chosen: units, choose: form.setUnits })}
    </div>
  </details>`;
}

export const fabricForm = (form: FabricForm): TemplateResult =>
  html`<div class="form" part="form" role="group" aria-label=${form.voice.say('pieces')}>
    ${pieceTable(form)} ${fractionRow(form.target, form)}
    <div class="fields">
      ${lengthField('width', { label: form.voice.say('width') }, form)} ${bought(form)}
    </div>
    ${onHandTable(form)} ${more(form)}
  </div>`;
