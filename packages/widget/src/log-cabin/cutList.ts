import type { LogCabin, LogCabinPiece, StripTotal } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { rectangleMeasure } from '../base/measure.js';
import { type Column, measureCell, measuresTable, rowHead } from '../base/table.js';
import type { Voice } from '../base/voice.js';

/** What the cut list needs to know. */
export interface CutListContext {
  readonly plan: LogCabin;
  readonly voice: Voice;
  readonly blocks: number;
  /** The fabrics in the order of their tints. */
  readonly fabrics: readonly string[];
}

/** The swatch repeats the tint of the drawing; the name says it without color. */
const fabricCell = (fabric: string, { fabrics, voice }: CutListContext): TemplateResult =>
  html`<td>
    <span class="fabric-name"
      ><span class="swatch tint-${fabrics.indexOf(fabric)}"></span
      ><span .textContent=${voice.word(fabric)}></span
    ></span>
  </td>`;

const fabricColumn = (context: CutListContext): Column<{ readonly fabric?: string }> => ({
  name: context.voice.say('fabric'),
  words: true,
  cell: ({ fabric = '' }) => fabricCell(fabric, context),
});

/** How much strip of each fabric and width the blocks take. */
export function stripList(context: CutListContext): TemplateResult {
  const { plan, voice, blocks } = context;
  const lengthFor = (count: number, name: string): Column<StripTotal> => ({
    name,
    cell: ({ length }) => measureCell(length.times(count), voice),
  });
  const columns: Column<StripTotal>[] = [
    fabricColumn(context),
    { name: voice.say('stripWidth'), cell: ({ width }) => measureCell(width, voice) },
    lengthFor(1, voice.say('stripLength')),
  ];
  if (blocks > 1) columns.push(lengthFor(blocks, voice.say('stripLengths', { blocks })));
  return measuresTable(voice.say('stripList'), columns, [{ rows: plan.strips }], voice);
}

/** What a row of the cut list becomes. */
export function partName({ part, logs }: LogCabinPiece, voice: Voice): string {
  switch (part) {
    case 'center':
      return voice.say('pieceCenter');
    case 'log':
      return voice.say('pieceLogs', { orders: logs.join(', ') });
    case 'cornerstone':
      return voice.say('pieceCornerstone');
  }
}

/** Every piece with its size, for one block and for all. */
export function cutList(context: CutListContext): TemplateResult {
  const { plan, voice, blocks } = context;
  const countFor = (count: number, name: string): Column<LogCabinPiece> => ({
    name,
    cell: (piece) =>
      html`<td class="figure" translate="no" .textContent=${String(piece.count * count)}></td>`,
  });
  const columns: Column<LogCabinPiece>[] = [
    { name: voice.say('part'), words: true, cell: (piece) => rowHead(partName(piece, voice)) },
    fabricColumn(context),
    {
      name: voice.say('cut'),
      cell: ({ width, length }) =>
        html`<td class="figure">${rectangleMeasure(width, length, voice, voice.measures.bare)}</td>`,
    },
    countFor(1, voice.say('forOne')),
  ];
  if (blocks > 1) columns.push(countFor(blocks, voice.say('forBlocks', { blocks })));
  return measuresTable(voice.say('cutList'), columns, [{ rows: plan.pieces }], voice);
}
