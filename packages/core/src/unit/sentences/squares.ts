/** Sentences for units that are sewn as squares and cut apart on the diagonals. */
export const squareSentences = {
  'mark-diagonal': 'On the back of the lighter square of each pair, draw one diagonal.',
  'mark-diagonals': 'On the back of the lighter square of each pair, draw both diagonals.',
  'sew-both-sides': 'Right sides together, sew {seam} from the line on both of its sides.',
  'sew-both-lines': 'Right sides together, sew {seam} from both lines on both of their sides.',
  'sew-round': 'Right sides together, sew {seam} from the edge all round.',
  'cut-on-line': 'Cut on the line and press open.',
  'cut-diagonals': 'Cut on both diagonals and press open.',
  'cut-quarters': 'Cut across the middle both ways, then on both diagonals, and press open.',
  'cut-once': 'Cut each square once from corner to corner.',
  'cut-twice': 'Cut each square twice from corner to corner.',
  'sew-triangles': 'Sew the triangles on their long edges, {seam} from the edge.',
  'sew-short-edges': 'Sew the triangles in pairs on a short edge, then the pairs on the long edge.',
  'cross-pairs':
    'Lay the half-square units in pairs, right sides together, unlike fabrics facing, seams nested.',
  'lay-plain-square': 'Lay each half-square unit on a plain square, right sides together.',
  'mark-across': 'Draw the diagonal that crosses the seam.',
  'sew-to-half': 'Sew each pair of small triangles to a large one on the long edge.',
  'trim-diagonal': 'Trim to {trimTo}, the ruler’s 45-degree line on the seam.',
  'trim-crossing':
    'Trim to {trimTo}: the seams cross at the middle, {middle} from each edge, and run along the 45-degree lines.',
  'geese-first':
    'Lay two small squares on opposite corners of the large one and draw the diagonal through both.',
  'geese-second':
    'On each half, lay a small square on the free corner and draw its diagonal; sew, cut and press the same way.',
  'geese-triangles': 'Sew a sky triangle to each short edge of the goose.',
  'trim-point':
    'Trim to {trimTo}: the point lies {seam} below the edge and {middle} from each side.',
  'round-triangles':
    'Sew a corner triangle to two opposite sides, press, then to the other two; trim, and go on to the next round.',
  'trim-rounds': 'Trim each round {seam} beyond the points, the last one to {trimTo}.',
  'setting-trim':
    'Sew the row, then trim {seam} beyond the corners of the blocks. Exactly, a square of {least} would do.',
  'mirror-half': 'Half of the units come out as mirror images of the others.',
  'seam-not-in-corner':
    'The seam does not run into the corners of the unfinished unit: it runs through the points {seam} inside them.',
  'cut-one-way': 'Cut each rectangle once from corner to corner, all in the same direction.',
  'cut-both-ways':
    'Cut half of the rectangles from corner to corner one way and half of them the other way.',
  'cut-isosceles': 'Cut each goose from the middle of the top to both lower corners.',
  'trim-seam':
    'Trim to {trimTo}, so that the seam passes through the points {seam} inside its two corners.',
  'set-in-seams': 'The pieces meet in set-in seams: stop sewing {seam} from the edge.',
} as const;
