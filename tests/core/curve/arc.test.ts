import { type ArcRequest, fitArc, logCabin } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The greatest |d² − r²| / 2r of points from the circle through `end` with its middle on the diagonal. */
function greatest(points: readonly Point[], end: Point, t: number): number {
  const r = Math.hypot(end.x - t, end.y - t);
  return Math.max(
    ...points.map(({ x, y }) => Math.abs((x - t) ** 2 + (y - t) ** 2 - r * r) / (2 * r)),
  );
}

/** The least of it over all t: looked for densely, then by golden section around the best places. */
function leastGreatest(points: readonly Point[], end: Point): number {
  const scale = end.x - end.y;
  const at = (angle: number): number => greatest(points, end, scale * Math.tan(angle));
  const samples = 1500;
  const angles = Array.from(
    { length: samples + 1 },
    (_, i) => (i / samples - 0.5) * Math.PI * 0.999999,
  );
  const values = angles.map(at);
  let least = Math.min(...values);
  const near = Math.max(least * 1.5, least + 0.5);
  for (let i = 1; i < samples; i += 1) {
    const [left = 0, here = 0, right = 0] = values.slice(i - 1, i + 2);
    if (here > left || here > right || here > near) continue;
    let [low = 0, high = 0] = [angles[i - 1], angles[i + 1]];
    for (let step = 0; step < 60; step += 1) {
      const [one, other] = [low + (high - low) * 0.382, low + (high - low) * 0.618];
      if (at(one) < at(other)) high = other;
      else low = one;
    }
    least = Math.min(least, at((low + high) / 2));
  }
  return least;
}

/** Every list of so many widths. */
function lists(rounds: number, least: number, most: number): number[][] {
  if (rounds === 0) return [[]];
  return lists(rounds - 1, least, most).flatMap((list) =>
    Array.from({ length: most - least + 1 }, (_, i) => [...list, least + i]),
  );
}

interface Small {
  readonly rounds: number;
  readonly finished: number;
  readonly center: number;
  readonly wide: readonly [number, number];
  readonly narrow: readonly [number, number];
}

/** The least greatest deviation over all widths, each tried, or undefined where none add up. */
function bruteForce({ rounds, finished, center, wide, narrow }: Small): number | undefined {
  let best: number | undefined;
  for (const w of lists(rounds, ...wide)) {
    for (const n of lists(rounds, ...narrow)) {
      const [a, b] = [w, n].map((list) => list.reduce((sum, each) => sum + each, 0));
      if (a === undefined || b === undefined || a + b + center !== finished || a <= b) continue;
      const points: Point[] = [{ x: center, y: 0 }];
      w.forEach((each, i) => {
        const last = points[i] ?? { x: 0, y: 0 };
        points.push({ x: last.x + each, y: last.y - (n[i] ?? 0) });
      });
      const end = points[rounds] ?? { x: 0, y: 0 };
      const least = leastGreatest(points.slice(0, -1), end);
      if (best === undefined || least < best) best = least;
    }
  }
  return best;
}

const eighths = (count: number): string => `${count}/8`;

function requestOf({ rounds, finished, center, wide, narrow }: Small): ArcRequest {
  const ends = ([least, most]: readonly [number, number]) => ({
    least: eighths(least),
    most: eighths(most),
  });
  return {
    rounds,
    finished: eighths(finished),
    center: eighths(center),
    wide: ends(wide),
    narrow: ends(narrow),
  };
}

const range = (least: number, spread: number) =>
  fc
    .tuple(fc.integer({ min: 1, max: least }), fc.integer({ min: 0, max: spread }))
    .map(([from, more]) => [from, from + more] as const);

const smallCases: fc.Arbitrary<Small> = fc
  .record({
    rounds: fc.integer({ min: 1, max: 3 }),
    center: fc.integer({ min: 1, max: 20 }),
    wide: range(6, 3),
    narrow: range(4, 2),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ share, ...one }) => {
    const least = one.rounds * (one.wide[0] + one.narrow[0]);
    const most = one.rounds * (one.wide[1] + one.narrow[1]);
    return { ...one, finished: one.center + Math.round(least + share * (most - least)) };
  });

