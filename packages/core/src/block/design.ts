import type { Length } from '../length/length.js';
import {
  booleanField,
  checkFields,
  countField,
  lengthField,
  missing,
  rationalField,
} from '../plan/field.js';
import type { Side } from '../plan/side.js';
import type { Size } from '../plan/size.js';
import { type Arrangement, arrange } from './arrangement.js';
import { solveSizes } from './blockSize.js';
import { readFabrics } from './fabricsOf.js';
import type { CurvedLogCabinSpec, LogCabinSpec, LogKind, TrimAfter } from './spec.js';
import { readStrips, type Strip } from './strips.js';
import { readWidths } from './widths.js';

/** One log, before it is sewn. */
export interface LogDesign {
  readonly side: Side;
  readonly kind: LogKind;
  readonly fabric: string;
  /** Its finished width. */
  readonly finished: Length;
  readonly strip: Strip;
}

/** A spec with its defaults filled in, its lengths read and its sizes solved: what sewing needs. */
export interface LogCabinDesign extends Arrangement {
  readonly seam: Length;
  readonly grid: Length;
  readonly extra: Length;
  readonly trimAfter: TrimAfter;
  readonly cornerstones: boolean;
  readonly center: Size;
  readonly finished: Size;
  readonly fabrics: { readonly center: string; readonly cornerstone: string };
  /** The logs of each round, in sewing order. */
  readonly rounds: readonly (readonly LogDesign[])[];
}

const MOST_ROUNDS = 50;

const FIELDS: readonly (keyof CurvedLogCabinSpec)[] = [
  'rounds',
  'layout',
  'log',
  'wide',
  'narrow',
  'wideSides',
  'first',
  'direction',
  'start',
  'center',
  'finished',
  'seam',
  'strips',
  'trim',
  'extra',
  'fabrics',
  'grid',
  'cornerstones',
];

/** @throws EighthsError with the path of the field it is about */
export function readDesign(spec: LogCabinSpec): LogCabinDesign {
  checkFields(spec, '', FIELDS);
  // Defaults stand for what is left out; a null in the spec is a mistake.
  const { rounds: roundsInput = missing('rounds'), cornerstones = false } = spec;
  const { seam: seamInput = '1/4', grid: gridInput = '1/8', extra: extraInput = 0 } = spec;
  const rounds = countField(roundsInput, 'rounds', 1, MOST_ROUNDS);
  const seam = lengthField(seamInput, 'seam', 'zero or more');
  const grid = rationalField(gridInput, 'grid');
  const extra = lengthField(extraInput, 'extra', 'zero or more');
  const widths = readWidths(spec);
  const arrangement = arrange(spec);
  const { center, finished } = solveSizes(spec, arrangement, widths);
  const { trimAfter, stripOf } = readStrips(spec, widths, seam, grid);
  const fabrics = readFabrics(spec, arrangement.kinds);

  const logOn = (side: Side, index: number): LogDesign => {
    const kind = arrangement.kinds[side];
    return {
      side,
      kind,
      fabric: fabrics.sides[side](index),
      finished: widths(kind, index),
      strip: stripOf(kind, index),
    };
  };
  return {
    ...arrangement,
    seam,
    grid,
    extra,
    trimAfter,
    cornerstones: booleanField(cornerstones, 'cornerstones'),
    center,
    finished,
    fabrics,
    rounds: Array.from({ length: rounds }, (_, index) =>
      arrangement.sides.map((side) => logOn(side, index)),
    ),
  };
}
