/** Sentences for corners that are sewn on as squares and flipped. */
export const flipSentences = {
  'mark-small-squares': 'On the back of the small squares, draw one diagonal.',
  'flip-corner':
    'Lay a small square on a corner, right sides together, sew on the line, trim {seam} beyond it and press the corner open.',
  'flip-other': 'Do the same at the other corner.',
  'flip-each': 'Do the same at each of the {corners} corners.',
  'no-point':
    'A goose {width} by {height} is more than twice as wide as high: its corners do not meet in a point but end {apart} apart.',
  bonus:
    'Sewn together before they are cut away, the corners make half-square triangles that finish up to {finished}.',
} as const;
