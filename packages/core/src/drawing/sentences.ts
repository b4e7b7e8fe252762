import type { Sentences } from '../plan/notice.js';
import { blockDrawingSentences } from './blockSentences.js';
import { quiltDrawingSentences } from './quiltSentences.js';

/** The codes of drawings' titles and descriptions. */
export type DrawingSentence =
  | keyof typeof blockDrawingSentences
  | keyof typeof quiltDrawingSentences
  | 'turns-title'
  | 'turns-description'
  | 'round-template-title'
  | 'round-template-description'
  | 'foundation-title'
  | 'foundation-description'
  | 'unit-title'
  | 'shape-title'
  | 'unit-description'
  | 'cut-title'
  | 'cut-description'
  | 'template-title'
  | 'template-description'
  | 'cutting-title'
  | 'cutting-description'
  | 'packing-title'
  | 'packing-description'
  | 'packing-corner-description';

/** The English sentences of titles and descriptions, with their places open. */
export const drawingSentences: Sentences<DrawingSentence> = {
  ...blockDrawingSentences,
  ...quiltDrawingSentences,
  'turns-title': 'A quilt top of {across} by {down} blocks, {finished} finished: {setting}',
  'turns-description':
    'Blocks that finish {finished}, each turned by quarters, in the setting {setting}.',
  'round-template-title': 'Round {round}: trim to {trimTo}',
  'round-template-description':
    'The outer line is the trimmed raw edge, the heavy square the center’s seam, the thin lines the last seams.',
  'foundation-title': 'Foundation of a block that finishes {finished}, mirrored',
  'foundation-description':
    'Sew on the printed side, along the lines, in the order of the numbers, from the center on. The dashed line is the finished edge; cut on the outer line, a seam allowance beyond it.',
  'cutting-title': 'Fabric from {from} to {to} of {length}',
  'cutting-description':
    '{strips} strips across the width of fabric, each with the number of its step; the figures on the pieces are their places in the list.',
  'packing-title': 'Fabric {width} by {length}',
  'packing-description':
    '{pieces} pieces to cut from it, each with its place in the list; what is hatched is left over.',
  'packing-corner-description':
    '{pieces} pieces to cut from it, each with its place in the list; what is hatched is left over. A corner of {corner} is missing.',
  'unit-title': 'The unit as sewn: {finished} finished, trim to {trimTo}',
  'shape-title': 'The shape with its seam allowance: {finished} finished',
  'unit-description':
    'The unfinished unit with its patches, {patches} in all, and the finished edge a seam allowance inside.',
  'cut-title': 'To cut: {count} of {size}',
  'cut-description':
    'One piece with its size. Full lines are cut, thin lines are sewn. The steps say in which order.',
  'template-title': 'The template of the {piece}: {size} with its seam allowance',
  'template-description':
    'The full line is the raw edge, the broken one is sewn, with the middle of the curve marked.',
};
