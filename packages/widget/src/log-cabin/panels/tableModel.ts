import {
  type CuttingMat,
  type EighthsError,
  type LayeredCuts,
  type LogCabin,
  layeredCuts,
  logCabinSteps,
  type SewingMethod,
  type TableStep,
  type TrimTools,
  trimTools,
} from '@eighths/core';
import type { Measures } from '../../base/measures.js';
import { given, SettingsReader } from '../../base/settingsReader.js';

export type TableField =
  | 'table-method'
  | 'table-mat'
  | 'table-ruler'
  | 'table-mat-side'
  | 'table-layers';
export type TableTexts = Readonly<Record<TableField, string>>;

export const METHODS = [
  'cut-first',
  'to-strip',
  'strip-set',
] as const satisfies readonly SewingMethod[];
export const MATS = ['fixed', 'turning'] as const satisfies readonly CuttingMat[];

export const usualTable: TableTexts = {
  'table-method': 'cut-first',
  'table-mat': 'fixed',
  'table-ruler': '',
  'table-mat-side': '',
  'table-layers': '1',
};

/** What is done in one round; 0 is the center. */
export interface RoundSteps {
  readonly round: number;
  readonly steps: readonly TableStep[];
}

/** The work in words, what it needs, and how often fabric is cut in layers. */
export interface TableModel {
  readonly rounds: readonly RoundSteps[];
  readonly tools?: TrimTools;
  readonly layers: number;
  readonly cuts: readonly LayeredCuts[];
  readonly faults: ReadonlyMap<TableField, EighthsError>;
}

function byRound(steps: readonly TableStep[]): readonly RoundSteps[] {
  const rounds = new Map<number, TableStep[]>();
  for (const step of steps) rounds.set(step.round, [...(rounds.get(step.round) ?? []), step]);
  return [...rounds].map(([round, own]) => ({ round, steps: own }));
}

export function tableModel(
  texts: TableTexts,
  plan: LogCabin,
  { hand, blocks }: { readonly hand: 'left' | 'right'; readonly blocks: number },
  measures: Measures,
): TableModel {
  const reader = new SettingsReader<TableField>(texts, measures);
  const method = reader.choice('table-method', METHODS) ?? 'cut-first';
  const mat = reader.choice('table-mat', MATS) ?? 'fixed';
  const onHand = given({
    ruler: reader.length('table-ruler'),
    mat: reader.length('table-mat-side'),
  });
  const layers = reader.count('table-layers', 1, 12) ?? 1;
  const tools = reader.attempt(
    () => trimTools(plan, onHand),
    ({ field }) => (field === 'mat' ? 'table-mat-side' : 'table-ruler'),
  );
  return {
    rounds: byRound(logCabinSteps(plan, { method, mat, hand })),
    ...(tools && { tools }),
    layers,
    cuts: layers === 1 ? [] : layeredCuts(plan, blocks, layers),
    faults: reader.faults,
  };
}
