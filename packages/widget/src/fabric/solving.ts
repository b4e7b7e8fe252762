import {
  cuttingPlanInParts,
  EighthsError,
  howManyFrom,
  type OnHand,
  type Yardage,
  yardage,
} from '@eighths/core';
import type { FabricTask, FabricTasks } from './model.js';

/** How much of one fabric to buy, and how to cut it. */
export interface FabricAnswer {
  /** Undefined where the pieces name none. */
  readonly fabric: string | undefined;
  /** The rows of the table that its pieces stand in. */
  readonly rows: readonly number[];
  readonly yardage: Yardage;
}

/** What the fabric element answers. */
export interface FabricPlan {
  readonly fabrics: readonly FabricAnswer[];
  /** How many complete sets a piece on hand gives, where one is given and there is one fabric. */
  readonly onHand?: OnHand;
}

/** Work enough for a piece on hand, which is tried with several numbers of sets. */
const ON_HAND_EFFORT = 2_000_000;

/** A task's pieces are some of the table's rows: its errors are told with the rows' own numbers. */
function inTable(error: unknown, { rows }: FabricTask): unknown {
  if (!(error instanceof EighthsError)) return error;
  const field = error.field.replace(
    /^pieces\[(\d+)\]/,
    (_, index: string) => `pieces[${rows[Number(index)] ?? index}]`,
  );
  return new EighthsError(error.code, field, error.values, error.template);
}

/**
 * Solves the tasks bit by bit, pausing every few milliseconds of work: whoever asks for no more stops
 * it.
 *
 * @throws EighthsError with the input it is about
 */
export function* solving({ tasks, options, onHand }: FabricTasks): Generator<void, FabricPlan> {
  const fabrics: FabricAnswer[] = [];
  for (const task of tasks) {
    try {
      const making = cuttingPlanInParts(task.spec);
      let state = making.next();
      for (; !state.done; state = making.next()) yield;
      const { fabric, rows } = task;
      fabrics.push({ fabric, rows, yardage: yardage(state.value, options) });
    } catch (error) {
      throw inTable(error, task);
    }
  }
  const [only, another] = tasks;
  if (onHand === undefined || only === undefined || another !== undefined) return { fabrics };
  const { width: _, ...set } = only.spec;
  return { fabrics, onHand: howManyFrom({ ...set, ...onHand, effort: ON_HAND_EFFORT }) };
}
