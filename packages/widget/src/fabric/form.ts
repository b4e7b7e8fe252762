import { html, type TemplateResult } from 'lit';
import {
  choiceField,
  countField,
  type FormContext,
  fractionRow,
  lengthField,
  named,
  wordField,
} from '../base/fields.js';
import { cellName } from './model.js';
import type { PieceRow } from './pieceRows.js';

/** The fabric element's form needs to know besides: the table's rows, and what changes them. */
export interface FabricForm extends FormContext<string> {
  readonly rows: readonly PieceRow[];
  /** The tint of a row's pieces in the drawing. */
  readonly tintOf: (index: number) => number;
  readonly addRow: () => void;
  readonly removeRow: (index: number) => void;
  /** The length input that was used last. */
  readonly target: string;
  readonly setUnits: (units: string) => void;
}

function pieceRow(index: number, form: FabricForm): TemplateResult {
  const { voice, removeRow, isLocked } = form;
  const cell = (column: keyof PieceRow): string => cellName(index, column);
  const number = index + 1;
  return html`<div class="piece" role="group" aria-label=${voice.say('piece', { number })}>
    <span class="number-in-list">
      <span class="swatch tint-${form.tintOf(index)}"></span>
      <span translate="no" .textContent=${String(number)}></span>
    </span>
    ${countField(cell('count'), { label: voice.say('count') }, form)}
    ${lengthField(cell('width'), { label: voice.say('strip-width') }, form)}
    ${lengthField(cell('length'), { label: voice.say('piece-length') }, form)}
    ${wordField(cell('fabric'), { label: voice.say('piece-fabric') }, form)}
    ${
      isLocked('pieces')
        ? ''
        : html`<button
            type="button"
            part="button"
            aria-label=${voice.say('remove-piece', { number })}
            @click=${() => removeRow(index)}
            .textContent=${'×'}
          ></button>`
    }
  </div>`;
}

function increments(form: FabricForm): TemplateResult {
  const { voice, settings, type } = form;
  const choices = named(
    voice,
    ['1/8 yd', 'increment-eighths'],
    ['1/8 yd; 1/3 yd', 'increment-thirds'],
    ['0.1 m', 'increment-tenths'],
  );
  const chosen = settings.increment ?? '';
  const own = choices.some(([value]) => value === chosen) ? [] : [[chosen, chosen] as const];
  return choiceField('increment', voice.say('increment'), [...choices, ...own], {
    ...form,
    chosen,
    choose: (value) => type('increment', value, false),
  });
}

function more(form: FabricForm): TemplateResult {
  const { voice } = form;
  const { units } = voice.measures;
  const input = (
    field: 'straightening' | 'spare' | 'on-hand-width' | 'on-hand-length',
    placeholder: string,
  ) => lengthField(field, { label: voice.say(field), placeholder }, form);
  return html`<details part="more">
    <summary .textContent=${voice.say('more-fabric')}></summary>
    <div class="fields">
      ${input('straightening', voice.measures.typed(1))}
      ${input('spare', voice.say('spare-usual'))}
      ${wordField('shrinkage', { label: voice.say('shrinkage'), placeholder: '0 %' }, form)}
      ${countField('layers', { label: voice.say('layers'), placeholder: '1' }, form)}
      ${input('on-hand-width', form.settings.width ?? '')}
      ${input('on-hand-length', '')}
      ${choiceField('units', voice.say('units'), named(voice, ['inches', 'inches'], ['metric', 'centimeters']), { ...form, chosen: units, choose: form.setUnits })}
    </div>
  </details>`;
}

export function fabricForm(form: FabricForm): TemplateResult {
  const { voice, rows, addRow, isLocked } = form;
  return html`<div class="form" part="form" role="group" aria-label=${voice.say('pieces')}>
    ${rows.map((_, index) => pieceRow(index, form))}
    ${
      isLocked('pieces')
        ? ''
        : html`<button
            type="button"
            part="button"
            class="add"
            @click=${addRow}
            .textContent=${voice.say('add-piece')}
          ></button>`
    }
    ${fractionRow(form.target, form)}
    <div class="fields">
      ${lengthField('width', { label: voice.say('width') }, form)} ${increments(form)}
    </div>
    ${more(form)}
  </div>`;
}
