import {
  type CuttingPlan,
  type CuttingSpec,
  checkCertificate,
  checkPlan,
  cuttingPlan,
  cuttingPlanInParts,
  type Placement,
  placementsOf,
  yardage,
  yardageInParts,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const runs = { numRuns: 8, seed: 8 };
const effort = 300_000;

/** Pieces in quarter inches, some square, some that may be turned. */
const pieces = fc.array(
  fc.record({
    width: fc.integer({ min: 6, max: 40 }).map((quarters) => `${quarters}/4`),
    length: fc.integer({ min: 6, max: 50 }).map((quarters) => `${quarters}/4`),
    count: fc.integer({ min: 1, max: 20 }),
    turnable: fc.boolean(),
  }),
  { minLength: 1, maxLength: 5 },
);

const thrifty = (list: CuttingSpec['pieces'], more: Partial<CuttingSpec> = {}): CuttingPlan =>
  cuttingPlan({ width: 41, pieces: list, effort, method: 'thrifty', ...more });

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** In quarter inches, which all of these plans lie on. */
const boxOf = ({ x, y, width, height }: Placement): Box => {
  const [left, top] = [x.times(4).toNumber(), y.times(4).toNumber()];
  return {
    left,
    top,
    right: left + width.times(4).toNumber(),
    bottom: top + height.times(4).toNumber(),
  };
};

/**
 * How many rounds of cuts from edge to edge free every piece of a rectangle, trimming too, beginning
 * across the fabric (`down`); none where no such cuts do.
 */
function rounds(boxes: readonly Box[], area: Box, down: boolean, left: number): boolean {
  const [only, another] = boxes;
  if (only === undefined) return true;
  const [from, to] = down ? (['top', 'bottom'] as const) : (['left', 'right'] as const);
  const fills =
    only.left === area.left &&
    only.right === area.right &&
    only.top === area.top &&
    only.bottom === area.bottom;
  if (another === undefined && fills) return true;
  if (left === 0) return false;
  // Every line that no piece crosses is cut; what lies between two of them is done one by one.
  const lines = [
    ...new Set([area[from], area[to], ...boxes.flatMap((box) => [box[from], box[to]])]),
  ]
    .filter((line) => boxes.every((box) => line <= box[from] || line >= box[to]))
    .sort((a, b) => a - b);
  return lines.slice(1).every((line, i) => {
    const part = { ...area, [from]: lines[i] ?? 0, [to]: line };
    const inside = boxes.filter((box) => box[from] >= part[from] && box[to] <= part[to]);
    return rounds(inside, part, !down, left - 1);
  });
}

describe('a thrifty plan', () => {
  it('cuts narrower pieces from the end of a wider strip', () => {
    const plan = thrifty([
      { width: 5, length: 5, count: 6 },
      { width: '2 1/2', length: 5, count: 4 },
    ]);
    expect([`${plan.length}`, plan.optimal]).toEqual(['5', true]);
    expect(plan.steps.map(({ text }) => text)).toEqual([
      'Square up the end of the fabric.',
      'Cut 1 strip 5 by the width of fabric; from it subcut 6 pieces 5, 1 end 10, cut into 2 rows 2 1/2, each with 2 pieces 5.',
    ]);
    expect(JSON.parse(JSON.stringify(plan)).strips).toEqual([
      {
        width: '5',
        count: 1,
        cuts: [{ length: '5', count: 6, pieces: [0] }],
        ends: [
          {
            length: '10',
            count: 1,
            rows: [{ width: '2 1/2', count: 2, cuts: [{ length: '5', count: 2, pieces: [1] }] }],
          },
        ],
        end: '1',
      },
    ]);
  });

  it('turns pieces that may be turned, and says so', () => {
    const piece = { width: 9, length: 4, count: 4 };
    const told = (turnable: boolean) => {
      const plan = thrifty([{ ...piece, turnable }]);
      return [`${plan.length}`, plan.optimal, plan.steps[1]?.text];
    };
    expect(told(false)[0]).toBe('9');
    expect(told(true)).toEqual([
      '4',
      true,
      'Cut 1 strip 4 by the width of fabric; from it subcut 4 pieces 9 (turned).',
    ]);
  });

  it('is the plain plan where that takes no more', () => {
    const list = [{ width: 5, length: 5, count: 16 }];
    const plan = thrifty(list);
    const { strips } = thrifty(list, { method: 'plain' });
    expect([plan.method, plan.strips, plan.optimal]).toEqual(['thrifty', strips, true]);
  });

  it('is what is made where no method is given, but for widths that hold a root', () => {
    const list = [{ width: 5, length: 5, count: 4 }];
    expect(cuttingPlan({ width: 41, pieces: list }).method).toBe('thrifty');
    const diagonal = [{ width: '√2', length: 5, count: 4 }];
    expect(cuttingPlan({ width: 41, pieces: diagonal }).method).toBe('plain');
    expect(() => thrifty(diagonal)).toThrow('A cut size lies on the lines of a ruler');
  });

  it('is free by four rounds of cuts from edge to edge, each piece at its size, as often as asked', () => {
    fc.assert(
      fc.property(pieces, (list) => {
        const plan = thrifty(list);
        const counts = list.map(() => 0);
        for (const { piece, width, height } of plan.placements()) {
          const asked = list[piece];
          counts[piece] = (counts[piece] ?? 0) + 1;
          const given = width.equals(asked?.length ?? 0) && height.equals(asked?.width ?? 0);
          const turned = width.equals(asked?.width ?? 0) && height.equals(asked?.length ?? 0);
          expect(given || (turned && asked?.turnable === true)).toBe(true);
        }
        expect(counts).toEqual(list.map(({ count }) => count));
        const boxes = plan.placements().map(boxOf);
        const fabric = { left: 0, top: 0, right: 164, bottom: plan.length.times(4).toNumber() };
        expect(rounds(boxes, fabric, true, 4)).toBe(true);
      }),
      runs,
    );
  });

  it('is never longer than the plain plan nor shorter than its bound, and passes the checker, as JSON too', () => {
    fc.assert(
      fc.property(pieces, fc.integer({ min: 0, max: effort }), (list, steps) => {
        const plan = thrifty(list, { effort: steps });
        const spec = { width: 41, pieces: list };
        const plain = cuttingPlan({ ...spec, effort: steps, method: 'plain' });
        expect(plan.length.compareTo(plain.length)).not.toBe(1);
        expect(plan.lowerBound.compareTo(plan.length)).not.toBe(1);
        const json = JSON.parse(JSON.stringify(plan));
        expect([checkPlan(spec, plan), checkPlan(spec, json)]).toEqual([[], []]);
        expect(JSON.stringify(placementsOf(json))).toBe(JSON.stringify(plan.placements()));
      }),
      runs,
    );
  });

  it('does not depend on the order of the pieces, and comes out the same each time', () => {
    fc.assert(
      fc.property(pieces, (list) => {
        const told = (these: typeof list) => thrifty(these).steps.map(({ text }) => text);
        expect(told([...list].reverse())).toEqual(told(list));
      }),
      { ...runs, numRuns: 4 },
    );
  });

  it('of more pieces never takes less, and of twice as many no more than twice, where that is proven', () => {
    fc.assert(
      fc.property(pieces, (list) => {
        const times = (factor: number) =>
          thrifty(list.map((piece) => ({ ...piece, count: factor * piece.count })));
        const [one, two] = [times(1), times(2)];
        if (one.optimal) expect(two.length.compareTo(one.length)).not.toBe(-1);
        if (two.optimal) expect(two.length.compareTo(one.length.times(2))).not.toBe(1);
        expect(two.lowerBound.compareTo(one.length.times(2))).not.toBe(1);
      }),
      { ...runs, numRuns: 4 },
    );
  });

  it('is made in parts, and given up by asking for no more', () => {
    const spec = {
      width: 41,
      pieces: [
        { width: 5, length: 7, count: 31 },
        { width: '3 1/4', length: '8 3/4', count: 47 },
        { width: '2 1/4', length: '4 3/4', count: 53 },
        { width: '4 1/8', length: '6 5/8', count: 67 },
        { width: '6 3/8', length: '7 1/4', count: 29 },
      ],
    };
    const making = cuttingPlanInParts(spec);
    let parts = 0;
    let state = making.next();
    for (; !state.done; state = making.next()) {
      expect(state.value.planned).toBeLessThan(state.value.widths);
      parts += 1;
    }
    expect(parts).toBeGreaterThan(0);
    expect(JSON.stringify(state.value)).toBe(JSON.stringify(cuttingPlan(spec)));
    const left = cuttingPlanInParts(spec);
    for (const _ of left) break;
    expect(left.next().done).toBe(true);
  });
});

describe('the checker of thrifty bounds', () => {
  const spec = {
    width: 41,
    effort,
    pieces: [
      { width: 5, length: 7, count: 11 },
      { width: 3, length: 8, count: 17 },
      { width: 2, length: 5, count: 23 },
    ],
  };
  const plan = cuttingPlan(spec);

  it('refuses a bound that is higher than what is proven', () => {
    expect(checkCertificate(spec, plan).holds).toBe(true);
    const more = { ...plan, lowerBound: plan.length.plus(1) };
    expect(checkCertificate(spec, more).holds).toBe(false);
  });

  it('refuses prices that are no whole numbers, and does without what is left out', () => {
    const worths = [{ prices: [1 / 2, 1, 1], rows: [] }];
    expect(checkCertificate(spec, { ...plan, worths }).holds).toBe(false);
    const { proven } = checkCertificate(spec, { ...plan, worths: [], certificate: [] });
    expect(proven.toString()).toBe('0');
  });
});

describe('yardage', () => {
  const list = [
    { width: 5, length: 5, count: 6 },
    { width: '2 1/2', length: 5, count: 4 },
  ];

  it('prefers the plain plan where both buy the same, and tells what both buy and cost in cuts', () => {
    const bought = yardage({ width: 41, pieces: list }, { spare: 0 });
    const told = bought.alternatives.map(({ method, buy, cuts }) => [method, `${buy}`, cuts]);
    expect(told).toEqual([
      ['plain', '9', 12],
      ['thrifty', '9', 11],
    ]);
    expect([bought.plan.method, bought.purchaseProven]).toEqual(['plain', true]);
  });

  it('takes the thrifty plan where it buys less', () => {
    const bought = yardage({ width: 41, pieces: list }, { spare: 0, increment: '1/2' });
    expect([bought.plan.method, `${bought.buy}`, bought.purchaseProven]).toEqual([
      'thrifty',
      '6',
      true,
    ]);
    const plain = yardage({ width: 41, pieces: list }, { method: 'plain', increment: '1/2' });
    expect(plain.alternatives.map(({ method }) => method)).toEqual(['plain']);
  });

  it('is made in parts too', () => {
    const making = yardageInParts({ width: 41, pieces: list });
    let state = making.next();
    while (!state.done) state = making.next();
    expect(`${state.value.buy}`).toBe(`${yardage({ width: 41, pieces: list }).buy}`);
  });
});
