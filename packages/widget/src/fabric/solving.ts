import {
  type BlocksOnHand,
  type CutFromHand,
  cutFromHand,
  EighthsError,
  howManyBlocks,
  type PieceInput,
  type Precuts,
  precuts,
} from '@eighths/core';
import { type FabricTask, type FabricTasks, type PrecutChoice, soldWidth } from './model.js';
import { type Yards, yardsFor } from './yards.js';

/** What fabric on hand gives. */
export interface OnHandAnswer extends Omit<CutFromHand, 'buy'> {
  /** The rows of its table, and what stands there. */
  readonly rows: readonly number[];
  readonly fabrics: FabricTask['onHand'];
  /** How many times all pieces of the list can be cut from it. */
  readonly sets: Pick<BlocksOnHand, 'blocks' | 'bound' | 'proven'>;
}

/** How much of one fabric to buy, and how to cut it. */
export interface FabricAnswer {
  /** Undefined where the pieces name none. */
  readonly fabric: string | undefined;
  /** The rows of the table that its pieces stand in. */
  readonly rows: readonly number[];
  readonly onHand?: OnHandAnswer;
  /** What to buy by the yard; left out where nothing is needed, or precuts are wanted. */
  readonly yardage?: Yards;
  readonly precuts?: Precuts & PrecutChoice;
}

/** What the fabric element answers. */
export interface FabricPlan {
  readonly fabrics: readonly FabricAnswer[];
}

/** Work for a number of sets from fabric on hand: several numbers are tried. */
const SETS_EFFORT = 300_000;
/** Work for precuts, and for what is cut from fabric on hand. */
const PACKING_EFFORT = 1_000_000;

/** A task's pieces are some of the table's rows: its errors are told with the rows' own numbers. */
function inTable(error: unknown, { rows, onHandRows }: FabricTask): unknown {
  if (!(error instanceof EighthsError)) return error;
  const numbered = (name: string, numbers: readonly number[], field: string): string =>
    field.replace(
      new RegExp(`^${name}\\[(\\d+)\\]`),
      (_, index: string) => `${name}[${numbers[Number(index)] ?? index}]`,
    );
  const field = numbered('onHand', onHandRows, numbered('pieces', rows, error.field));
  return new EighthsError(error.code, field, error.values, error.template);
}

function* fromHand(task: FabricTask): Generator<void, OnHandAnswer> {
  const { onHand, onHandRows: rows, spec } = task;
  const { width: fabricWidth, pieces } = spec;
  const { buy: _, ...cut } = cutFromHand({ onHand, pieces, fabricWidth, effort: PACKING_EFFORT });
  yield;
  const { blocks, bound, proven } = howManyBlocks({ onHand, block: pieces, effort: SETS_EFFORT });
  yield;
  return { ...cut, rows, fabrics: onHand, sets: { blocks, bound, proven } };
}

function* solvingOne(
  task: FabricTask,
  { options, method, precut }: FabricTasks,
): Generator<void, FabricAnswer> {
  const { fabric, rows, spec } = task;
  const onHand = task.onHand.length === 0 ? undefined : yield* fromHand(task);
  const answer = { fabric, rows, ...(onHand && { onHand }) };
  if (onHand?.complete) return answer;
  // What is missing, in the places of the list.
  const pieces: readonly PieceInput[] = spec.pieces.map((piece, at) => ({
    ...piece,
    count: piece.count - (onHand?.cut[at] ?? 0),
  }));
  if (precut !== undefined) {
    const { kind, packOf } = precut;
    const fabricWidth = soldWidth(spec.width);
    const bought = precuts({ pieces, kind, packOf, fabricWidth, effort: PACKING_EFFORT });
    return { ...answer, precuts: { ...bought, ...precut } };
  }
  return { ...answer, yardage: yield* yardsFor({ ...spec, pieces }, options, method) };
}

/**
 * Solves the tasks bit by bit, pausing every few milliseconds of work where that can be: whoever asks
 * for no more stops it.
 *
 * @throws EighthsError with the input it is about
 */
export function* solving(tasks: FabricTasks): Generator<void, FabricPlan> {
  const fabrics: FabricAnswer[] = [];
  for (const task of tasks.tasks) {
    try {
      fabrics.push(yield* solvingOne(task, tasks));
    } catch (error) {
      throw inTable(error, task);
    }
  }
  return { fabrics };
}
