import { type Length, type LengthInput, length } from '../length/length.js';
import { longerOf } from '../length/longer.js';
import { checkFields, countField, lengthField } from '../plan/field.js';
import { type Warning, warningsFrom } from '../plan/notice.js';
import type { LogCabin, LogCabinPiece } from './plan.js';
import { type ToolWarningCode, tableSentences } from './tableSentences.js';

/** What is on the table. */
export interface ToolOptions {
  /** The side of the square ruler on hand. */
  readonly ruler?: LengthInput;
  /** The shorter side of the mat on hand. */
  readonly mat?: LengthInput;
  /** What the blade runs on beyond a cut, at both ends together; default 1. */
  readonly runOff?: LengthInput;
}

/** What ruler and mat a block needs. */
export interface TrimTools {
  /** The least side of a square ruler: it outreaches every cut. 0 where nothing is trimmed. */
  readonly ruler: Length;
  /** The least side of the mat: the largest untrimmed block, and the blade's run. */
  readonly mat: Length;
  readonly warnings: readonly Warning<ToolWarningCode>[];
}

const warning = warningsFrom(tableSentences);

/**
 * What ruler and mat the trimming of a block needs, and from which round on those on hand are too
 * small. A cut is as long as the untrimmed block.
 *
 * @throws EighthsError `not-positive` or `length-syntax`
 * @example
 * const block = logCabin({ rounds: 4, finished: 9, wide: '1 1/4', narrow: '1/2', strips: { wide: 2, narrow: '1 1/2' } });
 * const tools = trimTools(block, { ruler: '9 1/2' });
 * [tools.ruler, tools.mat]; // ["10 1/4","11 1/4"]
 * tools.warnings[0].text; // 'From round 4 on, a cut is 10 1/4 long: a ruler of 9 1/2 does not reach across it.'
 */
export function trimTools(plan: LogCabin, options: ToolOptions = {}): TrimTools {
  checkFields(options, 'options', ['ruler', 'mat', 'runOff']);
  const { runOff: runOffInput = 1 } = options;
  const runOff = lengthField(runOffInput, 'runOff', 'zero or more');
  const none = length(0);
  const trimmed = plan.trimAfter === 'never' ? [] : plan.rounds;
  const reach = trimmed.map(({ number, untrimmed }) => ({
    number,
    needed: longerOf(untrimmed.width, untrimmed.height),
  }));
  const warnings: Warning<ToolWarningCode>[] = [];
  const warn = (
    code: ToolWarningCode,
    field: 'ruler' | 'mat',
    input: LengthInput | undefined,
    more: Length,
  ): void => {
    if (input === undefined) return;
    const onHand = lengthField(input, field);
    const short = reach.find(({ needed }) => needed.plus(more).compareTo(onHand) > 0);
    if (short === undefined) return;
    const values = { round: short.number, needed: short.needed.plus(more), [field]: onHand };
    warnings.push(warning(code, field, values));
  };
  warn('ruler-too-short', 'ruler', options.ruler, none);
  warn('mat-too-small', 'mat', options.mat, runOff);
  const ruler = reach.reduce((most, { needed }) => longerOf(most, needed), none);
  return { ruler, mat: ruler.sign() === 0 ? none : ruler.plus(runOff), warnings };
}

/** How often a piece is cut when fabric is stacked. */
export interface LayeredCuts {
  readonly piece: LogCabinPiece;
  /** Pieces for all blocks. */
  readonly count: number;
  /** Cuts that make them: pieces ÷ layers, up to a whole number. */
  readonly cuts: number;
}

/**
 * How many times each piece has to be cut for so many blocks, with fabric in layers: pieces ÷ layers,
 * rounded up for each kind of piece. Stack no more layers than cut cleanly.
 *
 * @throws EighthsError `not-a-count`
 * @example
 * const block = logCabin({ rounds: 1, center: 2, log: 1 });
 * layeredCuts(block, 9, 4).map(({ count, cuts }) => `${count} in ${cuts}`); // ["9 in 3","9 in 3","18 in 5","9 in 3"]
 */
export function layeredCuts(
  plan: LogCabin,
  blocks: number,
  layers: number,
): readonly LayeredCuts[] {
  countField(blocks, 'blocks', 1, 10_000);
  countField(layers, 'layers', 1, 12);
  return plan.pieces.map((piece) => {
    const count = piece.count * blocks;
    return { piece, count, cuts: Math.ceil(count / layers) };
  });
}
