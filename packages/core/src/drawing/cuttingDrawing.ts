import type { Place } from '../block/places.js';
import { placementsOf } from '../fabric/placements.js';
import type { CuttingPlan, Strip, StripEnd } from '../fabric/plan.js';
import { type Length, length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import { countField } from '../plan/field.js';
import { notice } from '../plan/notice.js';
import type { Drawing, Shape } from './drawing.js';
import { middleOf, point, sideOf } from './points.js';
import { drawingSentences } from './sentences.js';
import { area, dimension, fabricArea, line } from './shapes.js';

/** Which part of a long piece of fabric is drawn. */
export interface CuttingDrawingOptions {
  /** From 1; default 1. */
  readonly row?: number;
  /** The number that each piece of the spec goes by; default its place in the list, from 1. */
  readonly numbers?: readonly number[];
}

/** One strip where it lies on the fabric. */
interface LaidStrip {
  /** The place among the plan's kinds of strips, from 1: the number of its step. */
  readonly kind: number;
  readonly top: Length;
  readonly bottom: Length;
  readonly strip: Strip;
}

/** Fabric that is drawn in one piece: no strip is cut in two by the fold. */
interface FabricRow {
  readonly strips: readonly LaidStrip[];
  readonly top: Length;
  readonly bottom: Length;
}

/** A row is up to a yard long, and so about as long as it is wide. */
const FOLD = length('1 yd');

/** Where the numbers of the steps stand, from the left selvage. */
const BESIDE = length('-1 1/2');

function laidStrips({ strips }: CuttingPlan): readonly LaidStrip[] {
  const laid: LaidStrip[] = [];
  let top = length(0);
  for (const [index, strip] of strips.entries()) {
    for (let alike = 0; alike < strip.count; alike += 1) {
      const bottom = top.plus(strip.width);
      laid.push({ kind: index + 1, top, bottom, strip });
      top = bottom;
    }
  }
  return laid;
}

function foldedRows(plan: CuttingPlan): readonly FabricRow[] {
  const rows: FabricRow[] = [];
  for (const strip of laidStrips(plan)) {
    const row = rows.at(-1);
    if (row === undefined || strip.bottom.minus(row.top).compareTo(FOLD) > 0) {
      rows.push({ strips: [strip], top: strip.top, bottom: strip.bottom });
    } else {
      rows[rows.length - 1] = { ...row, strips: [...row.strips, strip], bottom: strip.bottom };
    }
  }
  return rows;
}

/**
 * How many rows a plan's fabric is folded onto when it is drawn.
 *
 * @example
 * cuttingRows(cuttingPlan({ width: 42, pieces: [{ width: 5, length: 5, count: 8 }] })); // 1
 */
export const cuttingRows = (plan: CuttingPlan): number => foldedRows(plan).length;

/** What is left over in an end of a strip: beside each of its rows, and below them. */
function endWaste({ length: long, rows }: StripEnd, left: Length, top: Length, bottom: Length) {
  const right = left.plus(long);
  const waste: Place[] = [];
  let y = top;
  for (const { width, count, cuts } of rows) {
    const used = cuts.reduce((x, cut) => x.plus(cut.length.times(cut.count)), left);
    const below = y.plus(width.times(count));
    if (!used.equals(right)) waste.push({ left: used, top: y, right, bottom: below });
    y = below;
  }
  if (!y.equals(bottom)) waste.push({ left, top: y, right, bottom });
  return waste;
}

/**
 * What one strip adds: what is left over of its ends and behind them, the cuts that part the ends,
 * its lower cut, and its step's number where that is new.
 */
function drawStrip(
  { kind, strip, ...laid }: LaidStrip,
  isNew: boolean,
  { top: rowTop }: FabricRow,
  width: Length,
): Shape[] {
  const top = laid.top.minus(rowTop);
  const bottom = laid.bottom.minus(rowTop);
  const used = width.minus(strip.end);
  const place = { left: used, top, right: width, bottom };
  const zero = length(0);
  const shapes: Shape[] = [];
  const waste: Place[] = used.equals(width) ? [] : [place];
  let x = strip.cuts.reduce((sum, cut) => sum.plus(cut.length.times(cut.count)), zero);
  for (const end of strip.ends ?? []) {
    for (let n = 0; n < end.count; n += 1) {
      waste.push(...endWaste(end, x, top, bottom));
      shapes.push(line('trim-line', [point(x, top), point(x, bottom)]));
      x = x.plus(end.length);
    }
  }
  for (const each of waste) shapes.unshift(area('waste', each));
  shapes.push(line('trim-line', [point(zero, bottom), point(width, bottom)]));
  if (isNew) {
    // Outside the selvage, where it hides nothing.
    const at = point(BESIDE, middleOf(place).y);
    shapes.push({ kind: 'label', role: 'cut', at, text: { count: kind } });
  }
  return shapes;
}

/**
 * The fabric as it is cut, to scale: selvages left and right, strips across with the numbers of their
 * steps, pieces with their places in the list. Fabric longer than a yard is folded onto several rows,
 * one a drawing; `cuttingRows` says how many.
 *
 * @throws EighthsError `not-a-count` where there is no such row
 * @example
 * const plan = cuttingPlan({ width: 42, pieces: [{ width: 5, length: 5, count: 12 }] });
 * drawCuttingPlan(plan).title.text; // 'Fabric from 0 to 10 of 10'
 */
export function drawCuttingPlan(plan: CuttingPlan, options: CuttingDrawingOptions = {}): Drawing {
  const rows = foldedRows(plan);
  const number = countField(options.row ?? 1, 'row', 1, rows.length);
  const row = entryAt(rows, number - 1);
  const { width } = plan;
  const numberOf = (piece: number): number => options.numbers?.[piece] ?? piece + 1;
  const zero = length(0);
  const whole = { left: zero, top: zero, right: width, bottom: row.bottom.minus(row.top) };

  const pieces = placementsOf(plan).filter(
    ({ y }) => y.compareTo(row.top) >= 0 && y.compareTo(row.bottom) < 0,
  );
  const shapes: Shape[] = [];
  for (const { piece, x, y, width: across, height } of pieces) {
    const top = y.minus(row.top);
    const place = { left: x, top, right: x.plus(across), bottom: top.plus(height) };
    shapes.push(fabricArea(`${piece + 1}`, place), {
      kind: 'label',
      role: 'order',
      at: middleOf(place),
      text: { count: numberOf(piece) },
    });
  }
  const kinds = row.strips.map(({ kind }) => kind);
  for (const [index, strip] of row.strips.entries()) {
    shapes.push(...drawStrip(strip, kinds.indexOf(strip.kind) === index, row, width));
  }
  shapes.push(
    area('outline', whole),
    line('selvage', sideOf(whole, 'left')),
    line('selvage', sideOf(whole, 'right')),
    { kind: 'scale', from: point(zero, zero), to: point(width, zero), toward: 'top' },
    dimension(whole, 'right'),
    dimension(whole, 'bottom', 'selvage to selvage'),
  );
  return {
    title: notice(drawingSentences, 'cutting-title', {
      from: row.top,
      to: row.bottom,
      length: plan.length,
    }),
    description: notice(drawingSentences, 'cutting-description', { strips: row.strips.length }),
    fabrics: plan.pieces.map((_, index) => `${index + 1}`),
    shapes,
  };
}
