import { fail } from '../../errors/error.js';
import type { Length, LengthInput } from '../../length/length.js';
import { checkFields, countField, lengthField, missing } from '../../plan/field.js';
import type { Piece } from '../../plan/piece.js';
import { fabricSide } from '../pack/readFabric.js';
import { MOST_OF_ONE_PIECE } from '../spec.js';
import { fractionOf } from '../units.js';

/** How a shape is cut from a strip: a first angled cut, then equal steps. A unit's `strip` says so. */
export interface ShapeCuts {
  /** The width of the strip. */
  readonly width: LengthInput;
  /** What the first angled cut takes off the strip's end. */
  readonly first: LengthInput;
  /** How far apart the cuts are, along the strip. */
  readonly step: LengthInput;
  /** How long a strip is, where the fabric's usable width is not said. */
  readonly usable?: LengthInput;
  /** What a unit's plan says besides; it follows from the others. */
  readonly rulerLine?: LengthInput;
  readonly perStrip?: number;
}

/** Shapes to cut, and from what. */
export interface ShapesSpec {
  readonly strip: ShapeCuts;
  readonly count: number;
  /** The usable width of the fabric, by default the strip's `usable`. */
  readonly width?: LengthInput;
  /** The grid that a last, shorter strip is rounded up to, default 1/8. */
  readonly grid?: LengthInput;
  readonly label?: string;
  readonly fabric?: string;
}

/** The strips that shapes are cut from. */
export interface ShapesFromStrips {
  readonly count: number;
  /** How many a strip across the fabric yields. */
  readonly perStrip: number;
  /** How many strips it takes, a last, shorter one included. */
  readonly strips: number;
  /** Shapes that the strips yield beyond `count` where the last one is a whole one too. */
  readonly leftOver: number;
  /** How much fabric the strips take, one below the other. */
  readonly length: Length;
  /** The strips, as pieces of a cutting plan. */
  readonly pieces: readonly Piece[];
}

const FIELDS = ['strip', 'count', 'width', 'grid', 'label', 'fabric'] as const;
const STRIP_FIELDS = ['width', 'first', 'step', 'usable', 'rulerLine', 'perStrip'] as const;

/**
 * Diamonds, triangles, hexagons and other shapes that are cut from strips at an angle: how many a
 * strip yields, how many strips they take, and these as pieces for a cutting plan, so that they can
 * share fabric with others. On any width of fabric, whatever the unit was planned for.
 *
 * Exact, roots included: a strip of length U yields floor((U − first) / step). Only the length of the
 * last strip is rounded, up to the grid.
 *
 * @throws EighthsError `strip-too-short` where a strip yields none, `not-a-count`, `not-positive`,
 *   `missing-field` and others, with the path of the field.
 * @example
 * const { strip, count } = diamond({ finished: 3, count: 32 });
 * const shapes = shapesFromStrips({ strip, count, width: 42 });
 * [shapes.perStrip, shapes.strips, shapes.leftOver]; // [10,4,8]
 * yardage({ width: 42, pieces: shapes.pieces }).bare.equals(shapes.length); // true
 */
export function shapesFromStrips(spec: ShapesSpec): ShapesFromStrips {
  checkFields(spec, '', FIELDS);
  const cuts = readCuts(spec.strip ?? missing('strip'));
  const count = countField(spec.count ?? missing('count'), 'count', 1, MOST_OF_ONE_PIECE);
  const usable = fabricSide(spec.width ?? spec.strip.usable, 'width');
  const grid = lengthField(spec.grid ?? '1/8', 'grid');
  const { width, first, step } = cuts;
  const perStrip = stepsIn(usable.minus(first), step);
  if (perStrip === 0) {
    const needed = first.plus(step).toGrid(grid, 'up');
    fail(
      'strip-too-short',
      'width',
      { usable, needed },
      'A strip {usable} long is too short for one piece. It must be at least {needed} long.',
    );
  }
  const whole = Math.floor(count / perStrip);
  const rest = count % perStrip;
  const strips = whole + (rest > 0 ? 1 : 0);
  const piece = (shapes: number, times: number): Piece => {
    const long = first.plus(step.times(shapes)).toGrid(grid, 'up');
    return {
      ...(spec.label !== undefined && { label: spec.label }),
      ...(spec.fabric !== undefined && { fabric: spec.fabric }),
      width,
      length: long.compareTo(usable) > 0 ? usable : long,
      count: times,
    };
  };
  return {
    count,
    perStrip,
    strips,
    leftOver: strips * perStrip - count,
    length: width.times(strips),
    pieces: [...(whole > 0 ? [piece(perStrip, whole)] : []), ...(rest > 0 ? [piece(rest, 1)] : [])],
  };
}

/**
 * How many shapes a piece of fabric yields, in strips across it: a fat quarter, or what is on hand.
 *
 * @param fabric its usable size; strips lie along its width.
 * @throws EighthsError as `shapesFromStrips`, except that none is 0.
 * @example
 * const { strip } = equilateralTriangle({ finished: 4 });
 * shapesFromFabric(strip, { width: '20 1/2', length: '17 1/2' }); // 18
 */
export function shapesFromFabric(
  strip: ShapeCuts,
  fabric: { readonly width: LengthInput; readonly length: LengthInput },
): number {
  const { width, first, step } = readCuts(strip);
  checkFields(fabric, 'fabric', ['width', 'length']);
  const across = fabricSide(fabric.width, 'fabric.width');
  const strips = stepsIn(fabricSide(fabric.length, 'fabric.length'), width);
  return strips * stepsIn(across.minus(first), step);
}

function readCuts(strip: ShapeCuts): Readonly<Record<'width' | 'first' | 'step', Length>> {
  checkFields(strip, 'strip', STRIP_FIELDS);
  const width = lengthField(strip.width ?? missing('strip.width'), 'strip.width');
  fractionOf(width, 'strip.width');
  const first = strip.first ?? missing('strip.first');
  return {
    width,
    first: lengthField(first, 'strip.first', 'zero or more'),
    step: lengthField(strip.step ?? missing('strip.step'), 'strip.step'),
  };
}

/** The greatest whole number of steps that a room has space for; 0 where there is none. Exact. */
function stepsIn(room: Length, step: Length): number {
  // Floating point may be one off: both neighbors are looked at.
  const near = Math.max(0, Math.floor(room.toNumber() / step.toNumber()));
  const fit = (count: number): boolean => step.times(count).compareTo(room) <= 0;
  if (fit(near + 1)) return near + 1;
  return near === 0 || fit(near) ? near : near - 1;
}
