/** The English titles and descriptions of a log cabin's drawings, with their places open. */
export const blockDrawingSentences = {
  'block-title': 'The block as sewn: {finished} finished, trim to {unfinished}',
  'block-description':
    'A center that finishes {center} with {logs} logs in {rounds} rounds, numbered in sewing order. The list of cuts gives each size.',
  'trim-title': 'Round {round}, placement {placement} of {placements}: trim to {trimTo}',
  'trim-description':
    'The block under a square ruler, its edge on the trim line of the {sides} side. The trim chart gives each distance.',
};
