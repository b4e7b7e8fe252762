/** The titles and descriptions of drawings of whole quilts. */
export const quiltDrawingSentences = {
  'quilt-title': 'A quilt of {across} by {down} blocks, {finished} finished',
  'quilt-on-point-title': 'A quilt of {across} by {down} blocks on point, {finished} finished',
  'quilt-description':
    '{blocks} blocks that finish {block}. Borders: {borders}. Each fabric has a tint and a hatch of its own.',
} as const;
