import type { Sentences } from '../plan/notice.js';

/** Every code a step of sewing and trimming a log cabin can carry. */
export type TableStepCode =
  | 'cut-center'
  | 'sew-strip-set'
  | 'subcut-strip-set'
  | 'sew-log'
  | 'sew-to-strip'
  | 'sew-cornerstone'
  | 'press'
  | 'lay-block'
  | 'turn-block-half'
  | 'turn-block-quarter'
  | 'turn-mat-half'
  | 'turn-mat-quarter'
  | 'trim-side'
  | 'trim-to-edge'
  | 'check-diagonal'
  | 'check-size';

/** Every code a warning about tools can carry. */
export type ToolWarningCode = 'ruler-too-short' | 'mat-too-small';

/** The English sentences of the work at the table, with their places open. */
export const tableSentences: Sentences<TableStepCode | ToolWarningCode> = {
  'cut-center': 'Cut the center {size} from {fabric}.',
  'sew-strip-set':
    'Sew a strip {centerWidth} wide of {centerFabric} to a strip {width} wide of {fabric} along their length, and press toward {fabric}.',
  'subcut-strip-set':
    'Subcut the strip set every {length}: each piece is a center with log {order} on its {side} side.',
  'sew-log': 'Sew log {order}, {width} by {length} of {fabric}, to the {side} side.',
  'sew-to-strip':
    'Sew the {side} side of the block to a strip {width} wide of {fabric}, and cut the strip off {extra} beyond the block: log {order}.',
  'sew-cornerstone': 'First sew a cornerstone {size} of {fabric} to the {side} end of log {order}.',
  press: 'Press each seam allowance away from the center before the next log is sewn.',
  'lay-block': 'Lay the block before you with its {side} side at the top.',
  'turn-block-half': 'Turn the block half round.',
  'turn-block-quarter': 'Turn the block by a quarter, so that its {side} side lies at the top.',
  'turn-mat-half': 'Turn the mat half round; the block stays where it lies.',
  'turn-mat-quarter':
    'Turn the mat by a quarter, so that the block’s {side} side lies at the top; the block stays where it lies.',
  'trim-side':
    'Trim the {side} side along the ruler’s {at} edge: the {centerSeam} line on the center’s seam, the {lastSeam} line on the last seam.',
  'trim-to-edge':
    'Trim the {side} side along the ruler’s {at} edge: the {size} line on the edge that is trimmed already, the {centerSeam} line on the center’s seam, the {lastSeam} line on the last seam.',
  'check-diagonal':
    'The ruler’s 45-degree line runs through the corner of the center, {distance} from both edges.',
  'check-size': 'Round {round} measures {size}.',
  'ruler-too-short':
    'From round {round} on, a cut is {needed} long: a ruler of {ruler} does not reach across it.',
  'mat-too-small':
    'From round {round} on, the untrimmed block and the blade’s run need {needed}: a mat of {mat} is too small.',
};
