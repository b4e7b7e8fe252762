import { html, nothing, type TemplateResult } from 'lit';
import { countField, type FormContext, lengthField, wordField } from '../base/fields.js';
import { selectField } from '../base/selectField.js';
import type { MessageName } from '../messages/messages.js';
import { cellName, type TableName } from './cells.js';
import type { OnHandColumn, OnHandRow } from './onHandRows.js';
import type { PieceColumn, PieceRow } from './pieceRows.js';

/** What the tables' inputs need to know besides. */
export interface TableContext extends FormContext<string> {
  readonly pieceRows: readonly PieceRow[];
  readonly onHandRows: readonly OnHandRow[];
  /** The tint of a row's pieces in the drawing. */
  readonly tintOf: (index: number) => number;
  readonly addRow: (table: TableName) => void;
  readonly removeRow: (table: TableName, index: number) => void;
}

const removeButton = (
  table: TableName,
  index: number,
  name: MessageName,
  { voice, isLocked, removeRow }: TableContext,
): TemplateResult | typeof nothing =>
  isLocked(table)
    ? nothing
    : html`<button
        type="button"
        part="button"
        aria-label=${voice.say(name, { number: index + 1 })}
        @click=${() => removeRow(table, index)}
        .textContent=${'×'}
      ></button>`;

const addButton = (
  table: TableName,
  name: MessageName,
  { voice, isLocked, addRow }: TableContext,
): TemplateResult | typeof nothing =>
  isLocked(table)
    ? nothing
    : html`<button
        type="button"
        part="button"
        class="add"
        @click=${() => addRow(table)}
        .textContent=${voice.say(name)}
      ></button>`;

const numberText = (index: number): TemplateResult =>
  html`<span translate="no" .textContent=${String(index + 1)}></span>`;

function pieceRow({ may }: PieceRow, index: number, context: TableContext): TemplateResult {
  const { voice, type } = context;
  const cell = (column: PieceColumn): string => cellName('pieces', index, column);
  const choices = (['', 'turned', 'joined'] as const).map(
    (each) => [each, voice.say(`may-${each}`)] as const,
  );
  const chosen = {
    ...context,
    chosen: may,
    choose: (value: string) => type(cell('may'), value, false),
  };
  return html`<div
    class="piece"
    role="group"
    aria-label=${voice.say('piece', { number: index + 1 })}
  >
    <span class="number-in-list">
      <span class="swatch tint-${context.tintOf(index)}"></span>${numberText(index)}
    </span>
    ${countField(cell('count'), { label: voice.say('count') }, context)}
    ${lengthField(cell('width'), { label: voice.say('strip-width') }, context)}
    ${lengthField(cell('length'), { label: voice.say('piece-length') }, context)}
    ${wordField(cell('fabric'), { label: voice.say('piece-fabric') }, context)}
    ${selectField(cell('may'), voice.say('piece-may'), choices, chosen)}
    ${removeButton('pieces', index, 'remove-piece', context)}
  </div>`;
}

function onHandRow(index: number, context: TableContext): TemplateResult {
  const { voice } = context;
  const cell = (column: OnHandColumn): string => cellName('on-hand', index, column);
  return html`<div
    class="piece"
    role="group"
    aria-label=${voice.say('on-hand-piece', { number: index + 1 })}
  >
    <span class="number-in-list">${numberText(index)}</span>
    ${countField(cell('count'), { label: voice.say('count') }, context)}
    ${lengthField(cell('width'), { label: voice.say('on-hand-width') }, context)}
    ${lengthField(cell('length'), { label: voice.say('on-hand-length') }, context)}
    ${wordField(cell('corner'), { label: voice.say('on-hand-corner') }, context)}
    ${wordField(cell('fabric'), { label: voice.say('piece-fabric') }, context)}
    ${removeButton('on-hand', index, 'remove-on-hand', context)}
  </div>`;
}

/** The pieces to cut, one row each. */
export const pieceTable = (context: TableContext): TemplateResult =>
  html`${context.pieceRows.map((row, index) => pieceRow(row, index, context))}
  ${addButton('pieces', 'add-piece', context)}`;

/** What is on the shelf, folded away where there is nothing. */
export const onHandTable = (context: TableContext): TemplateResult =>
  html`<details part="more" ?open=${context.onHandRows.length > 0}>
    <summary .textContent=${context.voice.say('on-hand')}></summary>
    ${context.onHandRows.map((_, index) => onHandRow(index, context))}
    ${addButton('on-hand', 'add-on-hand', context)}
  </details>`;
