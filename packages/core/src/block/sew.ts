import { type Length, length } from '../length/length.js';
import { perSide, runsAcross, type Side, turnSide } from '../plan/side.js';
import type { Size } from '../plan/size.js';
import { cutSize } from './cutSize.js';
import type { LogCabinDesign, LogDesign } from './design.js';
import type { Cornerstone, Log, LogCabinRound, LogSize } from './plan.js';

/** What comes of sewing and trimming a design from the center out. */
export interface SewnBlock {
  readonly logs: readonly Log[];
  readonly cornerstones: readonly Cornerstone[];
  readonly rounds: readonly LogCabinRound[];
}

/** A distance for each side, measured outward from the seam line round the center. */
type Reach = Record<Side, Length>;

/** How far the block reaches while it is sewn. */
interface Reaches {
  /** To the raw edge. */
  readonly raw: Reach;
  /** To the next seam line: the finished widths of the logs so far. */
  readonly finished: Reach;
}

const zero = length(0);

const copy = ({ raw, finished }: Reaches): Reaches => ({
  raw: { ...raw },
  finished: { ...finished },
});

/** The two sides that a log on `side` runs between. */
const endsOf = (side: Side): readonly [Side, Side] => [turnSide(side, -1), turnSide(side, 1)];

/** The extent of the block along `side`. */
function along(side: Side, reach: Reach, center: Size): Length {
  const [one, other] = endsOf(side);
  const middle = runsAcross(side) ? center.width : center.height;
  return reach[one].plus(middle).plus(reach[other]);
}

const sizeOf = (reach: Reach, center: Size): Size => ({
  width: along('top', reach, center),
  height: along('left', reach, center),
});

/** A log's or cornerstone's extent along `side` and across it, as width and height on the block. */
const facing = (side: Side, { width, length: extent }: LogSize): Size =>
  runsAcross(side) ? { width: extent, height: width } : { width, height: extent };

/**
 * The width a strip counts with. Where the block is trimmed it is what was cut: rounding up is trimmed
 * away with the rest. Where it is not, rounding would add to the block, and a warning says so instead.
 */
const stripWidth = ({ strip }: LogDesign, { trimAfter }: LogCabinDesign): Length =>
  trimAfter === 'never' ? strip.exact : strip.cut;

/** A log is cut as long as the raw edge it is sewn to at that moment; `around` is the block then. */
function cutLog(
  design: LogCabinDesign,
  log: LogDesign,
  place: { readonly order: number; readonly round: number },
  around: Reaches,
): Log {
  const { side, kind, fabric, finished, strip } = log;
  const exactLength = along(side, around.raw, design.center).plus(design.extra);
  return {
    order: place.order,
    round: place.round,
    side,
    kind,
    fabric,
    finished: { width: finished, length: along(side, around.finished, design.center) },
    ...cutSize({ width: strip.exact, length: exactLength }, design.grid),
  };
}

/** The squares at those ends of a log where this round has already put a log. */
function cutCornerstones(
  design: LogCabinDesign,
  log: LogDesign,
  place: { readonly order: number; readonly round: number },
  before: Reaches,
  now: Reaches,
): Cornerstone[] {
  return endsOf(log.side).flatMap((end) => {
    const finished = now.finished[end].minus(before.finished[end]);
    if (finished.sign() === 0) return [];
    // The neighbor as it lies there now, trimmed or not, and the allowance of its seam on either side.
    const extent = now.raw[end].minus(before.raw[end]).plus(design.seam.times(2));
    return {
      round: place.round,
      log: place.order,
      side: end,
      fabric: design.fabrics.cornerstone,
      finished: facing(log.side, { width: log.finished, length: finished }),
      ...cutSize(facing(log.side, { width: stripWidth(log, design), length: extent }), design.grid),
    };
  });
}

/**
 * Sews and trims a design, round by round.
 *
 * A log sewn from a strip cut `W` takes the raw edge `W − 2·seam` outward: one allowance of the strip
 * and one of the block go into the seam. A trim cuts each side to its finished width and one allowance.
 */
export function sew(design: LogCabinDesign): SewnBlock {
  const { seam, center, sides } = design;
  const allowances = seam.times(2);
  const now: Reaches = { raw: perSide(() => seam), finished: perSide(() => zero) };
  const logs: Log[] = [];
  const cornerstones: Cornerstone[] = [];

  const rounds = design.rounds.map((logDesigns, index): LogCabinRound => {
    const before = copy(now);
    const sewn: Log[] = [];
    const trimAway: Reach = perSide(() => zero);
    const lastSeamToEdge: Reach = perSide(() => seam);
    let untrimmed = sizeOf(now.raw, center);

    const trim = (trimmed: readonly Side[]): void => {
      untrimmed = sizeOf(now.raw, center);
      for (const side of trimmed) {
        const target = now.finished[side].plus(seam);
        trimAway[side] = now.raw[side].minus(target);
        now.raw[side] = target;
      }
    };

    for (const log of logDesigns) {
      const { side } = log;
      const place = { order: logs.length + sewn.length + 1, round: index + 1 };
      sewn.push(cutLog(design, log, place, design.cornerstones ? before : now));
      if (design.cornerstones) {
        cornerstones.push(...cutCornerstones(design, log, place, before, now));
      }
      now.raw[side] = now.raw[side].plus(stripWidth(log, design)).minus(allowances);
      now.finished[side] = now.finished[side].plus(log.finished);
      lastSeamToEdge[side] = log.finished.plus(seam);
      if (design.trimAfter === 'log') trim([side]);
    }
    if (design.trimAfter !== 'log') trim(sides);
    logs.push(...sewn);
    return {
      number: index + 1,
      logs: sewn,
      untrimmed,
      trimTo: sizeOf(now.raw, center),
      centerSeamToEdge: { ...now.raw },
      lastSeamToEdge,
      trimAway,
    };
  });
  return { logs, cornerstones, rounds };
}
