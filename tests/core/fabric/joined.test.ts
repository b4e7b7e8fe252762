import {
  cuttingPlan,
  fabricPlan,
  fabricYardage,
  joinStrips,
  length,
  lengthwise,
  type PieceInput,
  yardage,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fabricWidth, pieces } from './arbitrary.js';
import { areaOf, inEighths } from './support/eighths.js';
import { faultOf } from './support/guillotine.js';
import { refusal } from './support/refusal.js';

const eighths = (min: number, max: number) => fc.integer({ min, max }).map((count) => `${count}/8`);
const longPieces = fc.array(
  fc.record({
    width: fc.constantFrom('2 1/4', '2 1/2', '5'),
    length: eighths(40, 2400),
    count: fc.integer({ min: 1, max: 5 }),
  }),
  { minLength: 1, maxLength: 4 },
);
const join = fc.constantFrom('straight' as const, 'diagonal' as const);
const binding = (long: number) => ({ width: '2 1/2', length: long, count: 1, joinable: true });

describe('joined strips', () => {
  // Derived exactly (X): n strips of length U joined on the diagonal give nU − (n − 1)w.
  it.each([
    [300, 8, '302 1/2'],
    [302.5, 8, '302 1/2'],
    [303, 9, '340'],
    [40, 1, '40'],
    [41, 2, '77 1/2'],
  ])('of 40 by 2 1/2, for %s inches: %i, which make %s', (needed, strips, make) => {
    const [run] = joinStrips({ width: 40, pieces: [binding(needed)] }).runs;
    expect([run?.count, `${run?.total.plus(run.leftOver)}`]).toEqual([strips, make]);
  });

  it('lose two seam allowances where they are joined straight, and the seam lies one from the end', () => {
    const { runs, joins } = joinStrips({ width: 40, pieces: [binding(119)], join: 'straight' });
    // 3 · 40 − 2 · 1/2 = 119.
    expect([runs[0]?.count, `${runs[0]?.leftOver}`]).toEqual([3, '0']);
    expect(joins.map(({ at }) => `${at}`)).toEqual(['39 3/4', '79 1/4']);
  });

  it('are one continuous length, cut up in the order of the pieces', () => {
    const { runs, joins, steps } = joinStrips({
      width: 40,
      join: 'straight',
      pieces: [
        { width: 5, length: 70, count: 2 },
        { width: '2 1/2', length: 50, count: 1 },
        { width: 5, length: 60, count: 2 },
      ],
    });
    expect(runs.map((run) => [`${run.width}`, run.count, [...run.pieces]])).toEqual([
      ['5', 7, [0, 2]],
      ['2 1/2', 2, [1]],
    ]);
    expect(joins.map((each) => [each.piece, each.copy, `${each.from}`])).toEqual([
      [0, 1, '39 3/4'],
      [0, 2, '9 1/4'],
      [0, 2, '48 3/4'],
      [2, 1, '18 1/4'],
      [2, 1, '57 3/4'],
      [2, 2, '37 1/4'],
      [1, 1, '39 3/4'],
    ]);
    expect(steps.map(({ text }) => text)).toEqual([
      'Join 7 strips 5 wide end to end with straight seams of 1/4: one length of 260.',
      'From this length cut 2 pieces 70.',
      'From this length cut 2 pieces 60.',
      'Join 2 strips 2 1/2 wide end to end with straight seams of 1/4: one length of 50.',
    ]);
  });

  it('warn where a seam lies across the cut between two pieces', () => {
    const both = (long: string) =>
      joinStrips({ width: 40, pieces: [{ width: 2, length: long, count: 2 }] });
    // The seam's middle lies at 39, and reaches an inch to both sides.
    expect(both('39 1/2').warnings.map(({ code }) => code)).toEqual(['join-at-cut']);
    expect(both('45').warnings).toEqual([]);
  });

  it('add up: pieces and what joins use up are the strips that are used, none is wasted', () => {
    fc.assert(
      fc.property(fabricWidth, longPieces, join, (width, list, how) => {
        const { runs, joins, strips } = joinStrips({ width, pieces: list, join: how });
        let total = length(0);
        runs.forEach((run, at) => {
          const used = run.strips.reduce(
            (sum, strip) => sum.plus(strip.length.times(strip.count)),
            length(0),
          );
          const lost = run.joinUses.times(run.count - 1);
          expect(run.total.plus(lost).equals(used)).toBe(true);
          expect(run.last.compareTo(width)).not.toBe(1);
          expect(run.last.compareTo(run.count > 1 ? run.joinUses : 0)).toBe(1);
          const own = joins.filter((each) => each.run === at);
          expect(own.length).toBe(run.count - 1);
          for (const { piece, copy, from } of own) {
            const asked = list[piece];
            expect(from.sign() >= 0 && from.compareTo(asked?.length ?? 0) < 0).toBe(true);
            expect(copy >= 1 && copy <= (asked?.count ?? 0)).toBe(true);
          }
          total = total.plus(run.total);
        });
        const asked = list.reduce(
          (sum, each) => sum.plus(length(each.length).times(each.count)),
          length(0),
        );
        expect(total.equals(asked)).toBe(true);
        expect(strips).toEqual(runs.flatMap((run) => run.strips));
      }),
      { numRuns: 30, seed: 8 },
    );
  });

  it('are refused where a join uses up a whole strip, or there are too many', () => {
    const wide = [{ width: 40, length: 100, count: 1 }];
    expect(refusal(() => joinStrips({ width: 40, pieces: wide }))).toEqual([
      'strip-too-short',
      'width',
    ]);
    const many = [{ width: 2, length: 300, count: 100_000 }];
    expect(refusal(() => joinStrips({ width: 40, pieces: many }))).toEqual([
      'too-many-pieces',
      'pieces',
    ]);
    const unknown = JSON.parse(
      '{"width":40,"join":"glued","pieces":[{"width":2,"length":9,"count":1}]}',
    );
    expect(refusal(() => joinStrips(unknown))).toEqual(['unknown-choice', 'join']);
  });
});

