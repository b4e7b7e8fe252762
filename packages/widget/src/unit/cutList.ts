import type { LengthInput, UnitCut, UnitPlan } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { measure, rectangleMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { type Column, measuresTable } from '../base/table.js';
import type { Voice } from '../base/voice.js';
import type { MessageName } from '../messages/messages.js';
import { titleOf } from './words.js';

/** What a unit's tables need to know. */
export interface UnitLists {
  readonly plan: UnitPlan;
  readonly voice: Voice;
  /** The fabrics in the order of their tints. */
  readonly fabrics: readonly string[];
}

/** A size before it was rounded: a decimal, since nobody reads a root. */
const exactWriter =
  ({ measures }: Voice) =>
  (value: LengthInput): string =>
    measures.decimal(value);

/** What a cut measures; a strip's width first, as it is cut. */
function sizeOf(cut: UnitCut, voice: Voice): TemplateResult {
  const { bare } = voice.measures;
  const { width, height } = cut;
  if (cut.shape === 'strip') return rectangleMeasure(height, width, voice, bare);
  return width.equals(height)
    ? measure(width, voice, bare)
    : rectangleMeasure(width, height, voice, bare);
}

/** What was rounded up, where that is not what is cut. */
function exactOf(cut: UnitCut, voice: Voice): TemplateResult | typeof nothing {
  const { width, height, exact, shape } = cut;
  if (exact.width.equals(width) && exact.height.equals(height)) return nothing;
  const write = exactWriter(voice);
  const single = shape === 'strip' || exact.width.equals(exact.height);
  const size = single
    ? measure(exact.height, voice, write)
    : rectangleMeasure(exact.width, exact.height, voice, write);
  return html`<div class="minor">${sentence('exactly', { size }, voice)}</div>`;
}

/** How a piece is cut on, before or after it is sewn. */
function cutOn({ diagonalCuts, shape }: UnitCut, plan: UnitPlan): MessageName | undefined {
  if (shape === 'template') return plan.templates === undefined ? 'atAngle' : 'roundTemplate';
  if (shape === 'triangle') return 'fromTop';
  if (diagonalCuts === 0) return undefined;
  return diagonalCuts === 1 ? 'diagonalOnce' : 'diagonalTwice';
}

/** How many of a cut all units take; of strips, the last one may be shorter. */
function countOfAll(cut: UnitCut, { cuts, pieces, sets }: UnitPlan): number {
  if (cut.shape !== 'strip') return cut.count * sets;
  const alike = (fabric: string | undefined, label: string | undefined, width: LengthInput) =>
    fabric === cut.fabric && label === cut.label && cut.height.equals(width);
  const total = pieces
    .filter(({ fabric, label, width }) => alike(fabric, label, width))
    .reduce((sum, { count }) => sum + count, 0);
  // Two rows of a table may take the same strips: each has its share.
  const rows = cuts.filter(({ fabric, label, height }) => alike(fabric, label, height)).length;
  return total / rows;
}

/** The swatch repeats the tint of the drawing; the name says it without color. */
const fabricCell = (fabric: string, { fabrics, voice }: UnitLists): TemplateResult =>
  html`<td>
    <span class="fabric-name"
      ><span class="swatch tint-${fabrics.indexOf(fabric) % 8}"></span
      ><span .textContent=${voice.word(fabric)}></span
    ></span>
  </td>`;

/** What is cut, and how it is cut on. */
function partCell(cut: UnitCut, { plan, voice }: UnitLists): TemplateResult {
  const on = cutOn(cut, plan);
  return html`<th scope="row">
    <span .textContent=${titleOf(cut.label, voice)}></span>
    ${on && html`<div class="minor" .textContent=${voice.say(on)}></div>`}
  </th>`;
}

/** Every cut with its size, in one set and for all units. */
export function unitCutList(lists: UnitLists): TemplateResult {
  const { plan, voice } = lists;
  const counts = (name: string, count: (cut: UnitCut) => number): Column<UnitCut> => ({
    name,
    cell: (cut) => html`<td class="figure" translate="no" .textContent=${String(count(cut))}></td>`,
  });
  const columns: readonly Column<UnitCut>[] = [
    { name: voice.say('part'), words: true, cell: (cut) => partCell(cut, lists) },
    { name: voice.say('fabric'), words: true, cell: ({ fabric }) => fabricCell(fabric, lists) },
    {
      name: voice.say('cutSize'),
      cell: (cut) => html`<td class="figure">${sizeOf(cut, voice)} ${exactOf(cut, voice)}</td>`,
    },
    counts(voice.say('forSet', { made: plan.yield }), ({ count }) => count),
    counts(voice.say('forUnits', { count: plan.count }), (cut) => countOfAll(cut, plan)),
  ];
  return measuresTable(voice.say('cutList'), columns, [{ rows: plan.cuts }], voice, 'cuts');
}
