import type { Hand } from '../block/trimCuts.js';
import { type Length, length } from '../length/length.js';
import { shorterOf } from '../length/longer.js';
import { entryAt } from '../plan/entryAt.js';
import { choiceField, countField } from '../plan/field.js';
import { HANDS } from '../plan/side.js';
import type { StripCuts, UnitCut, UnitPlan } from '../unit/plan.js';
import { inWords } from '../unit/say.js';
import type { Drawing, Line, LineRole, Point, Shape } from './drawing.js';
import { dotAt } from './geometry.js';
import { point } from './points.js';
import { drawingSentences } from './sentences.js';
import type { UnitDrawingOptions } from './unitDrawing.js';
import { pointAt } from './unitOutlines.js';

/** Which of a plan's cuts is drawn, and for whom. */
export interface UnitCutDrawingOptions extends UnitDrawingOptions {
  /** The place of the cut in the plan's list, from 1; default 1. */
  readonly cut?: number;
}

/** How many shapes are shown on a strip. */
const SHOWN = 4;

const line = (role: LineRole, from: Point, to: Point): Line => ({
  kind: 'line',
  role,
  points: [from, to],
});

/** A line moved to one side, for the picture. */
function beside(role: LineRole, from: Point, to: Point, by: number): Line {
  const [a, b] = [dotAt(from), dotAt(to)];
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  const out = { x: (-(b.y - a.y) * by) / size, y: ((b.x - a.x) * by) / size };
  // Its ends lie on the edges of the square: as far along as it is moved aside.
  const along = { x: ((b.x - a.x) * Math.abs(by)) / size, y: ((b.y - a.y) * Math.abs(by)) / size };
  return line(
    role,
    pointAt({ x: a.x + out.x + along.x, y: a.y + out.y + along.y }),
    pointAt({ x: b.x + out.x - along.x, y: b.y + out.y - along.y }),
  );
}

interface Corners {
  readonly topLeft: Point;
  readonly topRight: Point;
  readonly bottomRight: Point;
  readonly bottomLeft: Point;
}

function cornersOf(width: Length, height: Length): Corners {
  const zero = length(0);
  return {
    topLeft: point(zero, zero),
    topRight: point(width, zero),
    bottomRight: point(width, height),
    bottomLeft: point(zero, height),
  };
}

/** Where a square or rectangle is sewn, before it is cut. */
function sewing(plan: UnitPlan, cut: UnitCut, corners: Corners): readonly Line[] {
  const { topLeft, topRight, bottomRight, bottomLeft } = corners;
  const seam = plan.seam.toNumber();
  const diagonals = [
    [bottomLeft, topRight],
    [topLeft, bottomRight],
  ] as const;
  if (plan.method === 'stitch-and-flip') {
    if (cut.label !== 'corner') return [];
    return [line('seam', bottomLeft, topRight), beside('trim-line', bottomLeft, topRight, seam)];
  }
  if (plan.unit === 'half-square-triangles' && plan.method === 'four-at-a-time') {
    const [left, top] = [plan.seam, plan.seam];
    const [right, bottom] = [cut.width.minus(plan.seam), cut.height.minus(plan.seam)];
    const inner = [point(left, top), point(right, top), point(right, bottom), point(left, bottom)];
    return [{ kind: 'line', role: 'seam', points: [...inner, point(left, top)] }];
  }
  if (!plan.bias.sewnFirst) return [];
  // Quarter squares and geese are sewn along one diagonal first; eight at a time along both.
  const along = plan.method === 'eight-at-a-time' ? diagonals : diagonals.slice(0, 1);
  return along.flatMap(([from, to]) => [
    beside('seam', from, to, seam),
    beside('seam', from, to, -seam),
  ]);
}

/** Whether the triangles of a unit need their slanted edge to fall from left to right. */
function isFalling({ patches }: UnitPlan): boolean {
  const edges = patches.flatMap(({ points }) =>
    points.map((start, index) => [start, entryAt(points, (index + 1) % points.length)] as const),
  );
  // Of a right triangle, whichever way it is turned, only the long edge slants.
  const slant = edges
    .map(([start, end]) => end.x.minus(start.x).sign() * end.y.minus(start.y).sign())
    .find((sign) => sign !== 0);
  return slant === 1;
}

