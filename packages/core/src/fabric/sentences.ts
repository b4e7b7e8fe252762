import type { Sentences } from '../plan/notice.js';

/** Every code a step of a cutting plan can carry. */
export type CuttingStepCode = 'square-up' | 'cut-strip' | 'cut-strips' | 'stack-strips';

/** Every code a cutting plan's warning can carry. */
export type CuttingWarningCode = 'not-proven';

/** The parts of a step's sentence that say what is subcut from a strip. */
export type SubcutWording =
  | 'subcut-one'
  | 'subcut-several'
  | 'subcut-turned'
  | 'subcut-end'
  | 'subcut-ends'
  | 'subcut-row'
  | 'subcut-rows';

/** The English sentences of cutting plans; `{subcuts}` is what is subcut, worded size by size. */
export const cuttingSentences: Sentences<CuttingStepCode | SubcutWording | CuttingWarningCode> = {
  'square-up': 'Square up the end of the fabric.',
  'cut-strip': 'Cut 1 strip {width} by the width of fabric; from it subcut {subcuts}.',
  'cut-strips': 'Cut {strips} strips {width} by the width of fabric; from each subcut {subcuts}.',
  'stack-strips':
    'Cut {strips} strips {width} by the width of fabric; stack up to {layers} of them, and from each subcut {subcuts}.',
  'subcut-one': '1 piece {length}',
  'subcut-several': '{count} pieces {length}',
  'subcut-turned': '{subcut} (turned)',
  'subcut-end': '1 end {length}, cut into {rows}',
  'subcut-ends': '{count} ends {length}, each cut into {rows}',
  'subcut-row': '1 row {width} with {subcuts}',
  'subcut-rows': '{count} rows {width}, each with {subcuts}',
  'not-proven':
    'This plan takes {length} of fabric. At least {lowerBound} is needed; whether less than the plan would do was not settled within its effort.',
};
