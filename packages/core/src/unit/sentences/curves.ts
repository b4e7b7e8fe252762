/** Sentences for curved seams. */
export const curveSentences = {
  'cut-round-template': 'Cut the curves round the templates.',
  'mark-middles': 'Fold both curves in half and mark their middles.',
  'sew-curve':
    'Match the middles and the ends and sew {seam} from the edge, the inside curve on top.',
  'curve-measure': 'The sewn curve measures {most}, if the seam is true.',
  'pi-approximate': 'What the curve measures holds pi, so it is given by two limits.',
} as const;
