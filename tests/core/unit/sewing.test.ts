import {
  flyingGeese,
  halfSquareTriangles,
  hexagon,
  length,
  quarterSquareTriangles,
  snowball,
  squareInSquare,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixed, fixedOf, isClose, UNIT } from './fixed.js';
import {
  areaOf,
  clip,
  type Dot,
  type Edge,
  edgesOf,
  extent,
  fills,
  fold,
  leftOf,
  meeting,
  movedLeft,
  type Polygon,
  sideOf,
  turnedRound,
} from './polygon.js';
import * as shape from './shapes.js';

/**
 * Cutting, sewing and pressing as polygons: fabric is clipped where it is cut, and folded over the
 * seam where it is pressed open. y points up; nothing is known here of allowances.
 */

const at = (x: bigint, y: bigint): Dot => ({ x, y });

/** Sewn `s` from a raw edge and pressed open: the fabric beyond the seam, and the same folded over. */
function pressed(left: Polygon, right: Polygon, seam: Edge): readonly [Polygon, Polygon] {
  return [clip(left, seam), fold(clip(right, seam), seam)];
}

/** The square with two opposite corners in the points given. */
function squareOn(a: Dot, b: Dot): Polygon {
  const middle = at((a.x + b.x) / 2n, (a.y + b.y) / 2n);
  const arm = at(a.x - middle.x, a.y - middle.y);
  return [a, at(middle.x - arm.y, middle.y + arm.x), b, at(middle.x + arm.y, middle.y - arm.x)];
}

/** The side of the largest square that the seam crosses from corner to corner and both patches fill. */
function squareOf([left, right]: readonly [Polygon, Polygon], seam: Edge): bigint {
  const onSeam = left.filter((dot) => isClose(leftOf(seam, dot), 0n));
  const [a, b] = onSeam;
  if (a === undefined || b === undefined) throw new RangeError('no seam');
  const whole = squareOn(a, b);
  expect(fills([left, right], whole)).toBe(true);
  expect(isClose(areaOf(left) + areaOf(right), areaOf(whole))).toBe(true);
  return sideOf(whole, 0);
}

/** A square cut on its diagonal, sewn `s` inside the cut. */
function twoAtATime(cut: bigint, s: bigint): bigint {
  const half = shape.cornerOf(cut);
  const seam = movedLeft([at(cut, 0n), at(0n, cut)], s);
  return squareOf(pressed(half, half, seam), seam);
}

/** Sewn round the edge, cut on both diagonals: each quarter is sewn on its long edge. */
function fourAtATime(cut: bigint, s: bigint): bigint {
  const quarter = shape.quarterSquare(cut);
  const seam = movedLeft([at(0n, 0n), at(cut, 0n)], s);
  return squareOf(pressed(quarter, quarter, seam), seam);
}

/** The half-square units of `cut`, crossed, sewn `s` from their other diagonal. */
const hourglass = (cut: bigint, s: bigint): bigint => twoAtATime(twoAtATime(cut, s), s);

/** A quarter of the large square with two small squares sewn on, one after the other. */
function gooseFills(
  large: bigint,
  small: bigint,
  s: bigint,
  width: bigint,
  height: bigint,
): boolean {
  const center = at(large / 2n, large / 2n);
  const [left, right] = [at(0n, 0n), at(large, 0n)];
  const quarter: Polygon = [left, right, center];
  const sky: readonly [Polygon, Polygon] = [
    [left, at(small, 0n), at(small, small)],
    [right, at(large - small, small), at(large - small, 0n)],
  ];
  // Seams run s inside the two cuts, the goose on their left.
  const first = movedLeft([center, left], s);
  const second = movedLeft([right, center], s);
  const [body, firstSky] = pressed(quarter, sky[0], first);
  const [goose, secondSky] = pressed(body, sky[1], second);
  // What lies beyond the second seam is its allowance.
  const keptSky = clip(firstSky, second);
  const start = (large - width) / 2n;
  const unit = shape.rectangle(width, height).map(({ x, y }) => at(x + start, y));
  return fills([goose, keptSky, secondSky], unit);
}

const eighth = fc.integer({ min: 4, max: 96 });
const seams = fc.integer({ min: 1, max: 3 });

/** Sizes and seams as the unit's and as the geometry's. */
const sizes = fc
  .tuple(eighth, seams)
  .filter(([f, s]) => f > s)
  .map(([f, s]) => ({
    finished: `${f}/8`,
    seam: `${s}/8`,
    f: fixed(f, 8),
    s: fixed(s, 8),
  }));

const check = (property: (one: ReturnType<typeof pick>) => void): void => {
  fc.assert(fc.property(sizes, property), { numRuns: 60 });
};
const pick = (one: { finished: string; seam: string; f: bigint; s: bigint }) => one;

