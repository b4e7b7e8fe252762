import type { LogCabin, LogCabinRound, LogCabinSpec, PerSide, Side } from '@eighths/core';
import { sixtyFourths } from './support.js';

/**
 * A block sewn on paper, without the library: whole sixty-fourths of an inch, rectangles of cloth and
 * the seams in them. An oracle for `logCabin`.
 */

/** What is sewn. All lengths are whole sixty-fourths; a list has one entry for each round. */
export interface Simulation {
  readonly layout: 'spiral' | 'courthouse' | 'quarter';
  readonly direction: 'clockwise' | 'counterclockwise';
  readonly start: Side | undefined;
  readonly center: { readonly width: number; readonly height: number };
  readonly seam: number;
  readonly grid: number;
  readonly extra: number;
  readonly cornerstones: boolean;
  readonly trim: 'round' | 'log' | 'never';
  /** Finished widths: of the sides in `wideSides` and of the others; a plain block has only `wide`. */
  readonly wide: readonly number[];
  readonly narrow: readonly number[] | undefined;
  readonly wideSides: readonly [Side, Side];
  readonly first: 'wide' | 'narrow';
  /** What strips are cut beyond finished and two allowances. */
  readonly wideExcess: readonly number[];
  readonly narrowExcess: readonly number[];
}

/** The spec that asks the library for the same block. */
export function specOf(simulation: Simulation): LogCabinSpec {
  const { seam, trim, wide, narrow, wideExcess, narrowExcess } = simulation;
  const text = (n: number): string => `${n}/64`;
  const texts = (list: readonly number[]): string[] => list.map(text);
  const cutFrom = (widths: readonly number[], excess: readonly number[]): string[] =>
    texts(widths.map((each, index) => each + 2 * seam + (excess[index] ?? 0)));
  const common = {
    rounds: wide.length,
    direction: simulation.direction,
    center: { width: text(simulation.center.width), height: text(simulation.center.height) },
    seam: text(seam),
    grid: text(simulation.grid),
    extra: text(simulation.extra),
    cornerstones: simulation.cornerstones,
    trim: { after: trim },
    ...(simulation.start === undefined ? {} : { start: simulation.start }),
  };
  if (narrow === undefined) {
    return {
      ...common,
      layout: simulation.layout,
      log: texts(wide),
      ...(trim === 'never' ? {} : { strips: { log: cutFrom(wide, wideExcess) } }),
    };
  }
  const { layout, wideSides, first } = simulation;
  if (layout === 'quarter') throw new Error('A quarter block is plain.');
  const strips = { wide: cutFrom(wide, wideExcess), narrow: cutFrom(narrow, narrowExcess) };
  return {
    ...common,
    layout,
    wide: texts(wide),
    narrow: texts(narrow),
    wideSides,
    first,
    ...(trim === 'never' ? {} : { strips }),
  };
}

/** A round's sides in sewing order, by layout and direction, for each side where it may begin. */
const ORDERS = {
  'spiral clockwise': 'TRBL RBLT BLTR LTRB',
  'spiral counterclockwise': 'TLBR LBRT BRTL RTLB',
  'courthouse clockwise': 'TBRL RLBT BTLR LRTB',
  'courthouse counterclockwise': 'TBLR LRBT BTRL RLTB',
  'quarter clockwise': 'TR RB BL LT',
  'quarter counterclockwise': 'TL LB BR RT',
} as const;

/** Neighbors, in the order in which going round clockwise meets them. */
const PAIRS = ['TR', 'RB', 'BL', 'LT'] as const;

const letterOf = (side: Side): string => side.charAt(0).toUpperCase();

function sideOf(letter: string): Side {
  for (const side of ['top', 'right', 'bottom', 'left'] as const) {
    if (letterOf(side) === letter) return side;
  }
  throw new Error(`No side begins with ${letter}.`);
}

function sidesInOrder(simulation: Simulation): readonly Side[] {
  const { layout, direction, start, narrow, wideSides, first } = simulation;
  const begin = (): string => {
    if (start !== undefined) return letterOf(start);
    if (narrow === undefined) return 'R';
    const wide = PAIRS.findIndex((pair) =>
      wideSides.every((side) => pair.includes(letterOf(side))),
    );
    const pair = PAIRS[(wide + (first === 'wide' ? 0 : 2)) % 4];
    return pair?.charAt(direction === 'clockwise' ? 0 : 1) ?? '';
  };
  const order = ORDERS[`${layout} ${direction}`].split(' ').find((each) => each[0] === begin());
  return [...(order ?? '')].map(sideOf);
}

/** Distances outward from the origin, which lies in the top left corner of the finished center. */
type Edges = Record<Side, number>;

/** The sides that a log on this one runs between. */
const ENDS: PerSide<readonly [Side, Side]> = {
  top: ['left', 'right'],
  bottom: ['left', 'right'],
  left: ['top', 'bottom'],
  right: ['top', 'bottom'],
};

const width = (edges: Edges): number => edges.left + edges.right;
const height = (edges: Edges): number => edges.top + edges.bottom;
const extentAlong = (side: Side, edges: Edges): number =>
  side === 'top' || side === 'bottom' ? width(edges) : height(edges);

/** One log's, one cornerstone's and one round's numbers, as the library's plan names them. */
interface Sewn {
  readonly logs: readonly string[];
  /** Sorted: a log's two cornerstones have no order. */
  readonly cornerstones: readonly string[];
  readonly rounds: readonly string[];
}

const inOrder = (values: PerSide<number>): string =>
  [values.top, values.right, values.bottom, values.left].join(' ');

