import { type LogCabinSpec, SIDES } from '@eighths/core';
import { anyGiven, choose, given, type SettingsReader } from '../base/settingsReader.js';
import type { LogCabinField } from './fields.js';

type Reader = SettingsReader<LogCabinField>;

export const MOST_ROUNDS = 50;

const sides = (text: string): readonly string[] =>
  text.split(/[\s,;]+/).map((side) => choose(side, 'wide-sides', SIDES));

const common = (reader: Reader) => ({
  finished: reader.size('finished'),
  center: reader.size('center'),
  rounds: reader.count('rounds', 1, MOST_ROUNDS),
  direction: reader.choice('direction', ['clockwise', 'counterclockwise']),
  start: reader.choice('start', SIDES),
  seam: reader.length('seam'),
  extra: reader.length('extra'),
  grid: reader.length('grid'),
  cornerstones: reader.flag('cornerstones'),
  trim: anyGiven({
    after: reader.choice('trim-after', ['round', 'log', 'never']),
    oversize: reader.length('trim-oversize'),
  }),
  fabrics: anyGiven({
    center: reader.text('fabrics-center'),
    cornerstone: reader.text('fabrics-cornerstone'),
    log: reader.names('fabrics-log'),
    wide: reader.names('fabrics-wide'),
    narrow: reader.names('fabrics-narrow'),
    top: reader.names('fabrics-top'),
    right: reader.names('fabrics-right'),
    bottom: reader.names('fabrics-bottom'),
    left: reader.names('fabrics-left'),
  }),
});

const plain = (reader: Reader) => ({
  log: reader.lengths('log'),
  layout: reader.choice('layout', ['spiral', 'courthouse', 'quarter']),
  strips: anyGiven({ log: reader.lengths('strips-log') }),
});

const curved = (reader: Reader) => ({
  wide: reader.lengths('wide'),
  narrow: reader.lengths('narrow'),
  layout: reader.choice('layout', ['spiral', 'courthouse']),
  first: reader.choice('first', ['wide', 'narrow']),
  wideSides: reader.read('wide-sides', sides),
  strips: anyGiven({
    wide: reader.lengths('strips-wide'),
    narrow: reader.lengths('strips-narrow'),
  }),
});

/** The core's spec from settings. What is left empty is left out: the core says what it misses. */
export function readSpec(reader: Reader): LogCabinSpec {
  const kind = reader.choice('kind', ['plain', 'curved']);
  const widths = kind === 'plain' ? plain(reader) : curved(reader);
  return given({ ...common(reader), ...widths }) as LogCabinSpec;
}
