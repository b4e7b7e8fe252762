import { fail } from '../errors/error.js';
import { type Notice, notice } from '../plan/notice.js';
import type { Drawing } from './drawing.js';
import { FIVE_CENTIMETERS, pathThrough, squareAt } from './geometry.js';
import { pathLooks, textColor } from './look.js';
import type { Painting } from './marks.js';
import { type PaintOptions, paint } from './paint.js';
import type { Paper, Sheet } from './sheetPaper.js';
import { type SheetNoteCode, sheetSentences } from './sheetSentences.js';
import { markNode, type SvgNode, svgText } from './svg.js';

/** How sheets are written. */
export interface SheetWriting extends PaintOptions {
  /** A sentence in another language; default the English text. */
  readonly say?: (said: Notice<string>) => string;
}

/** A sheet of paper to print at 100 %. */
export interface SheetPage {
  readonly paper: Paper;
  readonly title: Drawing['title'];
  /** Its place among the sheets of one drawing, from 1. */
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  readonly notes: readonly Notice<SheetNoteCode>[];
  /** The sheet as an SVG text in real inches. */
  readonly svg: string;
  /** The same as data, for a page that makes nodes of it. */
  readonly image: SvgNode;
}

/** What neighboring sheets show twice. */
const OVERLAP = 0.5;
const HEADER = 0.35;
/** The check square and the air above it. */
const FOOTER = FIVE_CENTIMETERS + 0.15;
const MOST_PAGES = 200;

interface Tiling {
  /** The part of the drawing on each sheet. */
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
}

/** To a hundred-thousandth of an inch: far below what a printer shows. */
const fine = (value: number): number => Math.round(value * 1e5) / 1e5;

const tiles = (extent: number, tile: number): number =>
  extent <= tile + 1e-6 ? 1 : Math.ceil((extent - OVERLAP - 1e-6) / (tile - OVERLAP));

function tilingOf({ width, height }: Painting, sheet: Sheet): Tiling {
  const tile = {
    width: sheet.width - 2 * sheet.margin,
    height: sheet.height - 2 * sheet.margin - HEADER - FOOTER,
  };
  return { ...tile, columns: tiles(width, tile.width), rows: tiles(height, tile.height) };
}

const path = (
  role: keyof typeof pathLooks,
  d: string,
  extra: Record<string, string> = {},
): SvgNode => ({ name: 'path', attributes: { class: role, ...pathLooks[role], ...extra, d } });

const words = (text: string, x: number, y: number, size: number, anchor = 'start'): SvgNode => ({
  name: 'text',
  attributes: {
    x: fine(x),
    y: fine(y),
    'font-size': size,
    'text-anchor': anchor,
    fill: textColor('measure'),
  },
  content: text,
});

/** A sentence in lines of at most so many characters. */
function wrapped(text: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > most) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

const square = (x: number, y: number, side: number): string =>
  pathThrough(squareAt({ x, y }, side), true);

/** A square of 5 cm ruled in centimeters, in its corner one of an inch ruled in eighths. */
function checkSquare(left: number, bottom: number): readonly SvgNode[] {
  const top = bottom - FIVE_CENTIMETERS;
  const tick = (x: number, from: number, height: number): string =>
    pathThrough([
      { x, y: from },
      { x, y: from + height },
    ]);
  const centimeters = [1, 2, 3, 4].map((count) => tick(left + count / 2.54, top, 0.12));
  const eighths = [1, 2, 3, 4, 5, 6, 7].map((count) =>
    tick(left + count / 8, bottom - 1, count % 4 === 0 ? 0.15 : count % 2 === 0 ? 0.1 : 0.06),
  );
  return [
    path('outline', square(left, top, FIVE_CENTIMETERS), { 'data-check': '5 cm' }),
    path('outline', square(left, bottom - 1, 1), { 'data-check': '1 in' }),
    path('scale', centimeters.join('') + eighths.join('')),
    words('1 in', left + 0.5, bottom - 0.35, 0.15, 'middle'),
    words('5 cm', left + 1.3, top + 0.5, 0.15, 'middle'),
  ];
}

const letterOf = (index: number): string => String.fromCharCode(65 + (index % 26));

