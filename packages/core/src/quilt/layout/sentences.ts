import type { Sentences } from '../../plan/notice.js';

/** Every code a layout's warning can carry. */
export type LayoutWarningCode = 'finished-off-grid' | 'prints-turn' | 'narrow-sash' | 'prints-lean';

/** The English sentences of a layout's warnings, with their places open. */
export const layoutSentences: Sentences<LayoutWarningCode> = {
  'finished-off-grid':
    'The top finishes {finished}, which lies between two lines of the {grid} grid. Measure it before cutting borders, binding and backing.',
  'prints-turn':
    'Blocks are turned, and a directional print turns with them: {sideways} stand on their side, {upsideDown} upside down.',
  'narrow-sash':
    'Sashes that finish {finished} are narrower than two seam allowances: each seam will catch the allowances of the one before.',
  'prints-lean':
    'Blocks on point stand on their corners, and a directional print in them leans. In setting triangles cut from squares it runs two ways.',
};
