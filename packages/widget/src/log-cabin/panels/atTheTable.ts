import type { LayeredCuts, TrimTools } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { choiceField, countField, lengthField, named } from '../../base/fields.js';
import { measure } from '../../base/measure.js';
import { sentence } from '../../base/sentence.js';
import { type Column, measuresTable, rowHead } from '../../base/table.js';
import { partName } from '../cutList.js';
import { panelForm, textsOf } from './form.js';
import { Memory } from './memory.js';
import type { LogCabinPanel, PanelContext } from './panel.js';
import { notes, number, saidNotice } from './said.js';
import {
  type RoundSteps,
  type TableField,
  type TableModel,
  type TableTexts,
  tableModel,
  usualTable,
} from './tableModel.js';

const known = new Memory<TableModel>();

function tableForm(texts: TableTexts, model: TableModel, context: PanelContext): TemplateResult {
  const { voice, state } = context;
  const form = panelForm<TableField>(texts, model.faults, context);
  const { say } = voice;
  return html`<div class="fields controls-of-panel" role="group" aria-label=${say('panelTable')}>
    ${choiceField(
      'table-method',
      say('sewing'),
      named(
        voice,
        ['cut-first', 'cut-first'],
        ['to-strip', 'to-strip'],
        ['strip-set', 'strip-set'],
      ),
      {
        isLocked: form.isLocked,
        chosen: texts['table-method'],
        choose: (method) => state.type({ 'table-method': method }, false),
      },
    )}
    ${choiceField(
      'table-mat',
      say('mat'),
      named(voice, ['fixed', 'mat-fixed'], ['turning', 'mat-turning']),
      {
        isLocked: form.isLocked,
        chosen: texts['table-mat'],
        choose: (mat) => state.type({ 'table-mat': mat }, false),
      },
    )}
    ${lengthField('table-ruler', { label: say('rulerOnHand'), placeholder: say('any') }, form)}
    ${lengthField('table-mat-side', { label: say('matOnHand'), placeholder: say('any') }, form)}
    ${countField('table-layers', { label: say('layers') }, form)}
  </div>`;
}

function toolsNeeded({ ruler, mat, warnings }: TrimTools, context: PanelContext): TemplateResult {
  const { voice } = context;
  const places = { ruler: measure(ruler, voice), mat: measure(mat, voice) };
  return html`<p class="title" .textContent=${voice.say('tools')}></p>
    <p>
      ${
        ruler.sign() === 0
          ? html`<span .textContent=${voice.say('toolsNone')}></span>`
          : sentence('toolsNeeded', places, voice)
      }
    </p>
    ${notes(warnings, context, 'warnings')}`;
}

function layerTable({ cuts, layers }: TableModel, context: PanelContext): TemplateResult {
  const { voice, blocks } = context;
  const count = (name: string, of: (row: LayeredCuts) => number): Column<LayeredCuts> => ({
    name,
    cell: (row) => html`<td class="figure">${number(of(row))}</td>`,
  });
  const columns: readonly Column<LayeredCuts>[] = [
    {
      name: voice.say('part'),
      words: true,
      cell: ({ piece }) => rowHead(partName(piece, voice)),
    },
    count(voice.say('pieces'), (row) => row.count),
    count(voice.say('cutsMade'), (row) => row.cuts),
  ];
  const caption = voice.say('layerCuts', { layers, blocks });
  return measuresTable(caption, columns, [{ rows: cuts }], voice, 'counts');
}

function roundList({ round, steps }: RoundSteps, context: PanelContext): TemplateResult {
  const { voice } = context;
  const name = round === 0 ? voice.say('tableBegin') : voice.say('tableRound', { round });
  return html`<div class="round">
    <p class="title" .textContent=${name}></p>
    <ol aria-label=${name}>
      ${steps.map((step) => html`<li>${saidNotice(step, context)}</li>`)}
    </ol>
  </div>`;
}

/** The steps in words, round by round, and what the work needs. */
export const atTheTable: LogCabinPanel = {
  name: 'table',
  summary: 'panelTable',
  needsPlan: true,
  render: (context) => {
    const { voice, state, plan, settings, hand, blocks } = context;
    const texts = textsOf<TableField>(usualTable, state.texts);
    const model = known.of(state, [texts, settings, hand, voice.measures.units], () =>
      tableModel(texts, plan, { hand, blocks }, voice.measures),
    );
    return html`${tableForm(texts, model, context)}
      ${model.tools === undefined ? nothing : toolsNeeded(model.tools, context)}
      ${model.cuts.length === 0 ? nothing : layerTable(model, context)}
      <div class="rounds" part="steps">${model.rounds.map((each) => roundList(each, context))}</div>`;
  },
};
