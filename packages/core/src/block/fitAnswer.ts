import { type Length, length } from '../length/length.js';
import { absolute } from '../length/longer.js';
import { isTrimmed, stripBeyondLog } from './fitFabric.js';
import type { Ranked } from './fitOrder.js';
import type { FitProblem } from './fitProblem.js';
import { stepsUp } from './fitUnits.js';
import type { CurvedLogCabinSpec, LogKind, PlainLogCabinSpec } from './spec.js';

/** A strip for the logs of one kind. */
export interface FitStrip {
  /** The least that has to be cut: the log, two seam allowances and, on the grid, the least trim. */
  readonly needed: Length;
  /** The width that is cut: the strip on hand, else what is needed. */
  readonly cut: Length;
  /** What trimming takes off each log. */
  readonly trimsOff: Length;
}

/** What decided a fit's place; the findings' `order` says in which order. */
export interface FitRanking {
  /** The parts that finish narrower than two seam allowances. */
  readonly thinParts: readonly (LogKind | 'center')[];
  /** How far wide : narrow is from the one wished for, as a number. */
  readonly ratioOff?: Length;
  /** How far the center is from the one wished for; where nothing is, from what a round adds. */
  readonly centerOff?: Length;
  /** The fabric as it is cut, in square inches. */
  readonly fabric: Length;
}

interface CommonFit {
  /** Its place among all, from 1. */
  readonly place: number;
  /** How many there are, given or left out. */
  readonly of: number;
  readonly finished: Length;
  readonly center: Length;
  readonly ranking: FitRanking;
}

/** A plain block that comes out. */
export interface PlainLogCabinFit extends CommonFit {
  readonly kind: 'plain';
  readonly log: Length;
  readonly strips: { readonly log: FitStrip };
  /** Ready for `logCabin`. */
  readonly spec: PlainLogCabinSpec;
}

/** A curved block that comes out. */
export interface CurvedLogCabinFit extends CommonFit {
  readonly kind: 'curved';
  readonly wide: Length;
  readonly narrow: Length;
  /** wide : narrow, as a number. */
  readonly ratio: Length;
  readonly strips: { readonly wide: FitStrip; readonly narrow: FitStrip };
  /** Ready for `logCabin`. */
  readonly spec: CurvedLogCabinSpec;
}

/** A block that comes out exactly. */
export type LogCabinFit = PlainLogCabinFit | CurvedLogCabinFit;

const difference = (one: Length, other: Length): Length => absolute(one.minus(other));

/** Remembers what was made of each key: many fits share a center, a log and its strip. */
function remembering<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const value = make(key);
    known.set(key, value);
    return value;
  };
}

/** Candidates in inches, with their strips and their specs. */
export function answerer(
  problem: FitProblem,
  total: number,
): (ranked: Ranked, place: number) => LogCabinFit {
  const { rounds, layout, first, grid, seam, wish } = problem;
  const allowances = seam.times(2);
  const thinBelow = stepsUp(allowances, grid);
  const beyond = stripBeyondLog(problem);
  const trimmed = isTrimmed(problem);
  const square = problem.unit.times(problem.unit);
  const nothingWished = wish.ratio === undefined && wish.center === undefined;
  const wishedRatio = wish.ratio && length({ s: 1n, ...wish.ratio });
  const wishedCenter = wish.center && grid.times({ s: 1n, ...wish.center });

  const inches = remembering((steps: number) => grid.times(steps));
  const stripFor = (kind: LogKind): ((steps: number) => FitStrip) =>
    remembering((steps) => {
      const log = inches(steps);
      const needed = log.plus(beyond);
      const cut = problem.strips[kind] ?? needed;
      return { needed, cut, trimsOff: cut.minus(log).minus(allowances) };
    });
  const strips = { log: stripFor('log'), wide: stripFor('wide'), narrow: stripFor('narrow') };

  function rankingOf(ranked: Ranked, ratio: Length | undefined): FitRanking {
    const { kind, center, wide, narrow } = ranked;
    const parts: readonly (readonly [LogKind | 'center', number])[] =
      kind === 'plain'
        ? [
            ['center', center],
            ['log', wide],
          ]
        : [
            ['center', center],
            ['wide', wide],
            ['narrow', narrow],
          ];
    const centerOff = wishedCenter
      ? difference(inches(center), wishedCenter)
      : nothingWished
        ? inches(ranked.centerOff)
        : undefined;
    return {
      thinParts: parts.flatMap(([part, steps]) => (steps < thinBelow ? [part] : [])),
      ...(wishedRatio && { ratioOff: difference(ratio ?? length(1), wishedRatio) }),
      ...(centerOff && { centerOff }),
      fabric: square.times(ranked.fabric),
    };
  }

  return (ranked, place) => {
    const [finished, center] = [inches(ranked.finished), inches(ranked.center)];
    const [wide, narrow] = [inches(ranked.wide), inches(ranked.narrow)];
    const common = { place, of: total, finished, center };
    const base = { rounds, center, seam, grid };
    if (ranked.kind === 'plain') {
      const strip = strips.log(ranked.wide);
      return {
        kind: 'plain',
        ...common,
        log: wide,
        strips: { log: strip },
        ranking: rankingOf(ranked, undefined),
        spec: { ...base, layout, log: wide, ...(trimmed && { strips: { log: strip.cut } }) },
      };
    }
    const ratio = length({ s: 1n, n: BigInt(ranked.wide), d: BigInt(ranked.narrow) });
    const own = { wide: strips.wide(ranked.wide), narrow: strips.narrow(ranked.narrow) };
    return {
      kind: 'curved',
      ...common,
      wide,
      narrow,
      ratio,
      strips: own,
      ranking: rankingOf(ranked, ratio),
      spec: {
        ...base,
        layout: layout === 'courthouse' ? 'courthouse' : 'spiral',
        wide,
        narrow,
        first,
        ...(trimmed && { strips: { wide: own.wide.cut, narrow: own.narrow.cut } }),
      },
    };
  };
}
