import type { Length, LengthInput } from '../length/length.js';
import { lengthField } from '../plan/field.js';
import { type Warning, warningsFrom } from '../plan/notice.js';
import type { LogCabin } from './plan.js';
import { type SeamNoteCode, seamSentences } from './seamSentences.js';
import type { LogKind } from './spec.js';

/** What a seam other than the plan's does to a block; where it is scant, figures are less than 0. */
export interface SeamDrift {
  /** How much deeper the seam is than the plan's. */
  readonly deeperBy: Length;
  /** By how much a block comes out short across, and down. */
  readonly short: {
    /** Where it is never trimmed. */
    readonly untrimmed: Length;
    /** Where each trim is measured from the last seam. */
    readonly fromLastSeam: Length;
    /** Where each is measured from the center's seam, and then from the edges trimmed so: 0. */
    readonly fromCenter: Length;
  };
  /** What the strips have to be wider than exact, so that trimming from the center covers it. */
  readonly oversize: Length;
  /** Whether the plan's strips are wide enough for that. */
  readonly covered: boolean;
  readonly warnings: readonly Warning<SeamNoteCode>[];
}

const warning = warningsFrom(seamSentences);

/**
 * What comes of sewing a block with another seam than its plan's, deeper by e. With n rounds of logs on
 * two opposite sides, a block that is not trimmed comes out 4ne short (each of 2n logs loses two
 * allowances' worth), one trimmed from the last seam each time 2ne (each log loses one), and one
 * trimmed from the center's seam does not drift, as long as every strip is 2e wider than exact.
 * Pressing takes a little more. With logs on one of two opposite sides it is half of that.
 *
 * @throws EighthsError `not-positive` or `length-syntax`
 * @example
 * const block = logCabin({ rounds: 4, center: 2, log: 1, strips: { log: '1 3/4' } });
 * const { short, oversize } = seamDrift(block, '9/32');
 * [short.untrimmed, short.fromLastSeam, oversize]; // ["1/2","1/4","1/16"]
 */
export function seamDrift(plan: LogCabin, realSeam: LengthInput): SeamDrift {
  const seam = lengthField(realSeam, 'seam', 'zero or more');
  const deeperBy = seam.minus(plan.seam);
  const logsAcross = plan.rounds.length * (plan.sides.length / 2);
  const needed = deeperBy.times(2);
  const warnings: Warning<SeamNoteCode>[] = [];
  const kinds = new Map<LogKind, LogCabin['logs'][number]>();
  for (const log of plan.logs) {
    const widest = kinds.get(log.kind);
    // The widest log of a kind leaves the least to trim, but strips may differ too.
    const own = log.cut.width.minus(log.finished.width);
    const least = widest?.cut.width.minus(widest.finished.width);
    if (least === undefined || own.compareTo(least) < 0) kinds.set(log.kind, log);
  }
  for (const [kind, { cut, finished }] of kinds) {
    const oversize = cut.width.minus(finished.width).minus(plan.seam.times(2));
    if (oversize.compareTo(needed) >= 0) continue;
    const better = finished.width.plus(plan.seam.times(2)).plus(needed).toGrid(plan.grid, 'up');
    const values = { kind, cut: cut.width, oversize, needed, better };
    warnings.push(warning('oversize-short', `strips.${kind}`, values));
  }
  return {
    deeperBy,
    short: {
      untrimmed: needed.times(logsAcross),
      fromLastSeam: deeperBy.times(logsAcross),
      fromCenter: deeperBy.times(0),
    },
    oversize: needed.sign() < 0 ? needed.times(0) : needed,
    covered: warnings.length === 0,
    warnings,
  };
}
