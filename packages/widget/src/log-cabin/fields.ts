import { SIDES } from '@eighths/core';

/** What is typed in an input: one of these words, a whole number up to this one, or a kind of text. */
export type InputKind =
  | readonly string[]
  | number
  | 'length'
  | 'lengths'
  | 'size'
  | 'sides'
  | 'text'
  | 'names'
  | 'flag';

/** The inputs of a log cabin, by the names of their attributes. */
export const logCabinInputs = {
  finished: 'size',
  center: 'size',
  rounds: 50,
  blocks: 10_000,
  kind: ['plain', 'curved'],
  log: 'lengths',
  wide: 'lengths',
  narrow: 'lengths',
  'strips-log': 'lengths',
  'strips-wide': 'lengths',
  'strips-narrow': 'lengths',
  layout: ['spiral', 'courthouse', 'quarter'],
  first: ['wide', 'narrow'],
  direction: ['clockwise', 'counterclockwise'],
  start: SIDES,
  'wide-sides': 'sides',
  'trim-after': ['round', 'log', 'never'],
  'trim-oversize': 'length',
  seam: 'length',
  extra: 'length',
  grid: 'length',
  cornerstones: 'flag',
  'fabrics-center': 'text',
  'fabrics-cornerstone': 'text',
  'fabrics-log': 'names',
  'fabrics-wide': 'names',
  'fabrics-narrow': 'names',
  'fabrics-top': 'names',
  'fabrics-right': 'names',
  'fabrics-bottom': 'names',
  'fabrics-left': 'names',
} as const satisfies Readonly<Record<string, InputKind>>;

export type LogCabinField = keyof typeof logCabinInputs;

export const logCabinFields = Object.keys(logCabinInputs) as readonly LogCabinField[];

const MEASURED: readonly InputKind[] = ['length', 'lengths', 'size'];

/** Inputs that hold lengths: what they hold is written anew when the reader changes the units. */
export const lengthFields = logCabinFields.filter((field) =>
  MEASURED.includes(logCabinInputs[field]),
);

/** What stands in each input, as text; empty where nothing is given. */
export type LogCabinSettings = Readonly<Record<LogCabinField, string>>;

/** The field of a name, if there is one. */
export const fieldNamed = (name: string): LogCabinField | undefined =>
  logCabinFields.find((field) => field === name);