describe('an arc', () => {
  it('is the best of all widths, as brute force finds it', () => {
    fc.assert(
      fc.property(smallCases, (one) => {
        const expected = bruteForce(one);
        if (expected === undefined) {
          expect(refusal(() => fitArc(requestOf(one))).code).toBe('no-arc');
          return;
        }
        const found = fitArc(requestOf(one)).greatestDeviation.toNumber() * 8;
        expect(found).toBeLessThan(expected + 1e-6);
        expect(found).toBeGreaterThan(expected - 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  const strips = { wide: 2, narrow: '1 1/2' };

  it.each([
    [4, 9],
    [5, '10 1/2'],
    [8, 16],
    [12, 23],
  ])('of %i rounds adds up exactly, from strips of one width', (rounds, finished) => {
    const arc = fitArc({ rounds, finished, center: 2, strips, leastTrim: '1/8' });
    const block = logCabin(arc.spec);
    expect(block.finished.width.equals(finished)).toBe(true);
    expect(new Set(block.strips.map(({ fabric, width }) => `${fabric} ${width}`))).toEqual(
      new Set(['wide 2', 'narrow 1 1/2']),
    );
    for (const off of [...(arc.trimsOff.wide ?? []), ...(arc.trimsOff.narrow ?? [])]) {
      expect(off.compareTo('1/8')).not.toBe(-1);
    }
    expect(arc.greatestDeviation.compareTo('1/16')).toBe(-1);
    expect(arc.corners.map(({ round }) => round)).toEqual(
      Array.from({ length: rounds + 1 }, (_, i) => i),
    );
    expect(arc.corners.at(-1)?.deviation.sign()).toBe(0);
  });

  it('gives deviations that are those of its own circle', () => {
    const arc = fitArc({ rounds: 4, finished: 9, center: 2, strips });
    const { radius, wide, narrow, corners, greatestDeviation } = arc;
    const points: Point[] = [{ x: 2, y: 0 }];
    wide.forEach((each, i) => {
      const last = points[i] ?? { x: 0, y: 0 };
      points.push({ x: last.x + each.toNumber(), y: last.y - (narrow[i]?.toNumber() ?? 0) });
    });
    const end = points[4] ?? { x: 0, y: 0 };
    const r = radius?.toNumber() ?? 0;
    // (x − t)² + (y − t)² = r², the middle beyond the chord.
    const half = (end.x + end.y) / 2;
    const t = half + Math.sqrt(r * r - ((end.x - end.y) / 2) ** 2 * 2) / Math.SQRT2;
    points.forEach(({ x, y }, i) => {
      const d = Math.hypot(x - t, y - t);
      expect(corners[i]?.deviation.toNumber()).toBeCloseTo((d * d - r * r) / (2 * r), 9);
    });
    expect(greatest(points, end, t)).toBeCloseTo(greatestDeviation.toNumber(), 9);
  });

  it('comes nearer where the center may be chosen', () => {
    const fixed = fitArc({ rounds: 4, finished: 9, center: 2, strips });
    const free = fitArc({ rounds: 4, finished: 9, center: { least: 1, most: 3 }, strips });
    expect(free.greatestDeviation.compareTo(fixed.greatestDeviation)).toBeLessThanOrEqual(0);
  });

  it('is nearer than constant widths by far', () => {
    const { wide, narrow, greatestDeviation } = fitArc({
      rounds: 4,
      finished: 9,
      center: 2,
      strips,
    });
    expect(greatestDeviation.toNumber()).toBeLessThan(0.005);
    expect([inches(wide[0]), inches(narrow[0])]).not.toEqual(['1 1/4', '1/2']);
    const points = [0, 1, 2, 3].map((k) => ({ x: 2 + 1.25 * k, y: -0.5 * k }));
    expect(leastGreatest(points, { x: 7, y: -2 })).toBeGreaterThan(0.1);
  });

  it.each<[string, string, ArcRequest]>([
    ['no-arc', 'finished', { rounds: 4, finished: 30, center: 2, strips }],
    ['no-arc', 'finished', { rounds: 4, finished: '9 1/16', center: 2, strips }],
    ['not-a-count', 'rounds', { rounds: 13, finished: 23, center: 2, strips }],
    ['missing-field', 'strips.wide', { rounds: 4, finished: 9, center: 2 }],
    [
      'strip-too-narrow',
      'strips.narrow',
      { rounds: 4, finished: 9, center: 2, strips: { wide: 2, narrow: '3/4' } },
    ],
    ['out-of-range', 'finished', { rounds: 4, finished: 100, center: 2, strips }],
  ])('%s of %s is refused', (code, field, request) => {
    const error = refusal(() => fitArc(request));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});
