/** The inputs of a log cabin, by the names of their attributes. */
export const logCabinFields = [
  'finished',
  'center',
  'rounds',
  'blocks',
  'kind',
  'log',
  'wide',
  'narrow',
  'strips-log',
  'strips-wide',
  'strips-narrow',
  'layout',
  'first',
  'direction',
  'start',
  'wide-sides',
  'trim-after',
  'trim-oversize',
  'seam',
  'extra',
  'grid',
  'cornerstones',
  'fabrics-center',
  'fabrics-cornerstone',
  'fabrics-log',
  'fabrics-wide',
  'fabrics-narrow',
  'fabrics-top',
  'fabrics-right',
  'fabrics-bottom',
  'fabrics-left',
] as const;

export type LogCabinField = (typeof logCabinFields)[number];

/** What stands in each input, as text; empty where nothing is given. */
export type LogCabinSettings = Readonly<Record<LogCabinField, string>>;
