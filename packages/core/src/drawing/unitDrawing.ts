import type { Hand } from '../block/trimCuts.js';
import { choiceField } from '../plan/field.js';
import { HANDS } from '../plan/side.js';
import type { TrimMark, UnitPlan } from '../unit/plan.js';
import { inWords } from '../unit/say.js';
import type { Drawing, Line, Point, Shape } from './drawing.js';
import { boxAround, type Dot, dotAt } from './geometry.js';
import { drawingSentences } from './sentences.js';
import { grown, pointAt, seenPatches } from './unitOutlines.js';

/** For whom a unit is drawn. */
export interface UnitDrawingOptions {
  /** The hand that holds the cutter; default `right`. */
  readonly hand?: Hand;
}

/** How far a ruler is drawn beyond the unit. */
const OVERHANG = 0.5;

/** A trim mark's line, moved from the trimmed unit's corner to the finished one's. */
function markLine(mark: TrimMark, seam: number): readonly Line[] {
  if (mark.kind === 'point') return [];
  const placed = (place: Point): Point => {
    const { x, y } = dotAt(place);
    return pointAt({ x: x - seam, y: y - seam });
  };
  const role = mark.role === 'center' ? 'ruler-line' : 'diagonal';
  return [{ kind: 'line', role, points: [placed(mark.from), placed(mark.to)] }];
}

const closed = (dots: readonly Dot[]): readonly Point[] =>
  [...dots, ...dots.slice(0, 1)].map(pointAt);

/** The ruler on the unit, its edges on two trim lines: the one at the cutting hand, and the upper one. */
function rulerShapes(raw: readonly Dot[], hand: Hand): readonly Shape[] {
  const { left, top, right, bottom } = boxAround(raw);
  const [near, far] = hand === 'right' ? [right, left - OVERHANG] : [left, right + OVERHANG];
  const low = bottom + OVERHANG;
  const corners = [
    { x: near, y: top },
    { x: far, y: top },
    { x: far, y: low },
    { x: near, y: low },
  ];
  const third = (from: number, to: number): number => from + (to - from) / 3;
  return [
    { kind: 'area', role: 'ruler', points: corners.map(pointAt) },
    {
      kind: 'line',
      role: 'trim-line',
      points: [pointAt({ x: far, y: top }), pointAt({ x: near, y: top })],
    },
    {
      kind: 'line',
      role: 'trim-line',
      points: [pointAt({ x: near, y: top }), pointAt({ x: near, y: low })],
    },
    {
      kind: 'label',
      role: 'hold',
      at: pointAt({ x: third(far, near), y: third(low, top) }),
      text: { word: 'hold' },
    },
  ];
}

/** Whether the unit is squared up with a ruler: a rectangle that is trimmed. */
const isSquaredUp = ({ trims, outline, approximate }: UnitPlan): boolean =>
  trims > 0 && outline.length === 4 && !approximate;

/**
 * The unfinished unit: its patches out to the raw edges, the finished edge, and where it is squared up
 * the ruler with its trim marks. Outlines are approximate, as all drawing is; the measures beside them
 * are the plan's.
 *
 * The left hand mirrors the ruler and the place of the hand, never the unit.
 *
 * @throws EighthsError `unknown-choice` where the hand is neither
 * @example
 * const plan = halfSquareTriangles({ finished: 3 });
 * drawUnit(plan).title.text; // 'The unit as sewn: 3 finished, trim to 3 1/2'
 */
export function drawUnit(plan: UnitPlan, options: UnitDrawingOptions = {}): Drawing {
  const hand = choiceField(options.hand ?? 'right', 'hand', HANDS);
  const seam = plan.seam.toNumber();
  const finished = plan.outline.map(dotAt);
  const raw = grown(finished, seam);
  const shapes: Shape[] = seenPatches(plan, raw).map(({ fabric, dots }) => ({
    kind: 'area',
    role: 'fabric',
    fabric,
    points: dots.map(pointAt),
  }));
  const squared = isSquaredUp(plan);
  shapes.push(
    { kind: 'line', role: 'finished-edge', points: closed(finished) },
    { kind: 'area', role: 'outline', points: raw.map(pointAt) },
    ...plan.trim.flatMap((mark) => markLine(mark, seam)),
    ...(squared ? rulerShapes(raw, hand) : []),
  );
  const box = boxAround(raw);
  const inner = boxAround(finished);
  const corner = (x: number, y: number): Point => pointAt({ x, y });
  shapes.push(
    {
      kind: 'dimension',
      from: corner(inner.left, inner.bottom),
      to: corner(inner.right, inner.bottom),
      away: 'bottom',
      row: 0,
      measure: plan.finished.width,
      word: 'finished',
    },
    {
      kind: 'dimension',
      from: corner(box.right, box.top),
      to: corner(box.right, box.bottom),
      away: 'right',
      row: 0,
      measure: plan.trimTo.height,
      ...(squared && { word: 'trim to' }),
    },
  );
  if (squared) {
    shapes.push({
      kind: 'dimension',
      from: corner(box.left, box.bottom),
      to: corner(box.right, box.bottom),
      away: 'bottom',
      row: 1,
      measure: plan.trimTo.width,
      word: 'trim to',
    });
    for (const mark of plan.trim) {
      if (mark.kind !== 'point' || mark.role !== 'point' || !mark.at.y.equals(plan.seam)) continue;
      shapes.push({
        kind: 'dimension',
        from: corner(box.left, box.top),
        to: corner(box.left, inner.top),
        away: 'left',
        row: 0,
        measure: plan.seam,
      });
      break;
    }
  }
  const { trimTo } = plan;
  return {
    title: inWords(drawingSentences, squared ? 'unit-title' : 'shape-title', {
      finished: plan.finished,
      trimTo,
    }),
    description: inWords(drawingSentences, 'unit-description', { patches: plan.patches.length }),
    fabrics: [...new Set(plan.patches.map(({ fabric }) => fabric))],
    shapes,
  };
}