describe('pieces cut along the length', () => {
  it('lie side by side in a block as long as the longest, and leave the rest of its width', () => {
    const block = lengthwise({ width: 42, pieces: [{ width: '6 1/2', length: 80, count: 4 }] });
    expect([`${block.length}`, block.optimal]).toEqual(['80', true]);
    expect(JSON.parse(JSON.stringify(block.leftOver))).toEqual([
      { x: '26', y: '0', width: '16', height: '80' },
    ]);
  });

  it('lie one below the other where that is shorter', () => {
    const block = lengthwise({
      width: 42,
      pieces: [
        { width: 21, length: 90, count: 1 },
        { width: 21, length: 45, count: 2 },
      ],
    });
    expect([`${block.length}`, block.optimal]).toEqual(['90', true]);
  });

  it('are all in their block, cut from edge to edge; they and what is left over are all of it', () => {
    const list = fc.array(
      fc.record({
        width: eighths(16, 160),
        length: eighths(330, 800),
        count: fc.integer({ min: 1, max: 4 }),
      }),
      { minLength: 1, maxLength: 3 },
    );
    fc.assert(
      fc.property(fabricWidth, list, (width, asked) => {
        const block = lengthwise({ width, pieces: asked });
        const boxes = block.placements.map(inEighths);
        const rest = block.leftOver.map(inEighths);
        const whole = inEighths({
          x: length(0),
          y: length(0),
          width: block.width,
          height: block.length,
        });
        expect(faultOf(whole, [...boxes, ...rest])).toBeUndefined();
        expect(areaOf([...boxes, ...rest])).toBe(areaOf([whole]));
        asked.forEach((piece, at) => {
          const own = block.placements.filter((placed) => placed.piece === at);
          expect(own.length).toBe(piece.count);
          expect(own.every((placed) => placed.height.equals(piece.length))).toBe(true);
        });
        expect(block.lowerBound.compareTo(block.length)).not.toBe(1);
      }),
      { numRuns: 12, seed: 8 },
    );
  });

  it('are refused where they are wider than the fabric too', () => {
    const wide = [{ width: 43, length: 80, count: 1 }];
    expect(refusal(() => lengthwise({ width: 42, pieces: wide }))).toEqual([
      'piece-too-long',
      'pieces[0].width',
    ]);
    expect(refusal(() => fabricPlan({ width: 42, pieces: wide }))).toEqual([
      'piece-too-long',
      'pieces[0].width',
    ]);
  });
});

