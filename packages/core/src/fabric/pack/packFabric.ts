import { type Length, length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import type { Step } from '../../plan/notice.js';
import type { Piece } from '../../plan/piece.js';
import type { Placement } from '../placements.js';
import { mayTurn } from '../readPieces.js';
import { MOST_OF_ONE_PIECE } from '../spec.js';
import { fractionOf, inUnits } from '../units.js';
import { pack } from './pack.js';
import { type Item, lying, type Parts, type Sheet } from './rectangles.js';
import type { PackStepCode } from './sentences.js';
import { packSteps } from './steps.js';

/** A rectangle of fabric that pieces are cut from. */
export interface FabricRectangle {
  /** Which of the given pieces of fabric it is of. */
  readonly from: number;
  /** Where it begins in that piece, along the width of the fabric and down it. */
  readonly x: Length;
  readonly y: Length;
  /** Along the width of the fabric. */
  readonly width: Length;
  /** Down the fabric. */
  readonly length: Length;
  /** How many there are. */
  readonly count: number;
}

/** Rectangles of fabric that are cut alike, every cut from edge to edge. */
export interface CutRectangle extends FabricRectangle {
  /** Every piece where it lies in the piece of fabric that the rectangle is of. */
  readonly placements: readonly Placement[];
  /** What is left over of each. */
  readonly leftOver: readonly Omit<Placement, 'piece'>[];
  readonly steps: readonly Step<PackStepCode>[];
}

/** What is cut from rectangles of fabric, and what is not. */
export interface PackedFabric {
  readonly rectangles: readonly CutRectangle[];
  /** How many of each piece are not cut. */
  readonly left: readonly number[];
  /** Whether it is proven that no guillotine cutting leaves less area of pieces uncut. */
  readonly leastLeft: boolean;
  /** So many rectangles are needed at least, where all are of one size. */
  readonly fewest: number;
}

/** Work for one packing, in elementary steps: about a tenth of a second where it is used up. */
export const PACKING_EFFORT = 3_000_000;

/** Rectangles and pieces in whole units: the greatest that all pieces' sides are multiples of. */
export interface Units {
  readonly sheets: readonly Sheet[];
  readonly items: readonly Item[];
  readonly unit: Length;
}

/** @throws EighthsError `no-common-grid` where the unit is so small that plans could not be made. */
export function unitsOf(rectangles: readonly FabricRectangle[], pieces: readonly Piece[]): Units {
  const sides = pieces.flatMap((piece) => [piece.length, piece.width]);
  const fractions = sides.map((side) => fractionOf(side, 'pieces'));
  const many = sides.map(() => MOST_OF_ONE_PIECE);
  const measure = (side: Length) => inUnits(fractionOf(side, 'pieces'), fractions, many);
  const { sizes } = measure(length(1));
  return {
    sheets: rectangles.map(({ width, length: down, count }) => ({
      width: measure(width).capacity,
      height: measure(down).capacity,
      count,
    })),
    items: pieces.map((piece, i) => ({
      width: entryAt(sizes, 2 * i),
      height: entryAt(sizes, 2 * i + 1),
      count: piece.count,
      turnable: mayTurn(piece),
    })),
    unit: entryAt(sides, 0).dividedBy(entryAt(sizes, 0)),
  };
}

/** Cuts as much as can be of the pieces from rectangles of fabric, and says how. */
export function packFabric(
  rectangles: readonly FabricRectangle[],
  pieces: readonly Piece[],
  effort = PACKING_EFFORT,
): PackedFabric {
  const { sheets, items, unit } = unitsOf(rectangles, pieces);
  const { layouts, ...packing } = pack(sheets, items, effort);
  return {
    ...packing,
    rectangles: layouts.map(({ sheet, count, parts }) => {
      const cut = { ...entryAt(rectangles, sheet), count };
      return {
        ...cut,
        ...placed(cut, items, unit, parts),
        steps: packSteps(cut, items, unit, parts),
      };
    }),
  };
}

function placed(rectangle: FabricRectangle, items: readonly Item[], unit: Length, root: Parts) {
  const placements: Placement[] = [];
  const leftOver: Omit<Placement, 'piece'>[] = [];
  const { x: left, y: top, width, length: down } = rectangle;
  // What is no whole unit at the right and lower edges goes with what is left over there, if that is so.
  const last = root.kind === 'cut' ? root.parts.at(-1) : undefined;
  const ends = root.kind === 'cut' && last?.kind === 'left' ? root.along : undefined;
  const [right, lower] = [unit.times(root.width), unit.times(root.height)];
  const leave = (x: number, y: number, wide: Length, long: Length, part?: Parts): void => {
    leftOver.push({
      x: left.plus(unit.times(x)),
      y: top.plus(unit.times(y)),
      width: ends === 'across' && part === last ? width.minus(unit.times(x)) : wide,
      height: ends === 'down' && part === last ? down.minus(unit.times(y)) : long,
    });
  };
  const visit = (part: Parts, x: number, y: number): void => {
    if (part.kind === 'pieces') {
      const size = lying(entryAt(items, part.item), part.turned);
      const extent = { width: unit.times(size.width), height: unit.times(size.height) };
      for (let row = 0; row < part.rows; row += 1) {
        for (let column = 0; column < part.columns; column += 1) {
          placements.push({
            piece: part.item,
            x: left.plus(unit.times(x + column * size.width)),
            y: top.plus(unit.times(y + row * size.height)),
            ...extent,
          });
        }
      }
    } else if (part.kind === 'left') {
      leave(x, y, unit.times(part.width), unit.times(part.height), part);
    } else {
      let at = 0;
      for (const each of part.parts) {
        if (part.along === 'across') visit(each, x + at, y);
        else visit(each, x, y + at);
        at += part.along === 'across' ? each.width : each.height;
      }
    }
  };
  visit(root, 0, 0);
  if (ends !== 'across' && right.compareTo(width) < 0) {
    leave(root.width, 0, width.minus(right), down);
  }
  if (ends !== 'down' && lower.compareTo(down) < 0) {
    leave(0, root.height, ends === 'across' ? width : right, down.minus(lower));
  }
  return { placements, leftOver };
}
