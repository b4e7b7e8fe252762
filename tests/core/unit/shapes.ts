import { fixed, over, rootOf, times, UNIT } from './fixed.js';
import { type Dot, meeting, type Polygon } from './polygon.js';

/** Finished patches by their own geometry, y up, in fixed numbers. */

const dot = (x: bigint, y: bigint): Dot => ({ x, y });
const half = (value: bigint): bigint => value / 2n;

export const root = (value: number): bigint => rootOf(fixed(value));

export const rectangle = (width: bigint, height: bigint): Polygon => [
  dot(0n, 0n),
  dot(width, 0n),
  dot(width, height),
  dot(0n, height),
];

export const rightTriangle = (width: bigint, height: bigint): Polygon => [
  dot(0n, 0n),
  dot(width, 0n),
  dot(0n, height),
];

/** A triangle with its base below and its point above the middle. */
export const goose = (width: bigint, height: bigint): Polygon => [
  dot(0n, 0n),
  dot(width, 0n),
  dot(half(width), height),
];

export const quarterSquare = (long: bigint): Polygon => goose(long, half(long));

/** A quarter of a square that is cut on both diagonals, its right angle at the origin. */
export const cornerOf = (leg: bigint): Polygon => rightTriangle(leg, leg);

/** The direction of an angle of 30, 45, 60 or 90 degrees, from halves of squares and triangles. */
export function direction(degrees: number): Dot {
  const one = UNIT;
  switch (degrees) {
    case 30:
      return dot(half(root(3)), half(one));
    case 45:
      return dot(half(root(2)), half(root(2)));
    case 60:
      return dot(half(one), half(root(3)));
    case 90:
      return dot(0n, one);
    default:
      throw new RangeError(`${degrees} degrees are not among these`);
  }
}

export function rhombus(side: bigint, degrees: number): Polygon {
  const along = direction(degrees);
  const lean = dot(times(along.x, side), times(along.y, side));
  return [dot(0n, 0n), dot(side, 0n), dot(side + lean.x, lean.y), lean];
}

/** How far a slanted side runs sideways up to a height. */
const run = (height: bigint, degrees: number): bigint => {
  const { x, y } = direction(degrees);
  return over(times(height, x), y);
};

export function parallelogram(base: bigint, height: bigint, degrees: number): Polygon {
  const lean = run(height, degrees);
  return [dot(0n, 0n), dot(base, 0n), dot(base + lean, height), dot(lean, height)];
}

export function trapezoid(long: bigint, height: bigint, degrees: number): Polygon {
  const lean = run(height, degrees);
  return [dot(0n, 0n), dot(long, 0n), dot(long - lean, height), dot(lean, height)];
}

export function rightTrapezoid(long: bigint, height: bigint, degrees: number): Polygon {
  const lean = run(height, degrees);
  return [dot(0n, 0n), dot(long, 0n), dot(long, height), dot(lean, height)];
}

export const equilateral = (height: bigint): Polygon => goose(over(2n * height, root(3)), height);

export function hexagon(side: bigint): Polygon {
  const middle = times(side, half(root(3)));
  return [
    dot(half(side), 0n),
    dot(half(side) + side, 0n),
    dot(2n * side, middle),
    dot(half(side) + side, 2n * middle),
    dot(half(side), 2n * middle),
    dot(0n, middle),
  ];
}

/**
 * A diamond of an eight-pointed star that fills a square block: its tip in the upper left, one of its
 * sides from the center straight up, the neighboring one at 45 degrees. The tip is where the two sides
 * through the corners of a half turn meet the block's edge.
 */
export function starDiamond(block: bigint): Polygon {
  const middle = half(block);
  const center = dot(middle, middle);
  // The star's tips lie on the block's edge where the rays at 22 1/2 degrees from the vertical do,
  // which halve the angle between the vertical and the diagonal.
  const ray = dot(-half(root(2)), UNIT + half(root(2)));
  const tip = meeting(
    [center, dot(center.x + ray.x, center.y + ray.y)],
    [dot(0n, block), dot(block, block)],
  );
  // A rhombus from the center to the tip: through the tip parallel to the vertical and the diagonal.
  const inner = meeting([center, dot(middle, block)], [tip, dot(tip.x + UNIT, tip.y - UNIT)]);
  const outer = meeting([center, dot(0n, block)], [tip, dot(tip.x, tip.y - UNIT)]);
  return [center, inner, tip, outer];
}