describe('one plan for everything', () => {
  it('is the plain plan where nothing is long and nothing is joined', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, (width, list) => {
        const plan = fabricPlan({ width, pieces: list, method: 'plain' });
        const plain = cuttingPlan({ width, pieces: list, method: 'plain' });
        expect(JSON.stringify(plan.across)).toBe(JSON.stringify(plain));
        expect([`${plan.length}`, `${plan.lowerBound}`, plan.optimal]).toEqual([
          `${plain.length}`,
          `${plain.lowerBound}`,
          plain.optimal,
        ]);
      }),
      { numRuns: 10, seed: 8 },
    );
  });

  it('proves what nine strips of binding take', () => {
    const plan = fabricPlan({ width: 40, pieces: [binding(312)], method: 'plain' });
    expect([`${plan.length}`, plan.optimal, plan.warnings]).toEqual(['22 1/2', true, []]);
  });

  it('uses the space beside long borders', () => {
    const borders = { width: 6, length: 80, count: 4 };
    const squares = { width: 8, length: 8, count: 20 };
    const plan = fabricPlan({ width: 40, pieces: [borders, squares], method: 'plain' });
    // Beside 24 inches of borders there are 16: ten rows of two.
    expect([`${plan.length}`, plan.optimal, plan.across]).toEqual(['80', true, undefined]);
    expect(plan.beside.map(({ placements }) => placements.length)).toEqual([20]);
  });

  it('joins pieces that fit across only where that takes less', () => {
    const halves = { width: 2, length: 21, count: 8, joinable: true };
    const joined = fabricPlan({ width: 40, pieces: [halves], join: 'straight', method: 'plain' });
    // Alone each takes a strip of its own; joined, 168 inches and four joins take five.
    expect([`${joined.length}`, joined.joined?.joins.length]).toEqual(['10', 4]);
    const thirds = { width: 2, length: 20, count: 8, joinable: true };
    const plan = fabricPlan({ width: 40, pieces: [thirds], join: 'straight', method: 'plain' });
    expect([`${plan.length}`, plan.joined]).toEqual(['8', undefined]);
  });

  it('warns of a piece that should not be turned and lies along all the same', () => {
    const print = { label: 'panel', width: 20, length: 60, count: 1, turnable: false };
    const { warnings } = fabricPlan({ width: 40, pieces: [print], method: 'plain' });
    expect(warnings.map(({ code, field }) => [code, field])).toEqual([['lies-along', 'pieces[0]']]);
  });

  it('cuts every piece and every joined strip, on the fabric, from edge to edge', () => {
    const some: fc.Arbitrary<readonly PieceInput[]> = fc.array(
      fc.record({
        width: fc.constantFrom('2', '2 1/2', '4 1/2', '6'),
        length: eighths(16, 640),
        count: fc.integer({ min: 1, max: 9 }),
        joinable: fc.boolean(),
      }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(fabricWidth, some, (width, list) => {
        const plan = fabricPlan({ width, pieces: list, method: 'plain' });
        const placed = plan.placements();
        const whole = inEighths({
          x: length(0),
          y: length(0),
          width: plan.width,
          height: plan.length,
        });
        expect(faultOf(whole, placed.map(inEighths))).toBeUndefined();
        const fromStrips = new Set(plan.joined?.runs.flatMap((run) => run.pieces));
        list.forEach((piece, at) => {
          const own = placed.filter((each) => each.kind === 'piece' && each.piece === at);
          expect(own.length).toBe(fromStrips.has(at) ? 0 : piece.count);
        });
        plan.joined?.runs.forEach((run, at) => {
          const own = placed.filter((each) => each.kind === 'strip' && each.run === at);
          expect(own.length).toBe(run.count);
        });
        expect(plan.lowerBound.compareTo(plan.length)).not.toBe(1);
        expect(plan.optimal).toBe(plan.lowerBound.equals(plan.length));
      }),
      { numRuns: 12, seed: 8 },
    );
  });

  it('is bought as a plain plan is, with the widest strip that is cut across to spare', () => {
    const list = [{ width: 5, length: 5, count: 12 }];
    const { plan, ...bought } = fabricYardage({ width: 42, pieces: list, method: 'plain' });
    const { plan: plain, ...same } = yardage({ width: 42, pieces: list, method: 'plain' });
    expect(JSON.stringify(bought)).toBe(JSON.stringify(same));
    expect(plan.length.equals(plain.length)).toBe(true);
    const plainData = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
    expect(plainData(fabricYardage(plan))).toEqual(plainData({ ...bought, plan }));
  });

  it('is planned by the method that is asked for', () => {
    const list = [
      { width: 5, length: 5, count: 6 },
      { width: '2 1/2', length: 6, count: 4 },
    ];
    const bare = (method: 'plain' | 'thrifty') =>
      fabricYardage({ width: 42, pieces: list }, { method }).bare.toString();
    expect([bare('plain'), bare('thrifty')]).toEqual(['7 1/2', '5']);
  });
});
