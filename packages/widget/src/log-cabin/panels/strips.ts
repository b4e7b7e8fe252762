import {
  type BlocksFromStrips,
  blocksFromStrips,
  type EighthsError,
  type LogCabinSpec,
  type StripTotal,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { countField, lengthField } from '../../base/fields.js';
import type { Measures } from '../../base/measures.js';
import { SettingsReader } from '../../base/settingsReader.js';
import { type Column, measureCell, measuresTable, rowHead } from '../../base/table.js';
import { panelForm, textsOf } from './form.js';
import { Memory } from './memory.js';
import type { LogCabinPanel, PanelContext } from './panel.js';
import { action, number } from './said.js';

const HAVE = ['have-0', 'have-1', 'have-2', 'have-3'] as const;
type StripField = (typeof HAVE)[number] | 'have-length';
type Texts = Readonly<Record<StripField, string>>;

/** How many blocks the strips make, or what is wrong with what was typed. */
export interface StripsModel {
  readonly answer?: BlocksFromStrips;
  readonly faults: ReadonlyMap<StripField, EighthsError>;
}

export function stripsModel(
  texts: Texts,
  spec: LogCabinSpec,
  needed: readonly StripTotal[],
  measures: Measures,
): StripsModel {
  const reader = new SettingsReader<StripField>(texts, measures);
  const strips = HAVE.flatMap((field, index) => {
    const strip = needed[index];
    const count = reader.count(field, 1, 10_000);
    if (strip === undefined || count === undefined) return [];
    return [{ fabric: strip.fabric, width: strip.width, count }];
  });
  const stripLength = reader.length('have-length');
  if (reader.faults.size > 0 || strips.length === 0) return { faults: reader.faults };
  const answer = reader.attempt(
    () => blocksFromStrips({ block: spec, strips, ...(stripLength && { stripLength }) }),
    () => 'have-length',
  );
  return { ...(answer && { answer }), faults: reader.faults };
}

const known = new Memory<StripsModel>();

function result(answer: BlocksFromStrips, context: PanelContext): TemplateResult {
  const { voice, fill, isLocked } = context;
  const { blocks, proven, shares } = answer;
  type Row = (typeof shares)[number];
  const columns: readonly Column<Row>[] = [
    { name: voice.say('fabric'), words: true, cell: (row) => rowHead(voice.word(row.fabric)) },
    { name: voice.say('stripWidth'), cell: ({ width }) => measureCell(width, voice) },
    {
      name: voice.say('blocksOf'),
      cell: (row) => html`<td class="figure">${number(row.blocks)}</td>`,
    },
  ];
  const name = voice.say(proven ? 'blocksMade' : 'blocksMadeAtLeast', { blocks });
  const use = () => fill({ blocks: String(blocks) });
  return html`<p class="result" translate="no" .textContent=${name}></p>
    ${shares.length > 1 ? measuresTable(voice.say('blocksOf'), columns, [{ rows: shares }], voice) : nothing}
    ${
      blocks === 0 || isLocked('blocks')
        ? nothing
        : html`<p>${action(voice.say('useBlocks', { blocks }), use)}</p>`
    }`;
}

/** How many blocks strips on hand make: those that run out first decide. */
export const strips: LogCabinPanel = {
  name: 'strips',
  summary: 'panelStrips',
  needsPlan: true,
  render: (context) => {
    const { voice, state, spec, plan, settings } = context;
    const usualLength = voice.measures.units === 'metric' ? '100' : '40';
    const usual: Texts = {
      'have-0': '',
      'have-1': '',
      'have-2': '',
      'have-3': '',
      'have-length': usualLength,
    };
    const texts = textsOf<StripField>(usual, state.texts);
    const model = known.of(state, [texts, settings, voice.measures.units], () =>
      stripsModel(texts, spec, plan.strips, voice.measures),
    );
    const form = panelForm<StripField>(texts, model.faults, context);
    return html`<div class="fields">
        ${plan.strips.slice(0, HAVE.length).map(({ fabric, width }, index) => {
          const label = voice.say('stripsOf', { fabric, width: voice.measures.typed(width) });
          return countField(
            HAVE[index] ?? 'have-0',
            { label, placeholder: voice.say('none') },
            form,
          );
        })}
        ${lengthField('have-length', { label: voice.say('stripLengthUsable') }, form)}
      </div>
      ${model.answer === undefined ? nothing : result(model.answer, context)}`;
  },
};
