import type { LogCabin, LogCabinPiece } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { bareMeasure, measuredCaption, rectangleMeasure } from '../base/measure.js';
import type { Voice } from '../base/voice.js';

/** What the cut list needs to know. */
export interface CutListContext {
  readonly plan: LogCabin;
  readonly voice: Voice;
  readonly blocks: number;
  /** The fabrics in the order of their tints. */
  readonly fabrics: readonly string[];
}

const head = (words: string, className = ''): TemplateResult =>
  html`<th scope="col" class=${className} .textContent=${words}></th>`;

const count = (value: number): TemplateResult =>
  html`<td class="figure" translate="no" .textContent=${String(value)}></td>`;

/** The swatch repeats the tint of the drawing; the name says it without color. */
const fabricCell = (fabric: string, { fabrics, voice }: CutListContext): TemplateResult =>
  html`<td>
    <span class="fabric-name"
      ><span class="swatch tint-${fabrics.indexOf(fabric)}"></span
      ><span .textContent=${voice.word(fabric)}></span
    ></span>
  </td>`;

/** How much strip of each fabric and width the blocks take. */
export function stripList(context: CutListContext): TemplateResult {
  const { plan, voice, blocks } = context;
  return html`<table part="table">
    ${measuredCaption(voice.say('stripList'), voice)}
    <thead>
      <tr>
        ${head(voice.say('fabric'))}${head(voice.say('stripWidth'), 'figure')}
        ${head(voice.say('stripLength'), 'figure')}
        ${blocks > 1 ? head(voice.say('stripLengths', { blocks }), 'figure') : ''}
      </tr>
    </thead>
    <tbody>
      ${plan.strips.map(
        ({ fabric, width, length }) => html`<tr>
          ${fabricCell(fabric, context)}
          <td class="figure">${bareMeasure(width, voice)}</td>
          <td class="figure">${bareMeasure(length, voice)}</td>
          ${blocks > 1 ? html`<td class="figure">${bareMeasure(length.times(blocks), voice)}</td>` : ''}
        </tr>`,
      )}
    </tbody>
  </table>`;
}

/** What a row of the cut list becomes. */
function partName({ part, logs }: LogCabinPiece, voice: Voice): string {
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
  return html`<table part="table">
    ${measuredCaption(voice.say('cutList'), voice)}
    <thead>
      <tr>
        ${head(voice.say('part'))}${head(voice.say('fabric'))}${head(voice.say('cut'), 'figure')}
        ${head(voice.say('forOne'), 'figure')}
        ${blocks > 1 ? head(voice.say('forBlocks', { blocks }), 'figure') : ''}
      </tr>
    </thead>
    <tbody>
      ${plan.pieces.map(
        (piece) => html`<tr>
          <th scope="row" .textContent=${partName(piece, voice)}></th>
          ${fabricCell(piece.fabric ?? '', context)}
          <td class="figure">${rectangleMeasure(piece.width, piece.length, voice, voice.measures.bare)}</td>
          ${count(piece.count)}${blocks > 1 ? count(piece.count * blocks) : ''}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
