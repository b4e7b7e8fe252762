import {
  type Drawing,
  drawingSentences,
  drawQuiltPlan,
  fillSentence,
  type Mark,
  type Painting,
  type PaintOptions,
  paint,
  type QuiltPlan,
} from '@eighths/core';
import { mergedMarks } from './mergedMarks.js';

/** A quilt as a picture: its cells as marks, and what goes round them as shapes. */
export interface QuiltPicture {
  readonly cells: readonly Mark[];
  /** Borders, binding, edge and measures: written when it is shown, in the page's language. */
  readonly frame: Drawing;
}

/** More cells than these are smaller than anybody sees, and a load for a page. */
const MOST_CELLS = 3000;
/** Few enough to be drawn in a few milliseconds. */
const AT_ONCE = 8;

/** The plan of some cells of a quilt. */
function withCells(plan: QuiltPlan, from: number, to: number): QuiltPlan {
  const cells = plan.cells.slice(from, to);
  const blocks = cells.filter(({ kind }) => kind === 'block').length;
  return {
    ...plan,
    cells,
    layout: { ...plan.layout, cells: plan.layout.cells.slice(from, to), blocks },
  };
}

/**
 * Draws a quilt few cells at a time; pauses between them. Undefined where there are too many.
 *
 * @param fabrics the ids of the recipe's, in the order of their tints.
 */
export function* picturing(
  plan: QuiltPlan,
  fabrics: readonly string[],
): Generator<undefined, QuiltPicture | undefined> {
  if (plan.cells.length > MOST_CELLS) return undefined;
  const { shapes, title, description } = drawQuiltPlan(withCells(plan, 0, 0));
  // The same box round every part, so that texts and hatches are of one size.
  const edge = shapes.filter(({ kind }) => kind === 'area');
  const marks: Mark[] = [];
  yield;
  for (let from = 0; from < plan.cells.length; from += AT_ONCE) {
    const part = drawQuiltPlan(withCells(plan, from, from + AT_ONCE));
    const cells = part.shapes.slice(0, part.shapes.length - shapes.length);
    const outline = edge.slice(-1);
    const painted = paint({ ...part, fabrics, shapes: [...outline, ...cells] });
    marks.push(...painted.marks.slice(outline.length));
    yield;
  }
  const values = { ...description.values, blocks: plan.layout.blocks };
  return {
    cells: mergedMarks(marks),
    frame: {
      fabrics,
      shapes,
      title,
      description: {
        code: description.code,
        values,
        text: fillSentence(drawingSentences['quilt-description'], values),
      },
    },
  };
}

/** The whole picture with its measures written. */
export function paintedQuilt({ cells, frame }: QuiltPicture, options: PaintOptions): Painting {
  const painting = paint(frame, options);
  return { ...painting, marks: [...cells, ...painting.marks] };
}
