import { formatLength } from '../length/format.js';
import type { Length } from '../length/length.js';
import { runsAcross, type Side } from '../plan/side.js';
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
import type { Mark, Painting, TextMark } from './marks.js';
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

interface Ink {
  /** The height of text, in inches. */
  readonly text: number;
  readonly box: Box;
  readonly fabrics: readonly string[];
  readonly write: (length: Length) => string;
  readonly word: (word: DrawingWord) => string;
  readonly scale: ScaleUnit;
}

const text = (
  role: TextMark['role'],
  at: Dot,
  size: number,
  words: string,
  rest: Partial<Pick<TextMark, 'anchor' | 'upward'>> = {},
): TextMark => ({
  kind: 'text',
  role,
  ...at,
  size,
  anchor: 'middle',
  upward: false,
  text: words,
  ...rest,
});

function paintArea({ role, points, fabric }: Area, ink: Ink): Mark[] {
  const dots = points.map(dotAt);
  const d = pathThrough(dots, true);
  if (role === 'waste') {
    return [
      { kind: 'path', role, d },
      { kind: 'path', role: 'hatch', d: hatch(dots, 60, ink.text / 4) },
    ];
  }
  if (fabric === undefined) return [{ kind: 'path', role, d }];
  const tint = Math.max(0, ink.fabrics.indexOf(fabric));
  const angle = HATCHES[tint % HATCHES.length];
  const marks: Mark[] = [{ kind: 'path', role, d, tint }];
  if (angle !== undefined) {
    marks.push({ kind: 'path', role: 'hatch', d: hatch(dots, angle, ink.text * 0.7) });
  }
  return marks;
}

function paintLabel({ role, at, text: content }: Label, ink: Ink): Mark[] {
  const dot = dotAt(at);
  if ('word' in content) {
    const words = ink.word(content.word);
    const radius = ink.text * (0.5 + (words.length * FIGURE_WIDTH) / 2);
    return [
      { kind: 'path', role, d: circlePath(dot, radius) },
      text(role, dot, ink.text * 0.9, words),
    ];
  }
  const words = String(content.count);
  if (role !== 'cut') return [text(role, dot, ink.text * 0.8, words)];
  return [
    { kind: 'path', role, d: circlePath(dot, ink.text * 0.8) },
    text(role, dot, ink.text, words),
  ];
}

/** Where a row of dimensions stands, beyond the box on that side. */
function rowLevel(away: Side, row: number, { box, text: size }: Ink): number {
  const distance = size * (ROW * (row + 1) - 0.5);
  return away === 'bottom' || away === 'right' ? box[away] + distance : box[away] - distance;
}

function paintDimension(dimension: Dimension, ink: Ink): Mark[] {
  const { away, row, measure, word } = dimension;
  const across = runsAcross(away);
  const level = rowLevel(away, row, ink);
  const onLine = ({ x, y }: Dot): Dot => (across ? { x, y: level } : { x: level, y });
  const [from, to] = [dotAt(dimension.from), dotAt(dimension.to)];
  const [start, end] = [onLine(from), onLine(to)];
  const figures = ink.write(measure);
  const words = word === undefined ? figures : `${ink.word(word)} ${figures}`;
  const half = ink.text * 0.25;
  const slash = ({ x, y }: Dot): string =>
    pathThrough([
      { x: x - half, y: y + half },
      { x: x + half, y: y - half },
    ]);
  return [
    { kind: 'path', role: 'extension', d: pathThrough([from, start]) + pathThrough([to, end]) },
    { kind: 'path', role: 'measure', d: pathThrough([start, end]) + slash(start) + slash(end) },
    dimensionText(words, start, end, across, ink),
  ];
}

/** Above the line where there is room, else beside it, toward the middle of the drawing. */
function dimensionText(words: string, start: Dot, end: Dot, across: boolean, ink: Ink): TextMark {
  const { box, text: size } = ink;
  const axis = across ? 'x' : 'y';
  const [low, high] = [Math.min(start[axis], end[axis]), Math.max(start[axis], end[axis])];
  const middle = (low + high) / 2;
  const place = (along: number, above: number): Dot =>
    across ? { x: along, y: start.y - above } : { x: start.x - above, y: along };
  const upward = !across;
  if (high - low > words.length * FIGURE_WIDTH * size) {
    return text('measure', place(middle, size * 0.65), size, words, { upward });
  }
  const boxMiddle = across ? (box.left + box.right) / 2 : (box.top + box.bottom) / 2;
  const before = boxMiddle < middle;
  // Text that reads upward starts below.
  const anchor = before === across ? 'end' : 'start';
  const along = before ? low - size * 0.5 : high + size * 0.5;
  return text('measure', place(along, 0), size, words, { upward, anchor });
}

const paintScale = ({ from, to, toward }: Scale, ink: Ink): Mark[] => {
  const { ticks, figures } = scaleMarks(dotAt(from), dotAt(to), toward, ink.text, ink.scale);
  return [
    { kind: 'path', role: 'scale', d: ticks },
    ...figures.map(({ at, count }) => text('scale', at, ink.text * 0.7, String(count))),
  ];
};

function paintShape(shape: Shape, ink: Ink): Mark[] {
  switch (shape.kind) {
    case 'area':
      return paintArea(shape, ink);
    case 'line':
      return [{ kind: 'path', role: shape.role, d: pathThrough(shape.points.map(dotAt)) }];
    case 'label':
      return paintLabel(shape, ink);
    case 'dimension':
      return paintDimension(shape, ink);
    case 'scale':
      return paintScale(shape, ink);
  }
}

/** How many rows of dimensions stand on a side. */
const rowsOn = (shapes: readonly Shape[], side: Side): number =>
  Math.max(
    0,
    ...shapes.map((shape) =>
      shape.kind === 'dimension' && shape.away === side ? shape.row + 1 : 0,
    ),
  );

/** The room that a side needs beyond the box, in heights of text. */
function roomOn(shapes: readonly Shape[], side: Side): number {
  const scaled = shapes.some((shape) => shape.kind === 'scale' && shape.toward === side);
  return MARGIN + Math.max(ROW * rowsOn(shapes, side), scaled ? RULED_EDGE : 0);
}

/**
 * A drawing in marks: paths and texts in inches, from which an SVG text, or the nodes of a page, are
 * written without further thought. Here exact lengths become coordinates, to a thousandth of an inch.
 */
export function paint(drawing: Drawing, options: PaintOptions = {}): Painting {
  const { shapes, fabrics } = drawing;
  const box = boxAround(
    shapes.flatMap((shape) =>
      shape.kind === 'area' || shape.kind === 'line' ? shape.points.map(dotAt) : [],
    ),
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
  const left = box.left - roomOn(shapes, 'left') * size;
  const top = box.top - roomOn(shapes, 'top') * size;
  return {
    x: left,
    y: top,
    width: box.right + roomOn(shapes, 'right') * size - left,
    height: box.bottom + roomOn(shapes, 'bottom') * size - top,
    marks: shapes.flatMap((shape) => paintShape(shape, ink)),
  };
}
