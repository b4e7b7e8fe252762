import type { Parts } from './rectangles.js';

/** Sheets that are cut alike. */
export interface Layout {
  /** Which of the sheets' sizes. */
  readonly sheet: number;
  readonly count: number;
  readonly parts: Parts;
}
