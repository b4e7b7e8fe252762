import { fail } from '../errors/error.js';
import { entryAt } from '../plan/entryAt.js';
import { choiceField, countField } from '../plan/field.js';

/** A traditional way of turning log cabin blocks in a quilt; `circles` is for curved blocks. */
export type BlockSetting =
  | 'straight-furrows'
  | 'barn-raising'
  | 'streak-of-lightning'
  | 'sunshine-and-shadow'
  | 'circles';

/** Quarter turns clockwise. */
export type QuarterTurns = 0 | 1 | 2 | 3;

/** How each block of a quilt top is turned. */
export interface BlockTurns {
  readonly setting: BlockSetting;
  readonly across: number;
  readonly down: number;
  /** Row by row from the top, each from the left; unturned, a block's wide or dark half is right and below. */
  readonly rows: readonly (readonly QuarterTurns[])[];
}

const MOST_BLOCKS = 100;

const quarters = (turns: number): QuarterTurns => entryAt([0, 1, 2, 3] as const, turns & 3);

/** Dark halves turned to the middle of each four blocks. */
const towardMiddle = (row: number, column: number): number =>
  row % 2 === 0 ? column % 2 : 3 - (column % 2);

/** Rings of one half of color around the middle of the quilt, dark innermost. */
function ring(row: number, column: number, across: number, down: number): number {
  const [right, below] = [column >= across / 2, row >= down / 2];
  const fromMiddle =
    (right ? column - across / 2 : across / 2 - 1 - column) +
    (below ? row - down / 2 : down / 2 - 1 - row);
  const inward = below ? (right ? 2 : 3) : right ? 1 : 0;
  return inward + 2 * (fromMiddle % 2);
}

const settings: Readonly<
  Record<BlockSetting, (row: number, column: number, across: number, down: number) => number>
> = {
  'straight-furrows': (row, column) => 2 * ((row + column) % 2),
  'barn-raising': ring,
  'streak-of-lightning': (row, column) => 2 * (row % 2) + (column % 2),
  'sunshine-and-shadow': towardMiddle,
  circles: towardMiddle,
};

/** The settings there are. */
export const BLOCK_SETTINGS = Object.keys(settings) as readonly BlockSetting[];

const NEED_EVEN: readonly BlockSetting[] = ['barn-raising', 'circles'];

function checkEven(count: number, field: string): void {
  if (count % 2 === 0) return;
  fail(
    'odd-count',
    field,
    { value: count, fewer: count - 1, more: count + 1 },
    'This setting turns blocks about the middle, so their number has to be even, not {value}.',
  );
}

/**
 * How the blocks of a quilt top are turned in a traditional setting (the names and patterns are common
 * practice, no source). Quarter turns are enough for all of them: no block is mirrored. A block turned
 * by two quarters shows a directional print upside down.
 *
 * Straight furrows run diagonally in stripes; in a barn raising rings lie round the middle; a streak
 * of lightning zigzags across; in sunshine and shadow, and in circles, the wide or dark halves of four
 * blocks meet.
 *
 * @throws EighthsError `unknown-choice`, `not-a-count`, or `odd-count` where a barn raising or circles
 *   have an odd number of blocks across or down
 * @example
 * blockTurns('circles', 4, 2).rows; // [[0,1,0,1],[3,2,3,2]]
 */
export function blockTurns(setting: BlockSetting, across: number, down: number): BlockTurns {
  choiceField(setting, 'setting', BLOCK_SETTINGS);
  countField(across, 'across', 1, MOST_BLOCKS);
  countField(down, 'down', 1, MOST_BLOCKS);
  if (NEED_EVEN.includes(setting)) {
    checkEven(across, 'across');
    checkEven(down, 'down');
  }
  const turn = settings[setting];
  return {
    setting,
    across,
    down,
    rows: Array.from({ length: down }, (_, row) =>
      Array.from({ length: across }, (_, column) => quarters(turn(row, column, across, down))),
    ),
  };
}
