import { formatLength } from '../length/format.js';
import type { Length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import { outward, perSide, runsAcross, type Side } from '../plan/side.js';
import type { Area, Dimension, Drawing, DrawingWord, Label, Scale, Shape } from './drawing.js';
import {
  type Box,
  boxAround,
  circlePath,
  type Dot,
  dotAt,
  hatch,
  pathThrough,
} from './geometry.js';
import type { Mark, MarkRole, Painting, PathMark, TextMark } from './marks.js';
import { type ScaleUnit, scaleMarks } from './scale.js';

/** How a drawing's measures and words are written. */
export interface PaintOptions {
  /** How a measure is written; default inches with fractions (`10½`). */
  readonly write?: (length: Length) => string;
  /** The words of another language. */
  readonly words?: Partial<Readonly<Record<DrawingWord, string>>>;
  /** What ruled edges count; default inches. */
  readonly scale?: ScaleUnit;
}

/** The height of text as a share of the drawing: 12 px where it is shown 312 px wide. */
const TEXT_SHARE = 1 / 26;
/** The width of a figure as a share of its height, generously. */
const FIGURE_WIDTH = 0.56;
/** The height of a row of dimensions, and of a ruled edge with its figures, in heights of text. */
const ROW = 1.85;
const RULED_EDGE = 1.5;
const MARGIN = 1;

/** The angle of the hatch for each tint; the center's fabric is plain. */
const HATCHES: readonly (number | undefined)[] = [undefined, 45, -45, 0, 90, 20, -70, 70];

/** The height of each kind of label, in heights of text. */
const LABELS: Readonly<Record<Label['role'], number>> = { order: 0.8, cut: 1, hold: 0.9 };

interface Ink {
  /** The height of text, in inches. */
  readonly text: number;
  readonly box: Box;
  readonly fabrics: readonly string[];
  readonly write: (length: Length) => string;
  readonly word: (word: DrawingWord) => string;
  readonly scale: ScaleUnit;
}

const path = (role: MarkRole, d: string): PathMark => ({ kind: 'path', role, d });

const text = (
  role: MarkRole,
  at: Dot,
  size: number,
  words: string,
  anchor: TextMark['anchor'] = 'middle',
  upward = false,
): TextMark => ({ kind: 'text', role, ...at, size, anchor, upward, text: words });

function paintArea({ role, points, fabric }: Area, ink: Ink): Mark[] {
  const dots = points.map(dotAt);
  const outline = path(role, pathThrough(dots, true));
  if (role === 'waste') return [outline, path('hatch', hatch(dots, 60, ink.text / 4))];
  if (fabric === undefined) return [outline];
  const tint = Math.max(0, ink.fabrics.indexOf(fabric));
  const angle = HATCHES[tint % HATCHES.length];
  const marks: Mark[] = [{ ...outline, tint }];
  if (angle !== undefined) marks.push(path('hatch', hatch(dots, angle, ink.text * 0.7)));
  return marks;
}

function paintLabel({ role, at, text: content }: Label, ink: Ink): Mark[] {
  const dot = dotAt(at);
  const words = 'word' in content ? ink.word(content.word) : String(content.count);
  const label = text(role, dot, ink.text * LABELS[role], words);
  if (role === 'order') return [label];
  const radius = ink.text * (0.52 + (words.length * FIGURE_WIDTH) / 2);
  return [path(role, circlePath(dot, radius)), label];
}

/** A dimension line, its words above it where there is room, else beside it, toward the middle. */
function paintDimension({ from, to, away, row, measure, word }: Dimension, ink: Ink): Mark[] {
  const { box, text: size } = ink;
  const across = runsAcross(away);
  const level = box[away] + outward(away) * size * (ROW * (row + 1) - 0.5);
  const dot = (along: number, above = 0): Dot =>
    across ? { x: along, y: level - above } : { x: level - above, y: along };
  const slash = ({ x, y }: Dot): string =>
    pathThrough([
      { x: x - size / 4, y: y + size / 4 },
      { x: x + size / 4, y: y - size / 4 },
    ]);
  const ends = [from, to].map(dotAt);
  const places = ends.map(({ x, y }) => (across ? x : y));
  const onLine = places.map((along) => dot(along));
  const extensions = ends.map((end, index) => pathThrough([end, entryAt(onLine, index)]));

  const figures = ink.write(measure);
  const words = word === undefined ? figures : `${ink.word(word)} ${figures}`;
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const middle = (low + high) / 2;
  const before = (across ? box.left + box.right : box.top + box.bottom) / 2 < middle;
  const fits = high - low > words.length * FIGURE_WIDTH * size;
  const beside = before ? low - size / 2 : high + size / 2;
  return [
    path('extension', extensions.join('')),
    path('measure', pathThrough(onLine) + onLine.map(slash).join('')),
    fits
      ? text('measure', dot(middle, size * 0.65), size, words, 'middle', !across)
      : // Text that reads upward starts below.
        text('measure', dot(beside), size, words, before === across ? 'end' : 'start', !across),
  ];
}

function paintScale({ from, to, toward }: Scale, ink: Ink): Mark[] {
  const { ticks, figures } = scaleMarks(dotAt(from), dotAt(to), toward, ink.text, ink.scale);
  return [
    path('scale', ticks),
    ...figures.map(({ at, count }) => text('scale', at, ink.text * 0.7, String(count))),
  ];
}

function paintShape(shape: Shape, ink: Ink): Mark[] {
  switch (shape.kind) {
    case 'area':
      return paintArea(shape, ink);
    case 'line':
      return [path(shape.role, pathThrough(shape.points.map(dotAt)))];
    case 'label':
      return paintLabel(shape, ink);
    case 'dimension':
      return paintDimension(shape, ink);
    case 'scale':
      return paintScale(shape, ink);
  }
}

/** The room that a shape needs beyond the box on a side, in heights of text. */
function roomFor(shape: Shape, side: Side, { box, text: size }: Ink): number {
  switch (shape.kind) {
    case 'dimension':
      return shape.away === side ? MARGIN + ROW * (shape.row + 1) : MARGIN;
    case 'scale':
      return shape.toward === side ? MARGIN + RULED_EDGE : MARGIN;
    case 'label': {
      // It may stand outside what it is about; a circle around it takes a height of text.
      const { x, y } = dotAt(shape.at);
      return 1 + (outward(side) * ((runsAcross(side) ? y : x) - box[side])) / size;
    }
    default:
      return MARGIN;
  }
}

/**
 * A drawing in marks: paths and texts in inches, from which an SVG text, or the nodes of a page, are
 * written without further thought. Here exact lengths become coordinates, to a thousandth of an inch.
 *
 * @example
 * const { marks } = paint(drawUnit(halfSquareTriangles({ finished: 3 })));
 * marks.some(({ role }) => role === 'finished-edge'); // true
 */
export function paint(drawing: Drawing, options: PaintOptions = {}): Painting {
  const { shapes, fabrics } = drawing;
  const box = boxAround(
    shapes.flatMap((shape) => ('points' in shape ? shape.points.map(dotAt) : [])),
  );
  const size = Math.max(box.right - box.left, box.bottom - box.top) * TEXT_SHARE;
  const ink: Ink = {
    text: size,
    box,
    fabrics,
    write: options.write ?? ((length) => formatLength(length)),
    word: (word) => options.words?.[word] ?? word,
    scale: options.scale ?? 'inches',
  };
  const { top, right, bottom, left } = perSide((side) => {
    const room = Math.max(...shapes.map((shape) => roomFor(shape, side, ink)));
    return box[side] + outward(side) * room * size;
  });
  return {
    x: left,
    y: top,
    width: right - left,
    height: bottom - top,
    marks: shapes.flatMap((shape) => paintShape(shape, ink)),
  };
}
