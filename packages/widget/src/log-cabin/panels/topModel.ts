import {
  BLOCK_SETTINGS,
  type BlockSetting,
  blockTurns,
  type Drawing,
  drawBlockTurns,
  type EighthsError,
  type LogCabin,
  type Size,
} from '@eighths/core';
import type { Measures } from '../../base/measures.js';
import { SettingsReader } from '../../base/settingsReader.js';

export type TopField = 'top-setting' | 'top-across' | 'top-down';
export type TopTexts = Readonly<Record<TopField, string>>;

/** More blocks than these are no longer told apart in a drawing as wide as a page. */
const MOST_BLOCKS = 20;

export const usualTop: TopTexts = { 'top-setting': '', 'top-across': '4', 'top-down': '4' };

const isCurved = ({ logs }: LogCabin): boolean => logs.some(({ kind }) => kind !== 'log');

/** The settings for a block: circles need a curve, and with it are sunshine and shadow. */
export const settingsFor = (plan: LogCabin): readonly BlockSetting[] => {
  const without: BlockSetting = isCurved(plan) ? 'sunshine-and-shadow' : 'circles';
  return BLOCK_SETTINGS.filter((setting) => setting !== without);
};

/** A quilt top, or what is wrong with what was typed. */
export interface TopModel {
  readonly setting: BlockSetting;
  readonly top?: {
    readonly drawing: Drawing;
    readonly blocks: number;
    readonly finished: Size;
  };
  readonly faults: ReadonlyMap<TopField, EighthsError>;
}

function fieldOf({ field }: EighthsError): TopField {
  if (field === 'across') return 'top-across';
  return field === 'down' ? 'top-down' : 'top-setting';
}

export function topModel(texts: TopTexts, plan: LogCabin, measures: Measures): TopModel {
  const reader = new SettingsReader<TopField>(texts, measures);
  const usual: BlockSetting = isCurved(plan) ? 'circles' : 'barn-raising';
  const setting = settingsFor(plan).find((each) => each === texts['top-setting']) ?? usual;
  const across = reader.count('top-across', 1, MOST_BLOCKS);
  const down = reader.count('top-down', 1, MOST_BLOCKS);
  const { faults } = reader;
  if (across === undefined || down === undefined) return { setting, faults };
  const drawing = reader.attempt(
    () => drawBlockTurns(plan, blockTurns(setting, across, down)),
    fieldOf,
  );
  if (drawing === undefined) return { setting, faults };
  const { width, height } = plan.finished;
  const finished = { width: width.times(across), height: height.times(down) };
  return { setting, top: { drawing, blocks: across * down, finished }, faults };
}
