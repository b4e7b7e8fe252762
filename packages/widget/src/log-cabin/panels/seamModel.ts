import {
  type BlockRescue,
  type EighthsError,
  type Length,
  type LogCabin,
  length,
  rescueBlocks,
  type SeamDrift,
  type SeamTest,
  seamDrift,
  seamTest,
} from '@eighths/core';
import type { Measures } from '../../base/measures.js';
import { given, SettingsReader } from '../../base/settingsReader.js';

const seamFields = ['seam-strip', 'seam-strips', 'seam-measured'] as const;
const rescueFields = [
  'rescue-measured',
  'rescue-finished',
  'rescue-across',
  'rescue-down',
] as const;

export type SeamField = (typeof seamFields)[number] | (typeof rescueFields)[number];
export type SeamTexts = Readonly<Record<SeamField, string>>;

/** The test with the seam of the block would measure so; a strip is cut 1 1/2, or 4 centimeters. */
export const usualSeam = ({ units }: Measures, finished: string): SeamTexts => ({
  'seam-strip': units === 'metric' ? '4' : '1 1/2',
  'seam-strips': '3',
  'seam-measured': '',
  'rescue-measured': '',
  'rescue-finished': finished,
  'rescue-across': '4',
  'rescue-down': '4',
});

/** What a row of drift says: how the block is trimmed, and by how much it comes out short. */
export interface DriftRow {
  readonly how: 'driftUntrimmed' | 'driftLast' | 'driftCenter';
  /** Without its sign. */
  readonly by: Length;
  readonly large: boolean;
}

/** What the seam is and does, and what to do with blocks that came out unlike. */
export interface SeamModel {
  /** What the strips would measure with the block’s own seam. */
  readonly expected?: Length;
  readonly test?: SeamTest;
  readonly drift?: SeamDrift;
  readonly rows: readonly DriftRow[];
  readonly rescue?: BlockRescue;
  readonly faults: ReadonlyMap<SeamField, EighthsError>;
}

function driftRows({ short }: SeamDrift): readonly DriftRow[] {
  const row = (how: DriftRow['how'], value: Length): DriftRow => ({
    how,
    by: value.sign() < 0 ? value.negated() : value,
    large: value.sign() < 0,
  });
  return [
    row('driftUntrimmed', short.untrimmed),
    row('driftLast', short.fromLastSeam),
    row('driftCenter', short.fromCenter),
  ];
}

function readRescue(reader: SettingsReader<SeamField>, plan: LogCabin): BlockRescue | undefined {
  const measured = reader.lengths('rescue-measured');
  const finished = reader.length('rescue-finished');
  const across = reader.count('rescue-across', 1, 1000);
  const down = reader.count('rescue-down', 1, 1000);
  if (measured === undefined || finished === undefined) return undefined;
  if (across === undefined || down === undefined) return undefined;
  const sizes = Array.isArray(measured) ? measured : [measured];
  return reader.attempt(
    () => rescueBlocks({ measured: sizes, finished, across, down, seam: plan.seam }),
    ({ field }) => rescueFields.find((known) => known === `rescue-${field}`) ?? 'rescue-measured',
  );
}

export function seamModel(texts: SeamTexts, plan: LogCabin, measures: Measures): SeamModel {
  const reader = new SettingsReader<SeamField>(texts, measures);
  const strip = reader.length('seam-strip');
  const strips = reader.count('seam-strips', 2, 12);
  const measured = reader.length('seam-measured');
  const about = { wanted: plan.seam, ...given({ strip, strips }) };
  const fieldOf = ({ field }: EighthsError): SeamField =>
    seamFields.find((known) => known === `seam-${field}`) ?? 'seam-measured';
  const whole = strip && strips && reader.faults.size === 0 ? strip.times(strips) : undefined;
  const trial = whole && reader.attempt(() => seamTest({ ...about, measured: whole }), fieldOf);
  const test = measured && reader.attempt(() => seamTest({ ...about, measured }), fieldOf);
  const off = test !== undefined && !test.deeperBy.equals(length(0));
  const drift = off
    ? reader.attempt(
        () => seamDrift(plan, test.seam),
        () => 'seam-measured',
      )
    : undefined;
  const rescue = readRescue(reader, plan);
  return {
    ...given({ expected: trial?.expected, test, drift, rescue }),
    rows: drift === undefined ? [] : driftRows(drift),
    faults: reader.faults,
  };
}
