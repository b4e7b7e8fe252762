import type { LayoutPart, QuiltPart, QuiltPlan } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { rectangleMeasure, sizeMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { type Column, measuresTable } from '../base/table.js';
import type { Voice } from '../base/voice.js';
import type { MessageName } from '../messages/messages.js';
import type { Shown } from './shown.js';

const PARTS: Readonly<Record<Exclude<LayoutPart, 'alternate'>, MessageName>> = {
  sash: 'partSash',
  cornerstone: 'partCornerstone',
  'side-triangle': 'partSideTriangle',
  'corner-triangle': 'partCornerTriangle',
};

/** Neighbors that are the same are told together. */
function runs(names: readonly string[], voice: Voice): string {
  const told: { readonly block: string; readonly count: number }[] = [];
  for (const block of names) {
    const last = told.at(-1);
    if (last?.block === block) told.splice(-1, 1, { block, count: last.count + 1 });
    else told.push({ block, count: 1 });
  }
  return told
    .map(({ block, count }) => (count === 1 ? block : voice.say('times', { count, block })))
    .join(voice.say('comma'));
}

/** The blocks of each row: their turns where they are all one, else their names. */
function rowsOf({ blocks, cells }: QuiltPlan, voice: Voice): readonly string[] {
  const rows = new Map<number, string[]>();
  const alone = blocks.length === 1;
  for (const { kind, row, block, turn } of cells) {
    if (kind !== 'block') continue;
    const name = blocks.find((each) => each.block.id === block)?.block.name ?? '';
    const turned = turn === 0 ? name : voice.say('turned', { block: name, turns: turn });
    rows.set(row, [...(rows.get(row) ?? []), alone ? String(turn) : turned]);
  }
  return [...rows.values()].map((row) => (alone ? row.join(' ') : runs(row, voice)));
}

function rowTable({ plan, voice }: Shown): TemplateResult | typeof nothing {
  const alone = plan.blocks.length === 1;
  if (alone && plan.cells.every(({ turn }) => turn === 0)) return nothing;
  return html`<table class="turns" part="table">
    <caption .textContent=${voice.say(alone ? 'rowsTurns' : 'rowsBlocks')}></caption>
    <thead>
      <tr>
        <th scope="col" .textContent=${voice.say('rowNumber')}></th>
        <th scope="col" .textContent=${voice.say(alone ? 'rowTurns' : 'rowBlocks')}></th>
      </tr>
    </thead>
    <tbody>
      ${rowsOf(plan, voice).map(
        (row, index) => html`<tr>
          <th scope="row" translate="no" .textContent=${String(index + 1)}></th>
          <td class="row-blocks" translate="no" .textContent=${row}></td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function partsTable({ plan, voice }: Shown): TemplateResult | typeof nothing {
  const parts = plan.layout.parts.flatMap((each) => {
    const { part } = each;
    return part === 'alternate' ? [] : [{ ...each, name: PARTS[part] }];
  });
  if (parts.length === 0) return nothing;
  type Row = QuiltPart & { readonly name: MessageName };
  const columns: readonly Column<Row>[] = [
    {
      name: voice.say('part'),
      words: true,
      cell: ({ name }) =>
        html`<th scope="row" class="capital" .textContent=${voice.say(name)}></th>`,
    },
    {
      name: voice.say('finishedSize'),
      cell: ({ finished: { width, height } }) =>
        html`<td class="figure">
          ${rectangleMeasure(width, height, voice, voice.measures.bare)}
        </td>`,
    },
    {
      name: voice.say('howMany'),
      cell: ({ needed }) =>
        html`<td class="figure" translate="no" .textContent=${String(needed)}></td>`,
    },
  ];
  return measuresTable(voice.say('between'), columns, [{ rows: parts }], voice, 'cuts');
}

/** How the blocks are set, and what is sewn between and round them. */
export function topSection(shown: Shown): TemplateResult {
  const { plan, voice } = shown;
  return html`<section class="part">
    <h3 .textContent=${voice.say('topTitle')}></h3>
    <p>${sentence('topSize', { finished: sizeMeasure(plan.layout.finished, voice) }, voice)}</p>
    ${rowTable(shown)} ${partsTable(shown)}
  </section>`;
}