const firstCut = (plan: { cuts: readonly { exact: { width: object }; width: object }[] }) => {
  const [cut] = plan.cuts;
  if (cut === undefined) throw new RangeError('no cut');
  return { exact: fixedOf(cut.exact.width), cut: fixedOf(cut.width) };
};

describe('half-square triangles, cut, sewn and pressed', () => {
  it.each([
    ['two-at-a-time', twoAtATime, 1n],
    ['cut-triangles', twoAtATime, 1n],
    ['four-at-a-time', fourAtATime, 1n],
    // Cut across the middle both ways, each quarter is two at a time.
    ['eight-at-a-time', twoAtATime, 2n],
  ] as const)(
    '%s: the exact square makes the trim size, the cut one no less',
    (method, sew, parts) => {
      check(({ finished, seam, f, s }) => {
        const { exact, cut } = firstCut(halfSquareTriangles({ finished, seam, method }));
        expect(isClose(sew(exact / parts, s), f + 2n * s)).toBe(true);
        const made = sew(cut / parts, s);
        expect(made - (f + 2n * s)).toBeGreaterThanOrEqual(-fixed(1, 10n ** 40n));
        expect(made - (f + 2n * s)).toBeLessThan(fixed(1, 8));
      });
    },
  );

  it.each(['two-at-a-time', 'four-at-a-time', 'eight-at-a-time'] as const)(
    '%s: the oversize is what the sewn unit is larger',
    (method) => {
      check(({ finished, seam, f, s }) => {
        const plan = halfSquareTriangles({ finished, seam, method, oversize: '1/4' });
        const { exact } = firstCut(plan);
        const sew = method === 'four-at-a-time' ? fourAtATime : twoAtATime;
        const made = sew(method === 'eight-at-a-time' ? exact / 2n : exact, s);
        expect(isClose(made, f + 2n * s + fixed(1, 4))).toBe(true);
      });
    },
  );
});

describe('quarter-square triangles from pairs of half-square triangles', () => {
  it('measure the trim size', () => {
    check(({ finished, seam, f, s }) => {
      const { exact, cut } = firstCut(quarterSquareTriangles({ finished, seam }));
      expect(isClose(hourglass(exact, s), f + 2n * s)).toBe(true);
      expect(hourglass(cut, s)).toBeGreaterThanOrEqual(f + 2n * s - fixed(1, 10n ** 40n));
    });
  });
});

describe('flying geese, four at a time', () => {
  const cutsOf = (finished: string, seam: string) => {
    const [large, small] = flyingGeese({ finished, seam }).cuts;
    if (large === undefined || small === undefined) throw new RangeError('no cuts');
    return { large, small };
  };

  it('fill the unfinished unit, its point a seam allowance inside', () => {
    check(({ finished, seam, f, s }) => {
      fc.pre(f / 2n > s);
      const { large, small } = cutsOf(finished, seam);
      const [w, h] = [f + 2n * s, f / 2n + 2n * s];
      const exact = [fixedOf(large.exact.width), fixedOf(small.exact.width)] as const;
      expect(gooseFills(exact[0], exact[1], s, w, h)).toBe(true);
      expect(gooseFills(fixedOf(large.width), fixedOf(small.width), s, w, h)).toBe(true);
      const [left, right] = [at(0n, 0n), at(exact[0], 0n)];
      const center = at(exact[0] / 2n, exact[0] / 2n);
      const point = meeting(movedLeft([center, left], s), movedLeft([right, center], s));
      expect(isClose(h - point.y, s)).toBe(true);
    });
  });

  it.each([
    ['twice as wide as high', '3', '25/8'],
    ['as wide as high', '6', '25/4'],
  ])('%s with an oversize are those of a wider goose of the same ratio', (_, height, higher) => {
    const exact = (width: string, high: string, oversize: string) =>
      flyingGeese({
        finished: { width, height: high },
        oversize,
        method: 'cut-triangles',
      }).cuts.map((cut) => `${cut.exact.width} by ${cut.exact.height}`);
    expect(exact('6', height, '1/4')).toEqual(exact('6 1/4', higher, '0'));
  });

  it('do not, from squares a sixteenth less than exact', () => {
    check(({ finished, seam, f, s }) => {
      fc.pre(f / 2n > s);
      const { large, small } = cutsOf(finished, seam);
      const short = (side: object): bigint => fixedOf(side) - UNIT / 16n;
      const [w, h] = [f + 2n * s, f / 2n + 2n * s];
      expect(gooseFills(short(large.exact.width), fixedOf(small.exact.width), s, w, h)).toBe(false);
      expect(gooseFills(fixedOf(large.exact.width), short(small.exact.width), s, w, h)).toBe(false);
    });
  });
});

