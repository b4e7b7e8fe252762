import type { Length, LengthInput } from '../../length/length.js';
import { checkFields, countField, lengthField, missing } from '../../plan/field.js';
import type { Piece } from '../../plan/piece.js';
import { shapesPerStrip, stepsIn, stripPieces } from '../../plan/stripShapes.js';
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
  const { width, first, step } = readCuts(spec.strip ?? missing('strip'));
  const count = countField(spec.count ?? missing('count'), 'count', 1, MOST_OF_ONE_PIECE);
  const usable = fabricSide(spec.width ?? spec.strip.usable, 'width');
  const grid = lengthField(spec.grid ?? '1/8', 'grid');
  const perStrip = shapesPerStrip({ usable, first, step }, grid, 'width');
  const strips = Math.ceil(count / perStrip);
  const { label, fabric } = spec;
  const named = { ...(label !== undefined && { label }), ...(fabric !== undefined && { fabric }) };
  return {
    count,
    perStrip,
    strips,
    leftOver: strips * perStrip - count,
    length: width.times(strips),
    pieces: stripPieces(named, count, { width, usable, first, step, perStrip }, grid),
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