/** The crosses on which neighboring sheets are joined, in the middle of what both show. */
function joiningMarks(
  painting: Painting,
  { width, height, columns, rows }: Tiling,
): readonly SvgNode[] {
  const [stepX, stepY] = [width - OVERLAP, height - OVERLAP];
  const marks: SvgNode[] = [];
  let index = 0;
  const cross = (x: number, y: number): void => {
    const arm = OVERLAP / 3;
    marks.push(
      path(
        'trim-line',
        pathThrough([
          { x: x - arm, y },
          { x: x + arm, y },
        ]) +
          pathThrough([
            { x, y: y - arm },
            { x, y: y + arm },
          ]),
      ),
      words(letterOf(index), x + arm / 3, y - arm / 3, 0.14),
    );
    index += 1;
  };
  const joint = (start: number, count: number, step: number): number =>
    start + count * step + OVERLAP / 2;
  for (let row = 0; row < rows; row += 1) {
    for (let column = 1; column < columns; column += 1) {
      for (const share of [0.25, 0.75]) {
        cross(joint(painting.x, column, stepX), painting.y + row * stepY + share * height);
      }
    }
  }
  for (let row = 1; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      for (const share of [0.25, 0.75]) {
        cross(painting.x + column * stepX + share * width, joint(painting.y, row, stepY));
      }
    }
  }
  return marks;
}

/** @throws EighthsError `too-many-pages` */
function checkedTiling(painting: Painting, sheet: Sheet): Tiling & { readonly pages: number } {
  const tiling = tilingOf(painting, sheet);
  const pages = tiling.columns * tiling.rows;
  if (pages > MOST_PAGES) {
    fail(
      'too-many-pages',
      'plan',
      { pages, most: MOST_PAGES },
      'This would take {pages} sheets of paper for one drawing, and {most} is the most. Take a smaller block or a smaller margin.',
    );
  }
  return { ...tiling, pages };
}

/**
 * How many sheets a drawing takes, without laying them out.
 *
 * @throws EighthsError `too-many-pages`
 */
export const sheetsNeeded = (drawing: Drawing, sheet: Sheet, options: SheetWriting = {}): number =>
  checkedTiling(paint(drawing, options), sheet).pages;

/**
 * A drawing on sheets of paper at true scale: as many as it needs, with what neighbors share, crosses
 * to join them by, and on each a ruled square to measure before use. No ids, no scripts, no styles:
 * what lies beyond a sheet's part is cut off by the SVG viewport inside it.
 *
 * @throws EighthsError `too-many-pages`
 */
export function sheetPages(
  drawing: Drawing,
  sheet: Sheet,
  options: SheetWriting = {},
): readonly SheetPage[] {
  const painting = paint(drawing, options);
  const tiling = checkedTiling(painting, sheet);
  const { width, height, columns, rows, pages } = tiling;
  const { say = ({ text }) => text } = options;
  const content = [...painting.marks.map(markNode), ...joiningMarks(painting, tiling)];
  const foot = sheet.height - sheet.margin;
  return Array.from({ length: pages }, (_, index): SheetPage => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const place = { row: row + 1, column: column + 1 };
    const notes = [
      notice(sheetSentences, 'page', { page: index + 1, pages, ...place }),
      notice(sheetSentences, 'measure-first', {}),
      notice(sheetSentences, 'never-cut-against', {}),
      ...(pages > 1 ? [notice(sheetSentences, 'join', {})] : []),
    ];
    const [first, ...rest] = notes;
    const left = painting.x + column * (width - OVERLAP);
    const top = painting.y + row * (height - OVERLAP);
    const window = {
      x: sheet.margin,
      y: fine(sheet.margin + HEADER),
      width: fine(width),
      height: fine(height),
      viewBox: [left, top, width, height].map(fine).join(' '),
      overflow: 'hidden',
    };
    const room = sheet.width - 2 * sheet.margin - FIVE_CENTIMETERS - 0.2;
    const lines = rest.flatMap((note) => wrapped(say(note), Math.floor(room / 0.068)));
    const root = {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      ...sheet.size,
      viewBox: `0 0 ${fine(sheet.width)} ${fine(sheet.height)}`,
      'font-family': 'sans-serif',
    };
    const image: SvgNode = {
      name: 'svg',
      attributes: root,
      content: [
        { name: 'title', attributes: {}, content: say(drawing.title) },
        { name: 'desc', attributes: {}, content: say(drawing.description) },
        words(say(drawing.title), sheet.margin, sheet.margin + 0.18, 0.18),
        words(
          first === undefined ? '' : say(first),
          sheet.width - sheet.margin,
          sheet.margin + 0.18,
          0.12,
          'end',
        ),
        { name: 'svg', attributes: window, content },
        ...checkSquare(sheet.margin, foot),
        ...lines.map((line, at) =>
          words(
            line,
            sheet.margin + FIVE_CENTIMETERS + 0.2,
            foot - FIVE_CENTIMETERS + 0.16 + at * 0.19,
            0.13,
          ),
        ),
      ],
    };
    const svg = svgText(image);
    return { paper: sheet.paper, title: drawing.title, ...place, rows, columns, notes, svg, image };
  });
}
