import { fail } from '../errors/error.js';
import { checkFields } from '../plan/field.js';
import { type PerSide, perSide, SIDES } from '../plan/side.js';
import { type ByRound, eachRound } from './perRound.js';
import type { LogCabinFabrics, LogCabinSpec, LogKind } from './spec.js';

/** Which fabric each part of the block is cut from. */
export interface BlockFabrics {
  readonly center: string;
  readonly cornerstone: string;
  readonly sides: PerSide<ByRound<string>>;
}

const FIELDS: readonly (keyof LogCabinFabrics)[] = [
  'center',
  'cornerstone',
  'log',
  'wide',
  'narrow',
  ...SIDES,
];

function fabricName(input: string, field: string): string {
  if (typeof input === 'string' && input.trim() !== '') return input;
  return fail('wrong-kind', field, { expected: 'a name' }, 'A fabric needs a name here.');
}

/** @throws EighthsError `wrong-kind`, `unknown-field` or `list-length` */
export function readFabrics(spec: LogCabinSpec, kinds: PerSide<LogKind>): BlockFabrics {
  const { fabrics = {} } = spec;
  checkFields(fabrics, 'fabrics', FIELDS);
  const { center = 'center', cornerstone = 'cornerstone' } = fabrics;
  return {
    center: fabricName(center, 'fabrics.center'),
    cornerstone: fabricName(cornerstone, 'fabrics.cornerstone'),
    sides: perSide((side) => {
      const kind = kinds[side];
      const name = fabrics[side] === undefined ? kind : side;
      const { [name]: names = kind } = fabrics;
      return eachRound(names, `fabrics.${name}`, spec.rounds, fabricName);
    }),
  };
}
