import { entryAt } from '../../plan/entryAt.js';

/**
 * One strip width's problem in whole units: cut every size as often as it is needed from strips of
 * one length, and use few strips. (In the literature: one-dimensional cutting stock.)
 */
export interface Stock {
  /** What one strip holds. */
  readonly capacity: number;
  /** All different, longest first, none longer than a strip. */
  readonly sizes: readonly number[];
  /** How many of each size are needed. */
  readonly demands: readonly number[];
}

/** How many of each size one strip gives, in the order of the sizes. */
export type Pattern = readonly number[];

/** Strips that are cut alike. */
export interface Run {
  readonly pattern: Pattern;
  readonly times: number;
}

export function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

export const stripsIn = (runs: readonly Run[]): number =>
  runs.reduce((sum, { times }) => sum + times, 0);

/** How often a pattern can be cut before it gives more than is left to cut. */
export function timesWithin(pattern: Pattern, left: readonly number[]): number {
  let times = Number.POSITIVE_INFINITY;
  for (let i = 0; i < pattern.length; i += 1) {
    const count = entryAt(pattern, i);
    if (count > 0) times = Math.min(times, Math.floor(entryAt(left, i) / count));
  }
  return times;
}

/** What is left to cut after some strips of a pattern; never less than nothing. */
export const without = (left: readonly number[], pattern: Pattern, times: number): number[] =>
  left.map((count, i) => Math.max(0, count - times * entryAt(pattern, i)));