/** A corner square laid on the unit's corner, sewn from corner to corner and pressed open. */
const flipped = (side: bigint): Polygon => {
  const seam: Edge = [at(side, 0n), at(0n, side)];
  const inner: Polygon = [at(side, 0n), at(side, side), at(0n, side)];
  return fold(inner, seam);
};

describe('stitch and flip', () => {
  it('covers the corner, its seam through the finished points', () => {
    check(({ finished, seam, f, s }) => {
      const plans = [
        [snowball({ finished: length(finished).times(3), corner: finished, seam }), 1, f],
        [
          squareInSquare({ finished: length(finished).times(2), seam, method: 'stitch-and-flip' }),
          1,
          f,
        ],
        [
          flyingGeese({ finished: length(finished).times(2), seam, method: 'stitch-and-flip' }),
          1,
          f,
        ],
      ] as const;
      for (const [plan, index, leg] of plans) {
        const cut = plan.cuts[index];
        const side = fixedOf(cut?.exact.width ?? '0');
        const covered = flipped(side);
        const corner = shape.cornerOf(side);
        expect(fills([covered], corner)).toBe(true);
        // The seam passes through the ends of the finished leg, s inside the raw edges.
        const seamLine: Edge = [at(side, 0n), at(0n, side)];
        expect(isClose(leftOf(seamLine, at(s, s + leg)), 0n)).toBe(true);
        expect(isClose(leftOf(seamLine, at(s + leg, s)), 0n)).toBe(true);
      }
    });
  });

  it('leaves triangles for half-square units of the size named', () => {
    check(({ finished, seam, f, s }) => {
      const plan = snowball({ finished: length(finished).times(3), corner: finished, seam });
      // Cut s beyond the seam on the diagonal of the corner square.
      const side = f + 2n * s;
      const cutLine = movedLeft([at(side, 0n), at(0n, side)], s);
      const offcut = clip(shape.rectangle(side, side), cutLine);
      expect(offcut.length).toBe(3);
      const made = twoAtATime(extent(offcut).width, s) - 2n * s;
      if (plan.bonus === undefined) expect(made <= 0n).toBe(true);
      else expect(isClose(fixedOf(plan.bonus.finished), made)).toBe(true);
    });
  });
});

describe('square in a square, sewn round by round', () => {
  it('has its points a seam allowance inside the trim', () => {
    check(({ finished, seam, f, s }) => {
      const plan = squareInSquare({ center: finished, seam, rounds: 3 });
      let side = fixedOf(plan.cuts[0]?.exact.width ?? '0');
      for (const [index, round] of plan.rounds.entries()) {
        // A corner's long edge is sewn to a side; pressed open, its point lies half of it further out.
        const leg = fixedOf(plan.cuts[index + 1]?.exact.width ?? '0');
        const corner = shape.cornerOf(leg);
        const [, long] = edgesOf(corner);
        if (long === undefined) throw new RangeError('no long edge');
        const seamLine = movedLeft(long, s);
        const height = leftOf(seamLine, at(0n, 0n));
        const inside = side - 2n * s;
        // The raw square stands on the seams; its corner is the triangle's, its middle the center's.
        const halfDiagonal = inside / 2n + height;
        const raw = halfDiagonal * 2n;
        const trim = (raw * UNIT) / shape.root(2);
        expect(isClose(trim, fixedOf(round.trimTo))).toBe(true);
        side = trim;
      }
      expect(isClose(side - 2n * s, (f * 2n * shape.root(2)) / UNIT)).toBe(true);
    });
  });
});

describe('hexagons from diamonds', () => {
  it('have six equal sides once the points are cut off half the width from the middle', () => {
    check(({ finished, seam }) => {
      const plan = hexagon({ finished, seam, usable: 60 });
      const width = fixedOf(plan.strip?.width ?? '0');
      const along = shape.direction(60);
      const side = (width * UNIT) / along.y;
      const rhombus = shape.rhombus(side, 60);
      const [start, , end] = rhombus;
      if (start === undefined || end === undefined) throw new RangeError('no diagonal');
      const middle = at((start.x + end.x) / 2n, (start.y + end.y) / 2n);
      const across: Edge = [middle, at(middle.x + end.y, middle.y - end.x)];
      const cutOff = [movedLeft(across, -width / 2n), movedLeft(turnedRound(across), -width / 2n)];
      const made = cutOff.reduce(clip, rhombus);
      expect(made.length).toBe(6);
      const first = sideOf(made, 0);
      for (const index of [1, 2, 3, 4, 5]) expect(isClose(sideOf(made, index), first)).toBe(true);
      expect(isClose(first * 2n, fixedOf(plan.strip?.step ?? '0'))).toBe(true);
    });
  });
});
