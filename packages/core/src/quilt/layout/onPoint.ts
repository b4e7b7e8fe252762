import { type Length, squareRoot } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import type { UnitPoint } from '../../unit/point.js';
import type { Cell, CellKind } from './plan.js';
import type { LayoutTask } from './readLayout.js';

/**
 * Places on a top whose blocks stand on point, in half steps from its upper left corner: a block's
 * middle has two odd or two even numbers, where sashes meet one is odd and one even. A half step is half
 * the diagonal of a block and its sash; the top's edges run through middles.
 */
interface Lattice {
  /** The lines through the places. */
  readonly mid: (place: number) => Length;
  /** Half a block's diagonal before that line, and beyond it. */
  readonly near: (place: number) => Length;
  readonly far: (place: number) => Length;
  /** The last places across and down. */
  readonly right: number;
  readonly bottom: number;
}

function latticeOf({ block, sashing, across, down }: LayoutTask): Lattice {
  const halfRoot = squareRoot('1/2');
  const half = block.width.times(halfRoot);
  const step = sashing ? half.plus(sashing.width.times(halfRoot)) : half;
  const places = Array.from({ length: 2 * Math.max(across, down) + 2 }, (_, place) => {
    const mid = step.times(place);
    return { mid, near: mid.minus(half), far: mid.plus(half) };
  });
  return {
    mid: (place) => entryAt(places, place).mid,
    near: (place) => entryAt(places, place).near,
    far: (place) => entryAt(places, place).far,
    right: 2 * across,
    bottom: 2 * down,
  };
}

const point = (x: Length, y: Length): UnitPoint => ({ x, y });

const range = (from: number, to: number, step = 1): readonly number[] =>
  Array.from(
    { length: Math.max(0, Math.floor((to - from) / step) + 1) },
    (_, i) => from + i * step,
  );

type Place = readonly [i: number, j: number];

/** Rows of blocks count from 0, those in between as well; columns within their row. */
const cell = (
  kind: CellKind,
  [i, j]: Place,
  corners: readonly UnitPoint[],
  turn: Cell['turn'] = 0,
) => ({ kind, row: j - 1, column: Math.floor((i - 1) / 2), turn, corners }) satisfies Cell;

/** The blocks of the rows, and those between the rows. */
function blockCells(task: LayoutTask, { mid, near, far, right, bottom }: Lattice): readonly Cell[] {
  return range(1, bottom - 1).flatMap((j) =>
    range(j % 2 === 1 ? 1 : 2, right - 1, 2).map((i) => {
      const kind = task.alternate && j % 2 === 0 ? 'alternate' : 'block';
      // Along the tilted lattice: columns count to the lower right, rows to the lower left.
      const row = (j - i) / 2 + task.across - 1;
      const column = (i + j) / 2 - 1;
      const turn = kind === 'block' ? task.turnAt(row, column) : 0;
      const corners = [
        point(mid(i), near(j)),
        point(far(i), mid(j)),
        point(mid(i), far(j)),
        point(near(i), mid(j)),
      ];
      return cell(kind, [i, j], corners, turn);
    }),
  );
}

/** The four sashes of each block of the rows: those are all. */
function sashCells({ mid, near, far, right, bottom }: Lattice): readonly Cell[] {
  const lowerRight = (i: number, j: number): Cell =>
    cell(
      'sash',
      [i, j],
      [
        point(far(i), mid(j)),
        point(mid(i + 1), near(j + 1)),
        point(near(i + 1), mid(j + 1)),
        point(mid(i), far(j)),
      ],
    );
  const lowerLeft = (i: number, j: number): Cell =>
    cell(
      'sash',
      [i, j],
      [
        point(near(i), mid(j)),
        point(mid(i), far(j)),
        point(far(i - 1), mid(j + 1)),
        point(mid(i - 1), near(j + 1)),
      ],
    );
  return range(1, bottom - 1, 2).flatMap((j) =>
    range(1, right - 1, 2).flatMap((i) => [
      lowerRight(i - 1, j - 1),
      lowerLeft(i + 1, j - 1),
      lowerLeft(i, j),
      lowerRight(i, j),
    ]),
  );
}

/** Where sashes meet; at the edge one half shows. */
function cornerstoneCells({ mid, near, far, right, bottom }: Lattice): readonly Cell[] {
  return range(0, bottom).flatMap((j) =>
    range(j % 2 === 0 ? 1 : 0, right, 2).map((i) => {
      const corners = [
        ...(j > 0 ? [point(mid(i), far(j - 1))] : []),
        ...(i < right ? [point(near(i + 1), mid(j))] : []),
        ...(j < bottom ? [point(mid(i), near(j + 1))] : []),
        ...(i > 0 ? [point(far(i - 1), mid(j))] : []),
      ];
      return cell('cornerstone', [i, j], corners);
    }),
  );
}

function sideTriangles({ mid, near, far, right, bottom }: Lattice): readonly Cell[] {
  const across = range(2, right - 2, 2);
  const down = range(2, bottom - 2, 2);
  const side = 'side-triangle';
  return [
    ...across.map((i) =>
      cell(side, [i, 0], [point(near(i), mid(0)), point(far(i), mid(0)), point(mid(i), far(0))]),
    ),
    ...down.flatMap((j) => [
      cell(side, [0, j], [point(mid(0), near(j)), point(far(0), mid(j)), point(mid(0), far(j))]),
      cell(
        side,
        [right, j],
        [point(mid(right), near(j)), point(mid(right), far(j)), point(near(right), mid(j))],
      ),
    ]),
    ...across.map((i) =>
      cell(
        side,
        [i, bottom],
        [point(near(i), mid(bottom)), point(mid(i), near(bottom)), point(far(i), mid(bottom))],
      ),
    ),
  ];
}

function cornerTriangles({ mid, near, far, right, bottom }: Lattice): readonly Cell[] {
  return [0, bottom].flatMap((j) =>
    [0, right].map((i) => {
      const inward = point(i === 0 ? far(0) : near(right), mid(j));
      const down = point(mid(i), j === 0 ? far(0) : near(bottom));
      return cell('corner-triangle', [i, j], [point(mid(i), mid(j)), inward, down]);
    }),
  );
}

/** The cells of a top whose blocks stand on point, its edges filled with triangles. */
export function onPointCells(task: LayoutTask): readonly Cell[] {
  const lattice = latticeOf(task);
  return [
    ...blockCells(task, lattice),
    ...(task.sashing ? [...sashCells(lattice), ...cornerstoneCells(lattice)] : []),
    ...sideTriangles(lattice),
    ...cornerTriangles(lattice),
  ];
}
