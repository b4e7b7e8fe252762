import type { LengthInput, LogCabinSpec } from '@eighths/core';
import type { Measures } from '../base/measures.js';
import type { GivenSettings } from './defaults.js';

type PerRound = LengthInput | readonly LengthInput[] | undefined;

const isList = (value: PerRound): value is readonly LengthInput[] => Array.isArray(value);

/**
 * What stands in the element’s inputs for a block that was found: its widths and strips, and the
 * finished size, from which the center is worked out. How it is sewn stays as it is.
 */
export function textsOfSpec(
  spec: LogCabinSpec,
  finished: LengthInput,
  { typed }: Measures,
): GivenSettings {
  const text = (value: PerRound): string => {
    if (value === undefined) return '';
    return isList(value) ? value.map(typed).join('; ') : typed(value);
  };
  const common = {
    finished: typed(finished),
    center: '',
    rounds: String(spec.rounds),
    'trim-after': '',
    'trim-oversize': '',
  };
  if (spec.log !== undefined) {
    return {
      ...common,
      kind: 'plain',
      log: text(spec.log),
      'strips-log': text(spec.strips?.log),
    };
  }
  return {
    ...common,
    kind: 'curved',
    wide: text(spec.wide),
    narrow: text(spec.narrow),
    'strips-wide': text(spec.strips?.wide),
    'strips-narrow': text(spec.strips?.narrow),
  };
}
