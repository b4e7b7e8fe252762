import type { Length } from '../length/length.js';
import { longerOf } from '../length/longer.js';
import { countField, missing } from '../plan/field.js';
import type { CurveTemplate, UnitPatch, UnitPlan } from '../unit/plan.js';
import { inWords } from '../unit/say.js';
import type { Area, Drawing, DrawingWord, Label, Shape } from './drawing.js';
import { boxAround, type Dot, FIVE_CENTIMETERS, squareAt } from './geometry.js';
import { drawingSentences } from './sentences.js';
import { dotsWithArc, pointAt } from './unitOutlines.js';

/** Which of a plan's templates is drawn, and what for. */
export interface TemplateDrawingOptions {
  /** The place of the template in the plan's list, from 1; default 1. */
  readonly template?: number;
  /** Whether it is a sheet for print, with squares to measure and what to know; default true. */
  readonly sheet?: boolean;
}

/** Chords of a quarter circle: of 12 inches, they stay within a thousandth of it. */
const PARTS = 64;

/** Room between the template and the squares, in inches. */
const GAP = 0.4;
const INCH = 1;

const NOTES: readonly DrawingWord[] = [
  'Print at 100 %.',
  'Measure both squares first.',
  'Never cut against paper.',
];

const words = (word: DrawingWord, at: Dot): Label => ({
  kind: 'label',
  role: 'order',
  at: pointAt(at),
  text: { word },
});

const outline = (dots: readonly Dot[]): Area => ({
  kind: 'area',
  role: 'outline',
  points: dots.map(pointAt),
});

/** Squares to hold a ruler to, below the template, and what to know before it is used. */
function checks(dots: readonly Dot[]): readonly Shape[] {
  const { left, bottom } = boxAround(dots);
  const top = bottom + GAP;
  const inch = squareAt({ x: left, y: top }, INCH);
  const metric = squareAt({ x: left + INCH + GAP, y: top }, FIVE_CENTIMETERS);
  const all = boxAround([...dots, ...inch, ...metric]);
  const line = Math.max(all.right - all.left, all.bottom - all.top) / 22;
  return [
    outline(inch),
    outline(metric),
    words('1 inch', { x: left + INCH / 2, y: top + INCH / 2 }),
    words('5 cm', {
      x: left + INCH + GAP + FIVE_CENTIMETERS / 2,
      y: top + FIVE_CENTIMETERS / 2,
    }),
    ...NOTES.map((note, index) =>
      words(note, { x: (all.left + all.right) / 2, y: all.bottom + line * (index + 1) }),
    ),
  ];
}

/** The curve's middle, marked across its seam allowance, and the piece's name in its own half. */
function inside(
  { piece, center, radius }: CurveTemplate,
  sewn: Length,
  far: Dot,
): readonly Shape[] {
  const middle = { x: center.x.toNumber(), y: center.y.toNumber() };
  const raw = radius.toNumber();
  const out = (distance: number): Dot => ({
    x: middle.x + distance * Math.SQRT1_2,
    y: middle.y + distance * Math.SQRT1_2,
  });
  const within = radius.compareTo(sewn) > 0;
  const reach = Math.hypot(far.x - middle.x, far.y - middle.y);
  const mark = [out(raw), out(sewn.toNumber())].map(pointAt);
  return [
    { kind: 'line', role: 'seam', points: mark },
    words(
      piece === 'inside curve' ? 'inside curve' : 'outside curve',
      out(within ? raw / 2 : (raw + reach) / 2),
    ),
  ];
}

/** The patch's own outline, where it is sewn. */
function sewingLine({ points, arc }: UnitPatch, seam: number): Shape {
  const dots = dotsWithArc(points, arc, PARTS).map(({ x, y }) => ({ x: x + seam, y: y + seam }));
  return {
    kind: 'line',
    role: 'finished-edge',
    points: [...dots, ...dots.slice(0, 1)].map(pointAt),
  };
}

/**
 * A template with its raw edge, its seam and the middle of its curve. `toSvg(…, { size: 'true' })`
 * writes it in real inches; as a sheet it has a square of 1 inch and one of 5 cm to measure before it
 * is used. Arcs are chords, within a thousandth of an inch up to a radius of 13 inches.
 *
 * @throws EighthsError `missing-field` where the plan has no templates, `not-a-count` where it has no
 *   such template
 * @example
 * const drawing = drawTemplate(drunkardsPath({ finished: 4 }));
 * drawing.title.text; // 'The template of the inside curve: 3 1/2 with its seam allowance'
 */
export function drawTemplate(plan: UnitPlan, options: TemplateDrawingOptions = {}): Drawing {
  const { templates = [], patches, seam } = plan;
  if (templates.length === 0) missing('templates');
  const place = countField(options.template ?? 1, 'template', 1, templates.length);
  const [template, patch] = [templates[place - 1], patches[place - 1]];
  if (template === undefined || patch?.arc === undefined) missing('template');
  const { points, arcFrom, center, radius, piece } = template;
  const dots = dotsWithArc(points, { from: arcFrom, center, radius }, PARTS);
  const { left, top, right, bottom } = boxAround(dots);
  const width = points.map(({ x }) => x).reduce(longerOf);
  const height = points.map(({ y }) => y).reduce(longerOf);
  const corner = (x: number, y: number) => pointAt({ x, y });
  return {
    title: inWords(drawingSentences, 'template-title', { piece, size: { width, height } }),
    description: inWords(drawingSentences, 'template-description', {}),
    fabrics: [],
    shapes: [
      outline(dots),
      sewingLine(patch, seam.toNumber()),
      ...inside(template, patch.arc.radius, { x: right, y: bottom }),
      ...(options.sheet === false ? [] : checks(dots)),
      {
        kind: 'dimension',
        from: corner(left, top),
        to: corner(right, top),
        away: 'top',
        row: 0,
        measure: width,
      },
      {
        kind: 'dimension',
        from: corner(left, top),
        to: corner(left, bottom),
        away: 'left',
        row: 0,
        measure: height,
      },
    ],
  };
}
