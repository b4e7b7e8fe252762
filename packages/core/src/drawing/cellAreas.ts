import { type Length, length, squareRoot } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import type { Cell as LayoutCell } from '../quilt/layout/plan.js';
import type { BlockFace } from './blockFace.js';
import type { Area, Point } from './drawing.js';
import { dotAt } from './geometry.js';
import { point } from './points.js';
import { pointAt } from './unitOutlines.js';

export const polygon = (fabric: string, points: readonly Point[]): Area => ({
  kind: 'area',
  role: 'fabric',
  fabric,
  points,
});

const one = length(1);
const diagonal = squareRoot('1/2');

/** Where a block lies, and how it is turned. */
type Cell = Pick<LayoutCell, 'corners' | 'turn'>;

/** Where the block's own corner lies: its upper left one is 0, and they go round clockwise. */
const ownCorner = ({ corners, turn }: Cell, index: number): Point =>
  entryAt(corners, (turn + index) & 3);

/** One inch from a point toward another, along a side or at 45 degrees. */
function inchToward(from: Point, to: Point): Point {
  const [x, y] = [to.x.minus(from.x).sign(), to.y.minus(from.y).sign()];
  const inch = x !== 0 && y !== 0 ? diagonal : one;
  return point(inch.times(x), inch.times(y));
}

/** A block's areas as it lies in a cell, measured from its own upper left corner. */
function turnedAreas({ areas }: BlockFace, cell: Cell): readonly Area[] {
  const across = inchToward(ownCorner(cell, 0), ownCorner(cell, 1));
  const down = inchToward(ownCorner(cell, 0), ownCorner(cell, 3));
  const sum = (x: Length, a: Length, y: Length, b: Length): Length => {
    // Most blocks stand straight, where one of the two is nothing.
    if (a.sign() === 0) return y.times(b);
    return b.sign() === 0 ? x.times(a) : x.times(a).plus(y.times(b));
  };
  const placed = ({ x, y }: Point): Point =>
    point(sum(x, across.x, y, down.x), sum(x, across.y, y, down.y));
  return areas.map(({ fabric, points }) =>
    polygon(
      fabric,
      points.map((each) => drawable(placed(each))),
    ),
  );
}

/** Roots are slow to add up and to paint: in pictures they are kept to a millionth of an inch. */
function drawable(exact: Point): Point {
  const isRational = exact.x.toFraction() !== undefined && exact.y.toFraction() !== undefined;
  return isRational ? exact : pointAt(dotAt(exact));
}

/**
 * Lays blocks into cells, turned and never mirrored. Each turn of a block is reckoned once; all cells of
 * a layout lie alike. On point, what lies inside a block is approximate.
 */
export function blockLayer(): (block: BlockFace, cell: Cell) => readonly Area[] {
  const turned = new Map<BlockFace, Map<number, readonly Area[]>>();
  return (block, cell) => {
    const turns = turned.get(block) ?? new Map<number, readonly Area[]>();
    turned.set(block, turns);
    const areas = turns.get(cell.turn) ?? turnedAreas(block, cell);
    turns.set(cell.turn, areas);
    const { x, y } = drawable(ownCorner(cell, 0));
    return areas.map((area) => ({
      ...area,
      points: area.points.map((each) => point(each.x.plus(x), each.y.plus(y))),
    }));
  };
}
