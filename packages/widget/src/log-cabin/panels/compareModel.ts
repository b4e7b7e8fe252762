import { compareLogCabins, type EighthsError, type LogCabinComparison } from '@eighths/core';
import type { Measures } from '../../base/measures.js';
import type { LogCabinField, LogCabinSettings } from '../fields.js';
import { logCabinModel } from '../model.js';

/** What the other block’s own inputs are, by the fields they stand for. */
export const otherFields = [
  'finished',
  'center',
  'rounds',
  'kind',
  'first',
  'layout',
  'log',
  'wide',
  'narrow',
  'strips-log',
  'strips-wide',
  'strips-narrow',
] as const satisfies readonly LogCabinField[];

export type OtherField = `other-${(typeof otherFields)[number]}`;
export type OtherTexts = Readonly<Record<OtherField, string>>;

const fromSettings = (settings: LogCabinSettings): OtherTexts => ({
  'other-finished': settings.finished,
  'other-center': settings.center,
  'other-rounds': settings.rounds,
  'other-kind': settings.kind === 'plain' ? 'plain' : 'curved',
  'other-first': settings.first || 'wide',
  'other-layout': settings.layout || 'spiral',
  'other-log': settings.log,
  'other-wide': settings.wide,
  'other-narrow': settings.narrow,
  'other-strips-log': settings['strips-log'],
  'other-strips-wide': settings['strips-wide'],
  'other-strips-narrow': settings['strips-narrow'],
});

/**
 * The other block as long as nobody has typed it: the same with the other pair first, which changes
 * how much each half shows; a plain block in the other layout.
 */
export function usualOther(settings: LogCabinSettings): OtherTexts {
  const same = fromSettings(settings);
  return same['other-kind'] === 'plain'
    ? { ...same, 'other-layout': same['other-layout'] === 'spiral' ? 'courthouse' : 'spiral' }
    : { ...same, 'other-first': same['other-first'] === 'wide' ? 'narrow' : 'wide' };
}

/** The block above, as the other one. */
export const keptAsOther = fromSettings;

/** The other block’s texts, for the element’s own inputs. */
export const settingsOfOther = (
  texts: OtherTexts,
): Readonly<Record<(typeof otherFields)[number], string>> => ({
  finished: texts['other-finished'],
  center: texts['other-center'],
  rounds: texts['other-rounds'],
  kind: texts['other-kind'],
  first: texts['other-first'],
  layout: texts['other-layout'],
  log: texts['other-log'],
  wide: texts['other-wide'],
  narrow: texts['other-narrow'],
  'strips-log': texts['other-strips-log'],
  'strips-wide': texts['other-strips-wide'],
  'strips-narrow': texts['other-strips-narrow'],
});

/** Two blocks side by side, or what is wrong with the other one. */
export interface CompareModel {
  readonly both?: readonly [LogCabinComparison, LogCabinComparison];
  /** By the other block’s inputs. */
  readonly faults: ReadonlyMap<string, EighthsError>;
}

export function compareModel(
  settings: LogCabinSettings,
  texts: OtherTexts,
  measures: Measures,
): CompareModel {
  const own = logCabinModel(settings, measures);
  const other = logCabinModel({ ...settings, ...settingsOfOther(texts) }, measures);
  const faults = new Map(
    [...other.faults].map(([field, fault]) => [`other-${field}`, fault] as const),
  );
  if (own.plan === undefined || other.plan === undefined) return { faults };
  const [first, second] = compareLogCabins([own.spec, other.spec]);
  return first && second ? { both: [first, second], faults } : { faults };
}
