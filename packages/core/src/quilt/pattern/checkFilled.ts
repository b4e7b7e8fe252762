import { fail } from '../../errors/error.js';
import { type Length, length } from '../../length/length.js';
import type { Size } from '../../plan/size.js';
import type { UnitPoint } from '../../unit/point.js';
import type { BlockRectangle, BlockUnit } from './block.js';

interface Placed {
  readonly finished: Size;
  readonly at: UnitPoint;
  readonly field: string;
}

const apart = (one: Placed, other: Placed): boolean =>
  one.at.x.plus(one.finished.width).compareTo(other.at.x) <= 0 ||
  other.at.x.plus(other.finished.width).compareTo(one.at.x) <= 0 ||
  one.at.y.plus(one.finished.height).compareTo(other.at.y) <= 0 ||
  other.at.y.plus(other.finished.height).compareTo(one.at.y) <= 0;

/** Pieces whose places are known, from the left; each is compared with those that it reaches. */
function checkPlaces(block: Size, placed: readonly Placed[]): void {
  for (const { at, finished, field } of placed) {
    const inside =
      at.x.plus(finished.width).compareTo(block.width) <= 0 &&
      at.y.plus(finished.height).compareTo(block.height) <= 0;
    if (inside) continue;
    fail(
      'piece-outside',
      field,
      { block },
      'This piece reaches over the edge of the block, which finishes {block}. Move it, or make it smaller.',
    );
  }
  const sorted = [...placed].sort((one, other) => one.at.x.compareTo(other.at.x));
  sorted.forEach((one, index) => {
    const right = one.at.x.plus(one.finished.width);
    for (const other of sorted.slice(index + 1)) {
      if (other.at.x.compareTo(right) >= 0) break;
      if (apart(one, other)) continue;
      fail(
        'pieces-overlap',
        other.field,
        { x: other.at.x, y: other.at.y },
        'The piece {x} across and {y} down lies on another one. Move one of them, or make it smaller.',
      );
    }
  });
}

/**
 * Checks that the pieces of a block that is listed by hand add up to it: their areas always, and that
 * they lie side by side where their places are given.
 *
 * @throws EighthsError `pieces-do-not-fill`, `piece-outside`, `pieces-overlap`
 */
export function checkFilled(
  finished: Size,
  rectangles: readonly BlockRectangle[],
  units: readonly BlockUnit[],
  field: string,
): void {
  const parts = [
    ...rectangles.map((each, index) => ({ ...each, field: `${field}.pieces[${index}]` })),
    ...units.map(({ plan, ...each }, index) => ({
      ...each,
      finished: plan.finished,
      field: `${field}.units[${index}]`,
    })),
  ];
  const area = ({ width, height }: Size): Length => width.times(height);
  const pieces = parts.reduce(
    (sum, part) => sum.plus(area(part.finished).times(part.count)),
    length(0),
  );
  const block = area(finished);
  if (!pieces.equals(block)) {
    fail(
      'pieces-do-not-fill',
      field,
      { pieces, block },
      'The pieces of this block finish to {pieces} square inches all told, and the block to {block}. They have to be the same.',
    );
  }
  checkPlaces(
    finished,
    parts.flatMap((part) =>
      part.at.map((at, index) => ({
        finished: part.finished,
        at,
        field: `${part.field}.at[${index}]`,
      })),
    ),
  );
}
