import {
  type CutRectangle,
  type CuttingPlan,
  cuttingRows,
  type Drawing,
  drawCuttingPlan,
  drawPacking,
  length,
  type PackingToDraw,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';
import { drawingView } from '../drawing/drawingView.js';
import type { OnHandAnswer } from './solving.js';

/** More drawings than this are a blanket of them, and say nothing that the steps do not. */
const MOST_DRAWN = 6;

/** A drawing with what stands above it. */
export interface Figure {
  readonly caption: string;
  readonly drawing: Drawing;
}

const figureView = ({ caption, drawing }: Figure, voice: Voice): TemplateResult => html`<figure>
  ${caption === '' ? nothing : html`<figcaption .textContent=${caption}></figcaption>`}
  ${drawingView(drawing, voice)}
</figure>`;

/** The first of many drawings, side by side, which are made only if they are shown. */
const figures = (makers: readonly (() => Figure)[], voice: Voice): TemplateResult =>
  html`<div class="rows">${makers.slice(0, MOST_DRAWN).map((make) => figureView(make(), voice))}</div>
    ${makers.length > MOST_DRAWN ? html`<p .textContent=${voice.say('moreRows')}></p>` : nothing}`;

/** The pieces keep the tints they have in the list. */
const retinted = (drawing: Drawing, places: readonly number[]): Drawing => ({
  ...drawing,
  fabrics: Array.from({ length: Math.max(...places) + 1 }, (_, at) => `${at + 1}`),
  shapes: drawing.shapes.map((shape) =>
    shape.kind === 'area' && shape.fabric !== undefined
      ? { ...shape, fabric: `${(places[Number(shape.fabric) - 1] ?? 0) + 1}` }
      : shape,
  ),
});

/**
 * Strips across the fabric, folded onto rows.
 *
 * @param places each piece's place in the list of the fabric's pieces
 * @param rows the row of the table that each of those stands in
 */
export function stripLayout(
  plan: CuttingPlan,
  places: readonly number[],
  rows: readonly number[],
  voice: Voice,
): TemplateResult {
  const numbers = places.map((place) => (rows[place] ?? place) + 1);
  const count = cuttingRows(plan);
  const makers = Array.from({ length: count }, (_, index) => (): Figure => {
    const row = index + 1;
    const caption = count === 1 ? '' : voice.say('row', { row, rows: count });
    return { caption, drawing: retinted(drawCuttingPlan(plan, { row, numbers }), places) };
  });
  return figures(makers, voice);
}

const numbersOf = (rows: readonly number[]): readonly number[] => rows.map((row) => row + 1);

/** The one block that is cut along the length. */
export const blockLayout = (
  block: PackingToDraw,
  rows: readonly number[],
  voice: Voice,
): TemplateResult =>
  figures(
    [() => ({ caption: '', drawing: drawPacking(block, { numbers: numbersOf(rows) }) })],
    voice,
  );

const alike = (count: number, voice: Voice): string =>
  count === 1 ? '' : voice.say('alike', { count });

/** Precuts, those that are cut alike once. */
export const precutLayout = (
  rectangles: readonly CutRectangle[],
  rows: readonly number[],
  voice: Voice,
): TemplateResult =>
  figures(
    rectangles.map((rectangle) => () => ({
      caption: alike(rectangle.count, voice),
      drawing: drawPacking(rectangle, { numbers: numbersOf(rows) }),
    })),
    voice,
  );

/** Fabric on hand; both parts of a piece without a corner together, where there is one such piece. */
export function onHandLayout(
  { rectangles, fabrics, rows: onHandRows }: OnHandAnswer,
  rows: readonly number[],
  voice: Voice,
): TemplateResult {
  const groups = fabrics.flatMap((fabric, from) => {
    const own = rectangles.filter((each) => each.from === from);
    const together = (fabric.count ?? 1) === 1 ? [own] : own.map((each) => [each]);
    return together
      .filter(([first]) => first !== undefined)
      .map((parts) => ({ fabric, from, parts }));
  });
  const makers = groups.map(({ fabric, from, parts }) => (): Figure => {
    const { width, length: down, missingCorner: corner } = fabric;
    const missingCorner = corner && {
      width: length(corner.width),
      length: length(corner.length),
    };
    const drawing = drawPacking(
      {
        width: length(width),
        length: length(down),
        ...(missingCorner && { missingCorner }),
        placements: parts.flatMap(({ placements }) => placements),
      },
      { numbers: numbersOf(rows) },
    );
    const name = voice.say('on-hand-piece', { number: (onHandRows[from] ?? from) + 1 });
    const count = alike(Math.max(...parts.map((part) => part.count)), voice);
    return { caption: voice.list(count === '' ? [name] : [name, count]), drawing };
  });
  return figures(makers, voice);
}
