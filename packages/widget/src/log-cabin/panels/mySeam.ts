import type { BlockRescue, CopingStrip, SeamDrift } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { countField, lengthField } from '../../base/fields.js';
import { measure, sizeMeasure } from '../../base/measure.js';
import { sentence } from '../../base/sentence.js';
import { type Column, measureCell, measuresTable, rowHead } from '../../base/table.js';
import type { MessageName } from '../../messages/messages.js';
import { panelForm, textsOf } from './form.js';
import { Memory } from './memory.js';
import type { LogCabinPanel, PanelContext } from './panel.js';
import { notes, saidNotice } from './said.js';
import {
  type DriftRow,
  type SeamField,
  type SeamModel,
  seamModel,
  usualSeam,
} from './seamModel.js';

const known = new Memory<SeamModel>();

function driftTable(rows: readonly DriftRow[], { voice }: PanelContext): TemplateResult {
  const large = rows.some((row) => row.large);
  const columns: readonly Column<DriftRow>[] = [
    {
      name: voice.say('driftHow'),
      words: true,
      cell: ({ how }) => rowHead(voice.say(how)),
    },
    {
      name: voice.say(large ? 'driftLarge' : 'driftShort'),
      cell: ({ by }) => measureCell(by, voice),
    },
  ];
  return measuresTable(voice.say('drift'), columns, [{ rows }], voice);
}

function driftAnswer(drift: SeamDrift, model: SeamModel, context: PanelContext): TemplateResult {
  const { voice } = context;
  const { oversize, covered, warnings } = drift;
  const places = { oversize: measure(oversize, voice) };
  return html`${driftTable(model.rows, context)}
    ${
      oversize.sign() > 0
        ? html`<p>
            ${sentence('driftOversize', places, voice)}
            ${covered ? html`<span .textContent=${voice.say('driftCovered')}></span>` : nothing}
          </p>`
        : nothing
    }
    ${notes(warnings, context, 'warnings')}`;
}

function copingTable({ cope }: BlockRescue, context: PanelContext): TemplateResult {
  const { voice } = context;
  const columns: readonly Column<CopingStrip>[] = [
    { name: voice.say('copingMeasured'), cell: ({ measured }) => measureCell(measured, voice) },
    { name: voice.say('copingFinished'), cell: ({ finished }) => measureCell(finished, voice) },
  ];
  const places = { cut: measure(cope.cut, voice) };
  return html`${measuresTable(voice.say('copingStrips'), columns, [{ rows: cope.strips }], voice)}
    <p>${sentence('copingCut', places, voice)}</p>`;
}

function rescueAnswer(rescue: BlockRescue, context: PanelContext): TemplateResult {
  const { voice } = context;
  const { trim, cope, warnings } = rescue;
  const needed = cope.cut.sign() > 0;
  const ways: readonly { readonly name: MessageName; readonly way: BlockRescue['trim'] }[] = [
    { name: 'rescueTrim', way: trim },
    ...(needed ? [{ name: 'rescueCope', way: cope } as const] : []),
  ];
  type Row = (typeof ways)[number];
  const columns: readonly Column<Row>[] = [
    { name: voice.say('rescueWay'), words: true, cell: ({ name }) => rowHead(voice.say(name)) },
    { name: voice.say('rescueTrimTo'), cell: ({ way }) => measureCell(way.trimTo, voice) },
    { name: voice.say('finished'), cell: ({ way }) => measureCell(way.finished, voice) },
    {
      name: voice.say('rescueQuilt'),
      cell: ({ way }) => html`<td class="figure">${sizeMeasure(way.quilt, voice)}</td>`,
    },
  ];
  return html`${measuresTable(voice.say('rescue'), columns, [{ rows: ways }], voice)}
    ${needed ? copingTable(rescue, context) : nothing} ${notes(warnings, context, 'warnings')}`;
}

/** The real seam from a test, what it does to the block, and ways out for blocks already sewn. */
export const mySeam: LogCabinPanel = {
  name: 'seam',
  summary: 'panelSeam',
  needsPlan: true,
  render: (context) => {
    const { voice, state, plan, finished, settings } = context;
    const texts = textsOf<SeamField>(usualSeam(voice.measures, finished), state.texts);
    const model = known.of(state, [texts, settings, voice.measures.units], () =>
      seamModel(texts, plan, voice.measures),
    );
    const form = panelForm<SeamField>(texts, model.faults, context);
    const input = (field: SeamField, name: MessageName, placeholder = '') =>
      lengthField(field, { label: voice.say(name), placeholder }, form);
    const count = (field: SeamField, name: MessageName) =>
      countField(field, { label: voice.say(name) }, form);
    const { expected, test, drift, rescue } = model;
    const places = expected && { expected: measure(expected, voice) };
    return html`<div class="halves">
      <div>
        <p .textContent=${voice.say('seamAbout')}></p>
        <div class="fields" role="group" aria-label=${voice.say('seamAbout')}>
          ${input('seam-strip', 'seamStrip')} ${count('seam-strips', 'seamStrips')}
          ${input('seam-measured', 'seamMeasured', expected && voice.measures.typed(expected))}
        </div>
        ${places && html`<p>${sentence('seamExpected', places, voice)}</p>`}
        ${test && html`<p class="result">${saidNotice(test.verdict, context)}</p>`}
        ${drift && driftAnswer(drift, model, context)}
      </div>
      <div>
        <div class="fields" role="group" aria-label=${voice.say('rescue')}>
          <div class="long">${input('rescue-measured', 'rescueMeasured', '9 1/2; 9 1/4')}</div>
          ${input('rescue-finished', 'rescueFinished')} ${count('rescue-across', 'across')}
          ${count('rescue-down', 'down')}
        </div>
        ${rescue && rescueAnswer(rescue, context)}
      </div>
    </div>`;
  },
};
