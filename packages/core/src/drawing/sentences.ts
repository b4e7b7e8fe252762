import type { Sentences } from '../plan/notice.js';

/** The codes of drawings' titles and descriptions. */
export type DrawingSentence =
  | 'block-title'
  | 'block-description'
  | 'trim-title'
  | 'trim-description'
  | 'turns-title'
  | 'turns-description'
  | 'unit-title'
  | 'shape-title'
  | 'unit-description'
  | 'cut-title'
  | 'cut-description'
  | 'cutting-title'
  | 'cutting-description';

/** The English sentences of titles and descriptions, with their places open. */
export const drawingSentences: Sentences<DrawingSentence> = {
  'block-title': 'The block as sewn: {finished} finished, trim to {unfinished}',
  'block-description':
    'A center that finishes {center} with {logs} logs in {rounds} rounds, numbered in sewing order. The list of cuts gives each size.',
  'trim-title': 'Round {round}, placement {placement} of {placements}: trim to {trimTo}',
  'trim-description':
    'The block under a square ruler, its edge on the trim line of the {sides} side. The trim chart gives each distance.',
  'turns-title': 'A quilt top of {across} by {down} blocks, {finished} finished: {setting}',
  'turns-description':
    'Blocks that finish {finished}, each turned by quarters, in the setting {setting}.',
  'cutting-title': 'Fabric from {from} to {to} of {length}',
  'cutting-description':
    '{strips} strips across the width of fabric, each with the number of its step; the figures on the pieces are their places in the list.',
  'unit-title': 'The unit as sewn: {finished} finished, trim to {trimTo}',
  'shape-title': 'The shape with its seam allowance: {finished} finished',
  'unit-description':
    'The unfinished unit with its patches, {patches} in all, and the finished edge a seam allowance inside.',
  'cut-title': 'To cut: {count} of {size}',
  'cut-description':
    'One piece with its size. Full lines are cut, thin lines are sewn. The steps say in which order.',
};
