import { fail } from '../errors/error.js';
import type { Length } from '../length/length.js';
import { shorterOf } from '../length/longer.js';
import {
  checkFields,
  choiceField,
  countField,
  lengthField,
  missing,
  rationalField,
} from '../plan/field.js';
import { type Size, sizeField } from '../plan/size.js';
import type { UnitDefinition, UnitInput } from './definition.js';
import type { UnitSpec } from './spec.js';

const MOST_UNITS = 100_000;

/** What all units take. */
export const commonInputs: readonly UnitInput[] = [
  { kind: 'count', name: 'count', least: 1, most: MOST_UNITS, default: 1 },
  { kind: 'length', name: 'seam', sign: 'positive', default: '1/4' },
  { kind: 'length', name: 'grid', sign: 'positive', default: '1/8' },
];

/** What every unit starts from, read. */
export interface Basics {
  readonly definition: UnitDefinition;
  readonly method: string;
  readonly count: number;
  readonly seam: Length;
  readonly grid: Length;
  readonly oversize: Length;
  /** The name of the fabric that a part is made of. */
  readonly fabric: (part: string) => string;
}

function methodOf({ method }: UnitSpec, { methods }: UnitDefinition): string {
  const names = methods.map(({ name }) => name);
  return choiceField(method ?? methods[0].name, 'method', names);
}

/**
 * The fields that all units share.
 *
 * @throws EighthsError `unknown-field`, `unknown-choice`, `not-a-count`, `not-positive`, or of a length
 */
export function readBasics(spec: UnitSpec, definition: UnitDefinition): Basics {
  const own = definition.inputs.map(({ name }) => name);
  const shared = ['method', 'fabrics', ...commonInputs.map(({ name }) => name)];
  checkFields(spec, '', [...own, ...shared]);
  const { fabrics = {} } = spec;
  checkFields(fabrics, 'fabrics', definition.fabrics);
  const usual = definition.inputs.find(({ name }) => name === 'oversize');
  const oversize = spec.oversize ?? (usual?.kind === 'length' ? usual.default : undefined) ?? 0;
  return {
    definition,
    method: methodOf(spec, definition),
    count: countField(spec.count ?? 1, 'count', 1, MOST_UNITS),
    seam: rationalField(spec.seam ?? '1/4', 'seam'),
    grid: rationalField(spec.grid ?? '1/8', 'grid'),
    oversize: lengthField(oversize, 'oversize', 'zero or more'),
    fabric: (part) => fabrics[part] ?? part,
  };
}

/** @throws EighthsError `seam-too-wide` where the finished piece is no wider than one allowance */
export function checkSeam(finished: Length, seam: Length): void {
  if (seam.compareTo(finished) < 0) return;
  fail(
    'seam-too-wide',
    'seam',
    { seam, finished },
    'A piece that finishes {finished} needs a seam allowance of less than that, not {seam}.',
  );
}

/**
 * The finished length that a unit is named by.
 *
 * @throws EighthsError `missing-field`, `not-positive`, `seam-too-wide`, or of a length
 */
export function finishedLength(spec: UnitSpec, { seam }: Basics): Length {
  if (spec.finished === undefined) missing('finished');
  const { width, height } = sizeField(spec.finished, 'finished');
  if (!width.equals(height)) {
    fail(
      'not-square',
      'finished',
      { width, height },
      'One length is needed here, not {width} by {height}.',
    );
  }
  checkSeam(width, seam);
  return width;
}

/**
 * The finished width and height that a unit is named by.
 *
 * @throws EighthsError `missing-field`, `not-positive`, `seam-too-wide`, or of a length
 */
export function finishedSize(spec: UnitSpec, { seam }: Basics): Size {
  if (spec.finished === undefined) missing('finished');
  const { width, height } = sizeField(spec.finished, 'finished');
  checkSeam(shorterOf(width, height), seam);
  return { width, height };
}

/** Usable width of fabric where nobody says: 40 inches (common practice, no source). */
export const usableInput: UnitInput = {
  kind: 'length',
  name: 'usable',
  sign: 'positive',
  default: '40',
};

export const usableOf = ({ usable }: UnitSpec): Length => lengthField(usable ?? 40, 'usable');
