import type { Units } from '../base/measures.js';
import { type LogCabinField, type LogCabinSettings, logCabinFields } from './fields.js';

/** What the page or the reader has set; what nobody has is not there. */
export type GivenSettings = Readonly<Partial<Record<LogCabinField, string>>>;

/** A block that can be sewn as it is, for a page that names no widths. */
const usual: Readonly<Record<Units, GivenSettings>> = {
  inches: { finished: '9', log: '1', wide: '1 1/4', narrow: '1/2' },
  // The trade's metric seam allowance; with it, ruler lines lie on half millimeters.
  metric: { finished: '24', log: '2.5', wide: '3', narrow: '1.5', seam: '0.75', grid: '0.5 mm' },
};

/** The strips of that block, so that it is sewn a little large and trimmed. */
const usualStrips: Readonly<Record<Units, GivenSettings>> = {
  inches: { 'strips-wide': '2', 'strips-narrow': '1 1/2' },
  metric: { 'strips-wide': '5', 'strips-narrow': '3.5' },
};

const nothing = Object.fromEntries(logCabinFields.map((field) => [field, ''])) as LogCabinSettings;

/** Every setting, with what is not given filled in. */
export function withDefaults(given: GivenSettings, units: Units): LogCabinSettings {
  const named = [given.log, given.wide, given.narrow].some((text) => text !== undefined);
  const kind = given.log === undefined ? 'curved' : 'plain';
  const finished = given.center === undefined ? {} : { finished: '' };
  const filled: GivenSettings = {
    rounds: '4',
    blocks: '1',
    kind,
    ...usual[units],
    ...(named ? {} : usualStrips[units]),
    ...finished,
    ...given,
  };
  return { ...nothing, ...filled };
}
