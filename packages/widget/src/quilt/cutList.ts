import type { PatternCut, PatternPart } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { rectangleMeasure } from '../base/measure.js';
import { type Column, measuresTable } from '../base/table.js';
import type { Voice } from '../base/voice.js';
import type { MessageName } from '../messages/messages.js';
import type { Shown } from './shown.js';

const PARTS: Readonly<Record<Exclude<PatternPart, 'block'>, MessageName>> = {
  sash: 'partSash',
  cornerstone: 'partCornerstone',
  'side-triangle': 'partSideTriangle',
  'corner-triangle': 'partCornerTriangle',
  border: 'partBorder',
  'border-corner': 'partBorderCorner',
  binding: 'partBinding',
};

/** Log 3 is “log 3” in English; other languages have a word for the first part. */
const labelOf = (label: string, voice: Voice): string => voice.word(label).replaceAll('-', ' ');

/** What a cut becomes; a block's name only where there are several blocks. */
export function cutName(
  { part, block, label, border = 1 }: PatternCut,
  { plan, voice }: Pick<Shown, 'plan' | 'voice'>,
): string {
  if (part !== 'block') return voice.say(PARTS[part], { border });
  const name = plan.blocks.find((each) => each.block.id === block)?.block.name;
  const piece = labelOf(label, voice);
  if (name === undefined || name === label || plan.blocks.length === 1) return piece;
  return voice.say('pieceOf', { block: name, piece });
}

/** A cut, and the number it has in the layout. */
type NumberedCut = readonly [cut: PatternCut, number: number];

function nameCell([cut, number]: NumberedCut, shown: Pick<Shown, 'plan' | 'voice'>) {
  const on = { 0: undefined, 1: 'cutOnce', 2: 'cutTwice' } as const;
  const how = on[cut.diagonalCuts ?? 0];
  return html`<th scope="row">
    <span class="fabric-name"
      ><span class="place" translate="no" .textContent=${String(number)}></span
      ><span class="capital" .textContent=${cutName(cut, shown)}></span
    ></span>
    ${how === undefined ? nothing : html`<div class="minor" .textContent=${shown.voice.say(how)}></div>`}
  </th>`;
}

/** Every cut of one fabric with its size and how many there are, numbered as in the layout. */
export function cutList(
  caption: string,
  cuts: readonly PatternCut[],
  shown: Pick<Shown, 'plan' | 'voice'>,
): TemplateResult {
  const { voice } = shown;
  const columns: readonly Column<NumberedCut>[] = [
    { name: voice.say('piece'), words: true, cell: (row) => nameCell(row, shown) },
    {
      name: voice.say('cut'),
      cell: ([{ width, length }]) =>
        html`<td class="figure">
          ${rectangleMeasure(width, length, voice, voice.measures.bare)}
        </td>`,
    },
    {
      name: voice.say('howMany'),
      cell: ([{ count }]) =>
        html`<td class="figure" translate="no" .textContent=${String(count)}></td>`,
    },
  ];
  const rows = cuts.map((cut, index): NumberedCut => [cut, index + 1]);
  return measuresTable(caption, columns, [{ rows }], voice, 'cuts');
}
