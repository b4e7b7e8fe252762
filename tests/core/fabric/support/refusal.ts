import { EighthsError } from '@eighths/core';

/** What an input is refused with. */
export function refusal(work: () => unknown): readonly [string, string] {
  try {
    work();
  } catch (error) {
    if (error instanceof EighthsError) return [error.code, error.field];
    throw error;
  }
  throw new Error('It was not refused.');
}
