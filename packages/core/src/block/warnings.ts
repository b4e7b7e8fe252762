import type { Length } from '../length/length.js';
import { longerOf } from '../length/longer.js';
import { type Warning, warningsFrom } from '../plan/notice.js';
import { sidesOf } from '../plan/size.js';
import { cutSize } from './cutSize.js';
import type { LogCabinDesign, LogDesign } from './design.js';
import type { LogCabinRound } from './plan.js';
import { type LogCabinWarningCode, logCabinSentences } from './sentences.js';

type LogCabinWarning = Warning<LogCabinWarningCode>;

const warn = warningsFrom(logCabinSentences);

/** How far a length lies beyond the grid line below it. */
const beyondGrid = (value: Length, grid: Length): Length => value.minus(value.toGrid(grid, 'down'));

/** Logs of one kind and one finished width: what is said of one is said of all. */
interface LogGroup {
  readonly log: LogDesign;
  /** How many of them lie across the block, left and right of the center. */
  readonly across: number;
}

function groupLogs(design: LogCabinDesign): readonly LogGroup[] {
  const groups = new Map<string, LogGroup>();
  for (const log of design.rounds.flat()) {
    const key = `${log.kind} ${log.finished} ${log.strip.exact}`;
    const across = log.side === 'left' || log.side === 'right' ? 1 : 0;
    groups.set(key, { log, across: (groups.get(key)?.across ?? 0) + across });
  }
  return [...groups.values()];
}

/** Groups that differ in what a sentence does not speak of are spoken of once. */
const saidOnce = (warnings: readonly LogCabinWarning[]): LogCabinWarning[] => [
  ...new Map(warnings.map((warning) => [`${warning.field} ${warning.text}`, warning])).values(),
];

function warnOfLogs(design: LogCabinDesign): LogCabinWarning[] {
  const { seam, trimAfter } = design;
  const warnings = groupLogs(design).flatMap(({ log, across }) => {
    const { kind, finished, strip } = log;
    const warnings: LogCabinWarning[] = [];
    if (finished.compareTo(seam.times(2)) < 0)
      warnings.push(warn('narrow-log', kind, { finished }));
    const { exact, cut } = strip;
    if (exact.equals(cut)) return warnings;
    if (trimAfter !== 'never') {
      warnings.push(warn('strip-off-grid', `strips.${kind}`, { exact, cut }));
    } else {
      const adds = cut.minus(exact).times(across);
      warnings.push(warn('log-off-grid', kind, { finished, exact, cut, adds }));
    }
    return warnings;
  });
  return saidOnce(warnings);
}

function warnOfSizes({ center, finished, seam, grid }: LogCabinDesign): LogCabinWarning[] {
  const warnings: LogCabinWarning[] = [];
  for (const side of sidesOf(center)) {
    if (side.compareTo(seam.times(2)) < 0) {
      warnings.push(warn('narrow-center', 'center', { finished: side }));
    }
    const { cut, exact } = cutSize({ side: side.plus(seam.times(2)) }, grid);
    if (exact !== undefined) {
      const adds = cut.side.minus(exact.side);
      warnings.push(warn('center-off-grid', 'center', { exact: exact.side, cut: cut.side, adds }));
    }
  }
  for (const side of sidesOf(finished)) {
    const by = beyondGrid(side, grid);
    if (by.sign() > 0)
      warnings.push(warn('finished-off-grid', 'finished', { finished: side, by, grid }));
  }
  return warnings;
}

function warnOfTrims(design: LogCabinDesign, rounds: readonly LogCabinRound[]): LogCabinWarning[] {
  if (design.trimAfter === 'never') return [];
  const { grid, sides } = design;
  const off = rounds.flatMap(({ number, centerSeamToEdge }) => {
    const by = sides.map((side) => beyondGrid(centerSeamToEdge[side], grid)).reduce(longerOf);
    return by.sign() > 0 ? [{ number, by }] : [];
  });
  if (off.length === 0) return [];
  const by = off.map((each) => each.by).reduce(longerOf);
  const numbers = off.map(({ number }) => number).join(', ');
  return [warn('trim-off-grid', 'grid', { rounds: numbers, by, grid })];
}

/** What a person should know before cutting a design that can be sewn. */
export const logCabinWarnings = (
  design: LogCabinDesign,
  rounds: readonly LogCabinRound[],
): readonly LogCabinWarning[] => [
  ...warnOfSizes(design),
  ...warnOfLogs(design),
  ...warnOfTrims(design, rounds),
];
