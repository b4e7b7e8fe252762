import type { Place } from '../block/places.js';
import type { Placement } from '../fabric/placements.js';
import { type Length, length } from '../length/length.js';
import { notice } from '../plan/notice.js';
import type { Drawing, Line, Shape } from './drawing.js';
import { cornersOf, middleOf, point } from './points.js';
import { drawingSentences } from './sentences.js';
import { area, dimension, fabricArea, line } from './shapes.js';

/** A rectangle of fabric, and what is cut from it. */
export interface PackingToDraw {
  /** Along the width of the fabric it came from. */
  readonly width: Length;
  /** Down that fabric. */
  readonly length: Length;
  /** What is missing on the right of the lower edge. */
  readonly missingCorner?: { readonly width: Length; readonly length: Length };
  readonly placements: readonly Placement[];
}

/** How the pieces are named. */
export interface PackingDrawingOptions {
  /** The number that each piece of the spec goes by; default its place in the list, from 1. */
  readonly numbers?: readonly number[];
}

/** So many spaces lie between the lines across a missing corner. */
const SPACES = 8;

const placeOf = ({ x, y, width, height }: Omit<Placement, 'piece'>): Place => ({
  left: x,
  top: y,
  right: x.plus(width),
  bottom: y.plus(height),
});

/** Lines at half a right angle from edge to edge of a place, whatever its size. */
function slants({ left, top, right, bottom }: Place): readonly Line[] {
  const [across, down] = [right.minus(left), bottom.minus(top)];
  const step = across.plus(down).dividedBy(SPACES);
  return Array.from({ length: SPACES - 1 }, (_, i) => {
    const t = step.times(i + 1);
    const [over, under] = [t.minus(across), t.minus(down)];
    const from = over.sign() > 0 ? point(right, top.plus(over)) : point(left.plus(t), top);
    const to = under.sign() > 0 ? point(left.plus(under), bottom) : point(left, top.plus(t));
    return line('diagonal', [from, to]);
  });
}

/**
 * A piece of fabric as it is cut, to scale: pieces with their places in the list, what is left over,
 * and a missing corner, hatched beyond the fabric's edge.
 *
 * @example
 * const { rectangles, usable } = precuts({
 *   kind: 'fat-quarter',
 *   pieces: [{ width: 5, length: 5, count: 12 }],
 * });
 * const [{ placements }] = rectangles;
 * drawPacking({ ...usable, placements }).title.text; // 'Fabric 20 1/2 by 17 1/2'
 */
export function drawPacking(fabric: PackingToDraw, options: PackingDrawingOptions = {}): Drawing {
  const { width, length: down, missingCorner, placements } = fabric;
  const zero = length(0);
  const whole = { left: zero, top: zero, right: width, bottom: down };
  const corner = missingCorner && {
    ...whole,
    left: width.minus(missingCorner.width),
    top: down.minus(missingCorner.length),
  };
  // What no piece covers is left over.
  const parts =
    corner === undefined
      ? [whole]
      : [
          { ...whole, bottom: corner.top },
          { ...whole, top: corner.top, right: corner.left },
        ];
  const shapes: Shape[] = parts.map((part) => area('waste', part));
  for (const { piece, ...placed } of placements) {
    const place = placeOf(placed);
    const count = options.numbers?.[piece] ?? piece + 1;
    shapes.push(fabricArea(`${piece + 1}`, place), {
      kind: 'label',
      role: 'order',
      at: middleOf(place),
      text: { count },
    });
  }
  const outline =
    corner === undefined
      ? cornersOf(whole)
      : [
          point(zero, zero),
          point(width, zero),
          point(width, corner.top),
          point(corner.left, corner.top),
          point(corner.left, down),
          point(zero, down),
        ];
  shapes.push(...(corner === undefined ? [] : slants(corner)), {
    kind: 'area',
    role: 'outline',
    points: outline,
  });
  shapes.push(dimension(whole, 'right'), dimension(whole, 'bottom'));
  const lost = missingCorner && {
    corner: { width: missingCorner.width, height: missingCorner.length },
  };
  const code = lost === undefined ? 'packing-description' : 'packing-corner-description';
  const last = placements.reduce((most, { piece }) => Math.max(most, piece + 1), 0);
  return {
    title: notice(drawingSentences, 'packing-title', { width, length: down }),
    description: notice(drawingSentences, code, { pieces: placements.length, ...lost }),
    fabrics: Array.from({ length: last }, (_, index) => `${index + 1}`),
    shapes,
  };
}
