/** Sentences for shapes that are cut from strips, and for strip sets. */
export const stripSentences = {
  'first-angle': 'Cut the end of the strip off at {angle} degrees.',
  'next-angle':
    'Lay the ruler’s {line} line on the cut edge for every next cut: {perStrip} from a strip.',
  'alternate-angles':
    'Cut at {angle} degrees by turns to the one side and the other, {edge} along the long edge: {perStrip} from a strip.',
  'hexagon-points':
    'Cut the two sharp points off each diamond: square to the long diagonal, {half} from the middle on both sides.',
  'sew-halves': 'Sew the halves in rows, then the rows: there are no set-in seams.',
  'half-triangles': 'Cut each rectangle once from corner to corner.',
  'strip-off-grid':
    'A strip is exactly {exact} wide. Cut at {cut}, what is cut from it comes out larger by {adds}.',
  'piece-off-grid': 'A piece is exactly {exact} long. Cut at {cut}, it comes out longer by {adds}.',
  'sew-strip-set':
    'Sew the strips on their long edges, {seam} from the edge, and press: {set} wide.',
  subcut: 'Straighten the end and cut across the seams every {subcut}: {perSet} from a set.',
  'sew-two': 'Sew two cuts, one of them turned, with the seams nested.',
  'sew-three': 'Sew the cuts in threes, the odd one in the middle, with the seams nested.',
  'sew-squares': 'Sew the squares in rows and the rows to each other, with the seams nested.',
  'angle-approximate': 'The sine of {angle} degrees is not exact: lengths are rounded outward.',
} as const;
