import {
  BLOCK_SETTINGS,
  type BlockSetting,
  blockTurns,
  type QuarterTurns,
} from '../../block/turns.js';
import { fail } from '../../errors/error.js';
import type { Length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import {
  booleanField,
  checkFields,
  choiceField,
  countField,
  lengthField,
  missing,
  rationalField,
} from '../../plan/field.js';
import type { Size } from '../../plan/size.js';
import { boundedLength, boundedSize } from '../whole.js';
import type { QuiltLayoutSpec, QuiltSetting, SashingSpec } from './spec.js';
import { MOST_BLOCKS } from './topSize.js';

/** A sashing that was read. */
export interface Sashing {
  readonly width: Length;
  readonly outer: boolean;
  readonly cornerstones: boolean;
}

/** A layout's spec that was read. */
export interface LayoutTask {
  readonly block: Size;
  readonly setting: QuiltSetting;
  readonly across: number;
  readonly down: number;
  readonly turns: BlockSetting | 'none';
  /** The turn of the block in a row and a column of the square lattice that blocks stand in. */
  readonly turnAt: (row: number, column: number) => QuarterTurns;
  readonly alternate: boolean;
  readonly sashing: Sashing | undefined;
  readonly seam: Length;
  readonly grid: Length;
  readonly oversize: Length;
}

const FIELDS: readonly (keyof QuiltLayoutSpec)[] = [
  'block',
  'setting',
  'across',
  'down',
  'turns',
  'alternate',
  'sashing',
  'seam',
  'grid',
  'oversize',
];

function readSashing(spec: SashingSpec, setting: QuiltSetting): Sashing {
  checkFields(spec, 'sashing', ['width', 'outer', 'cornerstones']);
  const onPoint = setting === 'on-point';
  const width = boundedLength(spec.width ?? missing('sashing.width'), 'sashing.width');
  const outer = booleanField(spec.outer ?? onPoint, 'sashing.outer');
  const cornerstones = booleanField(spec.cornerstones ?? onPoint, 'sashing.cornerstones');
  if (onPoint && !(outer && cornerstones)) {
    fail(
      'conflicting-fields',
      outer ? 'sashing.cornerstones' : 'sashing.outer',
      { one: 'on-point', other: outer ? 'cornerstones' : 'outer' },
      'On point, sashes stand round every block and meet in cornerstones. Leave “{other}” out, or set the blocks straight.',
    );
  }
  return { width, outer, cornerstones };
}

/** On point the lattice is tilted: its rows and columns run diagonally, across + down − 1 of each. */
function turnsOf(
  turns: BlockSetting | 'none',
  setting: QuiltSetting,
  across: number,
  down: number,
): LayoutTask['turnAt'] {
  if (turns === 'none') return () => 0;
  const onPoint = setting === 'on-point';
  const lines = across + down - 1;
  if (onPoint && (turns === 'barn-raising' || turns === 'circles') && lines % 2 === 1) {
    fail(
      'even-sum',
      'across',
      { across, down },
      'On point this setting turns blocks about the middle, so across and down have to add up to an odd number; {across} and {down} do not. Make one of them one more or one less.',
    );
  }
  const { rows } = onPoint ? blockTurns(turns, lines, lines) : blockTurns(turns, across, down);
  return (row, column) => entryAt(entryAt(rows, row), column);
}

/** @throws EighthsError `not-square` */
export function checkSquare({ width, height }: Size, setting: QuiltSetting): void {
  if (width.equals(height)) return;
  fail(
    'not-square',
    'block',
    { width, height },
    setting === 'on-point'
      ? 'Only square blocks stand on point; these finish {width} by {height}.'
      : 'Only a square block can be turned by a quarter; this one finishes {width} by {height}.',
  );
}

/** Whether a setting turns blocks by one quarter or three. */
const turnsByQuarters = (turns: BlockSetting | 'none'): boolean =>
  turns !== 'none' && turns !== 'straight-furrows';

/**
 * What a layout's spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readLayout(spec: QuiltLayoutSpec): LayoutTask {
  checkFields(spec, '', FIELDS);
  const block = boundedSize(spec.block ?? missing('block'), 'block');
  const setting = choiceField(spec.setting ?? 'straight', 'setting', ['straight', 'on-point']);
  const across = countField(spec.across ?? missing('across'), 'across', 1, MOST_BLOCKS[setting]);
  const down = countField(spec.down ?? missing('down'), 'down', 1, MOST_BLOCKS[setting]);
  const turns = choiceField(spec.turns ?? 'none', 'turns', [...BLOCK_SETTINGS, 'none']);
  if (setting === 'on-point' || turnsByQuarters(turns)) checkSquare(block, setting);
  return {
    block,
    setting,
    across,
    down,
    turns,
    turnAt: turnsOf(turns, setting, across, down),
    alternate: booleanField(spec.alternate ?? false, 'alternate'),
    sashing: spec.sashing && readSashing(spec.sashing, setting),
    seam: rationalField(spec.seam ?? '1/4', 'seam'),
    grid: rationalField(spec.grid ?? '1/8', 'grid'),
    oversize: lengthField(spec.oversize ?? '1/2', 'oversize', 'zero or more'),
  };
}
