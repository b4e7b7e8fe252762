import {
  type EighthsError,
  findLogCabins,
  type Length,
  type LogCabin,
  type LogCabinFindings,
  length,
  type ReachableSize,
  reachableSizes,
} from '@eighths/core';
import type { Measures, Units } from '../../base/measures.js';
import { attributeName } from '../../base/names.js';
import { anyGiven, given, SettingsReader } from '../../base/settingsReader.js';
import type { LogCabinSettings } from '../fields.js';
import type { Common } from './common.js';
import { readLimits, readRatio } from './limits.js';

const finderFields = [
  'find-finished',
  'find-rounds',
  'find-kind',
  'find-grid',
  'find-wish-ratio',
  'find-wish-center',
  'find-center',
  'find-log',
  'find-wide',
  'find-narrow',
  'find-strips-log',
  'find-strips-wide',
  'find-strips-narrow',
  'find-least-trim',
  'find-most',
] as const;

export type FinderField = (typeof finderFields)[number];

export type FinderTexts = Readonly<Record<FinderField, string>>;

/** The grids to choose from, finest last; nobody cuts on a finer one. */
export const GRIDS: Readonly<Record<Units, readonly string[]>> = {
  inches: ['1/2', '1/4', '1/8', '1/16'],
  metric: ['1 cm', '5 mm', '2 mm', '1 mm'],
};
export const USUAL_GRID: Readonly<Record<Units, string>> = { inches: '1/8', metric: '5 mm' };

/** How many blocks are shown, and how many on demand. */
export const SOME = '10';
export const MANY = '100';

/** What the element’s own inputs say, as far as the page fixes it. */
type Fixed = (field: keyof LogCabinSettings) => string;

/** What the finder starts with: the size and the rounds of the block above, and whatever is fixed. */
export function usualFinder(
  settings: LogCabinSettings,
  { finished, leastTrim: least }: { readonly finished: string; readonly leastTrim: string },
  units: Units,
  fixed: Fixed,
): FinderTexts {
  return {
    'find-finished': finished,
    'find-rounds': settings.rounds,
    'find-kind': settings.kind === 'plain' ? 'plain' : 'curved',
    'find-grid': USUAL_GRID[units],
    'find-wish-ratio': '',
    'find-wish-center': '',
    'find-center': fixed('center'),
    'find-log': fixed('log'),
    'find-wide': fixed('wide'),
    'find-narrow': fixed('narrow'),
    'find-strips-log': fixed('strips-log'),
    'find-strips-wide': fixed('strips-wide'),
    'find-strips-narrow': fixed('strips-narrow'),
    'find-least-trim': least,
    'find-most': SOME,
  };
}

/** The least that trimming takes off a side of a block; undefined where it is not trimmed. */
export function leastTrim({ trimAfter, rounds, sides }: LogCabin): Length | undefined {
  if (trimAfter === 'never') return undefined;
  const all = rounds.flatMap(({ trimAway }) => sides.map((side) => trimAway[side]));
  const [first, ...rest] = all;
  return rest.reduce((least, each) => (least && each.compareTo(least) < 0 ? each : least), first);
}

/** What the finder found, or what is wrong with what it was asked. */
export interface FinderModel {
  readonly findings?: LogCabinFindings;
  /** Where no finished size is asked for: those that can be reached. */
  readonly sizes?: readonly ReachableSize[];
  readonly faults: ReadonlyMap<FinderField, EighthsError>;
}

/** The input that an error of the core is about: `strips.wide` is typed in `find-strips-wide`. */
function fieldOf({ field }: EighthsError): FinderField {
  const name = `find-${attributeName(field)}`;
  const whole = name.replace(/-[^-]*$/, '');
  const find = (wanted: string) => finderFields.find((known) => known === wanted);
  return find(name) ?? find(whole) ?? 'find-finished';
}

/** Sizes are listed by the half inch, or by the centimeter. */
const SIZE_STEP: Readonly<Record<Units, string>> = { inches: '1/2', metric: '1 cm' };
const MOST_SIZES = 40;

export function finderModel(texts: FinderTexts, measures: Measures, common: Common): FinderModel {
  const reader = new SettingsReader<FinderField>(texts, measures);
  const limits = (field: FinderField) =>
    reader.read(field, (text) => readLimits(text, measures.read));
  const kind = reader.choice('find-kind', ['plain', 'curved', 'any']) ?? 'any';
  const plain = kind !== 'curved';
  const curved = kind !== 'plain';
  const only = (is: boolean, field: FinderField) => (is ? limits(field) : undefined);
  const strip = (is: boolean, field: FinderField) => (is ? reader.length(field) : undefined);
  const wish = anyGiven({
    ratio: curved ? reader.read('find-wish-ratio', readRatio) : undefined,
    center: reader.length('find-wish-center'),
  });
  const strips = anyGiven({
    log: strip(plain, 'find-strips-log'),
    wide: strip(curved, 'find-strips-wide'),
    narrow: strip(curved, 'find-strips-narrow'),
  });
  const asked = given({
    ...common,
    // A quarter log cabin is plain.
    layout: kind === 'curved' && common.layout === 'quarter' ? undefined : common.layout,
    kind,
    grid: length(texts['find-grid']),
    center: limits('find-center'),
    log: only(plain, 'find-log'),
    wide: only(curved, 'find-wide'),
    narrow: only(curved, 'find-narrow'),
    wish,
    strips,
    leastTrim: reader.length('find-least-trim'),
  });
  const rounds = reader.count('find-rounds', 1, 50) ?? 1;
  const finished = limits('find-finished');
  const most = Number(texts['find-most']);
  const { faults } = reader;
  if (faults.size > 0) return { faults };
  const request = { ...asked, rounds };
  if (finished === undefined) {
    const sizes = reader.attempt(
      () => reachableSizes({ ...request, step: SIZE_STEP[measures.units] }).slice(0, MOST_SIZES),
      fieldOf,
    );
    return { ...(sizes && { sizes }), faults };
  }
  const findings = reader.attempt(() => findLogCabins({ ...request, finished, most }), fieldOf);
  return { ...(findings && { findings }), faults };
}