/** Where it is cut. */
function cutting(plan: UnitPlan, cut: UnitCut, corners: Corners): readonly Line[] {
  const { topLeft, topRight, bottomRight, bottomLeft } = corners;
  const lines: Line[] = [];
  // A square's two diagonals give the same triangles; a rectangle's give mirror images.
  const falling = !cut.width.equals(cut.height) && isFalling(plan);
  if (cut.diagonalCuts > 0) {
    lines.push(
      falling ? line('trim-line', topLeft, bottomRight) : line('trim-line', bottomLeft, topRight),
    );
  }
  if (cut.diagonalCuts > 1) lines.push(line('trim-line', topLeft, bottomRight));
  if (plan.method === 'eight-at-a-time') {
    const [x, y] = [cut.width.dividedBy(2), cut.height.dividedBy(2)];
    const zero = length(0);
    lines.push(line('trim-line', point(x, zero), point(x, cut.height)));
    lines.push(line('trim-line', point(zero, y), point(cut.width, y)));
  }
  if (cut.shape === 'triangle') {
    const top = point(cut.width.dividedBy(2), length(0));
    lines.push(line('trim-line', bottomLeft, top), line('trim-line', top, bottomRight));
  }
  return lines;
}

/** A strip's end with its first cuts: by turns where the shapes are turned, else all parallel. */
function stripCutting(strip: StripCuts, shown: Length, hand: Hand): readonly Line[] {
  const { first, step, width, rulerLine, perStrip } = strip;
  const turned = step.compareTo(rulerLine) < 0;
  const lines: Line[] = [];
  const mirrored = (x: Length): Length => (hand === 'left' ? shown.minus(x) : x);
  const end = (x: Length, y: Length): Point => point(mirrored(x), y);
  for (let index = 0; index <= Math.min(SHOWN, perStrip); index += 1) {
    const low = step.times(index);
    const leans = first.sign() > 0;
    // The first edge leans outward from the strip's end; turned shapes lean the other way by turns.
    const away = turned && index % 2 === 1;
    const [top, bottom] = !leans
      ? [low, low]
      : away
        ? [low, low.plus(first)]
        : [low.plus(first), low];
    if (!leans && index === 0) continue;
    lines.push(line('trim-line', end(top, length(0)), end(bottom, width)));
  }
  return lines;
}

/**
 * One of a unit's cuts: the piece with its size, where it is sewn and where it is cut. A strip is shown
 * with its first cuts.
 *
 * The left hand works from the strip's other end; nothing else is mirrored.
 *
 * @throws EighthsError `not-a-count` where the plan has no such cut, `unknown-choice` for the hand
 * @example
 * drawUnitCut(halfSquareTriangles({ finished: 3 })).title.text; // 'To cut: 1 of 3 7/8'
 */
export function drawUnitCut(plan: UnitPlan, options: UnitCutDrawingOptions = {}): Drawing {
  const hand = choiceField(options.hand ?? 'right', 'hand', HANDS);
  const place = countField(options.cut ?? 1, 'cut', 1, plan.cuts.length);
  const cut = entryAt(plan.cuts, place - 1);
  const { width: full, height, fabric, count } = cut;
  // A strip of a set is not cut by itself: the set is, once it is sewn.
  const own = plan.strip?.width.equals(height) ? plan.strip : undefined;
  // What is cut at an angle from a strip is shown on it, though it is counted by the piece.
  const isStrip = cut.shape === 'strip' || (cut.shape === 'template' && own !== undefined);
  const strip = isStrip ? own : undefined;
  const end = strip?.first.plus(strip.step.times(SHOWN)).plus(strip.step.dividedBy(2));
  const some = end ?? (isStrip ? height.times(SHOWN) : full);
  const width = shorterOf(some, strip?.usable ?? full);
  const corners = cornersOf(width, height);
  const { topLeft, topRight, bottomRight, bottomLeft } = corners;
  const outline = [topLeft, topRight, bottomRight, bottomLeft];
  const shapes: Shape[] = [
    { kind: 'area', role: 'fabric', fabric, points: outline },
    { kind: 'area', role: 'outline', points: outline },
  ];
  if (!isStrip) shapes.push(...sewing(plan, cut, corners), ...cutting(plan, cut, corners));
  if (strip !== undefined) shapes.push(...stripCutting(strip, width, hand));
  shapes.push({
    kind: 'dimension',
    from: isStrip ? topRight : bottomLeft,
    to: bottomRight,
    away: isStrip ? 'right' : 'bottom',
    row: 0,
    measure: isStrip ? height : full,
  });
  if (!isStrip && !full.equals(height)) {
    shapes.push({
      kind: 'dimension',
      from: topRight,
      to: bottomRight,
      away: 'right',
      row: 0,
      measure: height,
    });
  }
  return {
    title: inWords(drawingSentences, 'cut-title', {
      count,
      size: { width: full, height },
    }),
    description: inWords(drawingSentences, 'cut-description', {}),
    // The tints are those of the unit's own drawing.
    fabrics: [...new Set(plan.patches.map((patch) => patch.fabric))],
    shapes,
  };
}