/** Sews and trims the block. */
export function sewOnPaper(simulation: Simulation): Sewn {
  const { center, seam, grid, extra, trim, narrow, wideSides } = simulation;
  const cut = (exact: number): number => Math.ceil(exact / grid) * grid;
  const sides = sidesInOrder(simulation);
  const finishes = (side: Side, round: number): number => {
    const widths = narrow === undefined || wideSides.includes(side) ? simulation.wide : narrow;
    return widths[round] ?? Number.NaN;
  };
  const stripOn = (side: Side, round: number): number => {
    const isWide = narrow === undefined || wideSides.includes(side);
    const excess = isWide ? simulation.wideExcess : simulation.narrowExcess;
    const needed = finishes(side, round) + 2 * seam;
    return trim === 'never' ? needed : needed + (excess[round] ?? Number.NaN);
  };

  // The center, cut a seam wider all round than the square inside its seams.
  const raw: Edges = {
    top: seam,
    left: seam,
    right: center.width + seam,
    bottom: center.height + seam,
  };
  const logs: string[] = [];
  const cornerstones: string[] = [];
  const rounds: string[] = [];

  for (let round = 0; round < simulation.wide.length; round += 1) {
    const sewnThisRound = new Set<Side>();
    const trimmedAway: Edges = { top: 0, right: 0, bottom: 0, left: 0 };
    const lastSeam: Edges = { ...raw };
    // The seams round the core, as they will be once every side has its log.
    const coreSeams = { ...raw };
    for (const side of ['top', 'right', 'bottom', 'left'] as const) {
      coreSeams[side] -= seam;
      lastSeam[side] -= seam;
    }
    let untrimmed = '';
    const trimSide = (side: Side): void => {
      untrimmed = `${width(raw)} ${height(raw)}`;
      const line = lastSeam[side] + finishes(side, round) + seam;
      trimmedAway[side] = raw[side] - line;
      raw[side] = line;
    };

    for (const side of sides) {
      const strip = stripOn(side, round);
      // Where nothing is trimmed the plan reckons with exact strips and warns of what rounding adds.
      const used = trim === 'never' ? strip : cut(strip);
      // A log reaches from edge to edge; cornerstones take the place of its ends, seam on seam.
      const stones = simulation.cornerstones
        ? ENDS[side].filter((end) => sewnThisRound.has(end))
        : [];
      let length = extentAlong(side, raw);
      let finishedLength = 0;
      for (const end of ENDS[side]) {
        const outer = sewnThisRound.has(end) && !stones.includes(end);
        finishedLength += coreSeams[end] + (outer ? finishes(end, round) : 0);
      }
      for (const end of stones) {
        const stone = raw[end] - coreSeams[end] + seam;
        length -= stone - 2 * seam;
        const [across, down] = end === 'left' || end === 'right' ? [stone, used] : [used, stone];
        cornerstones.push(`${round + 1} ${side} ${end} cut ${cut(across)} ${cut(down)}`);
      }
      logs.push(
        `${round + 1} ${side} cut ${cut(strip)} ${cut(length + extra)} from ${strip} ${length + extra} finishes ${finishes(side, round)} ${finishedLength}`,
      );
      // Right sides together, raw edges even: the seam takes an allowance of the block and of the strip.
      lastSeam[side] = raw[side] - seam;
      raw[side] = lastSeam[side] + used - seam;
      sewnThisRound.add(side);
      if (trim === 'log') trimSide(side);
    }
    if (trim !== 'log') {
      const before = `${width(raw)} ${height(raw)}`;
      for (const side of sides) trimSide(side);
      untrimmed = before;
    }
    const fromCenter = {
      ...raw,
      right: raw.right - center.width,
      bottom: raw.bottom - center.height,
    };
    const fromLastSeam = {
      top: raw.top - lastSeam.top,
      right: raw.right - lastSeam.right,
      bottom: raw.bottom - lastSeam.bottom,
      left: raw.left - lastSeam.left,
    };
    rounds.push(
      `untrimmed ${untrimmed} trim to ${width(raw)} ${height(raw)} center ${inOrder(fromCenter)} last ${inOrder(fromLastSeam)} away ${inOrder(trimmedAway)}`,
    );
  }
  return { logs, cornerstones: cornerstones.sort(), rounds };
}

const perSideOf = (values: LogCabinRound['trimAway']): string =>
  inOrder({
    top: sixtyFourths(values.top),
    right: sixtyFourths(values.right),
    bottom: sixtyFourths(values.bottom),
    left: sixtyFourths(values.left),
  });

/** The same numbers from the library's plan. */
export function numbersOf(plan: LogCabin): Sewn {
  const n = sixtyFourths;
  return {
    logs: plan.logs.map(({ round, side, cut, exact = cut, finished }) =>
      [
        `${round} ${side} cut ${n(cut.width)} ${n(cut.length)}`,
        `from ${n(exact.width)} ${n(exact.length)}`,
        `finishes ${n(finished.width)} ${n(finished.length)}`,
      ].join(' '),
    ),
    cornerstones: plan.cornerstones
      .map(({ round, log, side, cut }) => {
        const on = plan.logs.find(({ order }) => order === log)?.side;
        return `${round} ${on} ${side} cut ${n(cut.width)} ${n(cut.height)}`;
      })
      .sort(),
    rounds: plan.rounds.map((round) =>
      [
        `untrimmed ${n(round.untrimmed.width)} ${n(round.untrimmed.height)}`,
        `trim to ${n(round.trimTo.width)} ${n(round.trimTo.height)}`,
        `center ${perSideOf(round.centerSeamToEdge)}`,
        `last ${perSideOf(round.lastSeamToEdge)}`,
        `away ${perSideOf(round.trimAway)}`,
      ].join(' '),
    ),
  };
}
