/** Sentences that every unit's plan may speak: what to cut, what to trim, what to know. */
export const commonSentences = {
  cut: 'From {fabric}, cut {count} of {size}.',
  'cut-strips': 'From {fabric}, cut strips {width} wide, {count} in all.',
  trim: 'Press, and trim to {trimTo}.',
  'narrow-unit':
    'A piece that finishes {finished} is narrower than two seam allowances: the allowances will lie on each other.',
  'trim-off-grid':
    'The unit is trimmed to {trimTo}, which is {by} beyond a line of the {grid} grid.',
  'bias-outside':
    'The outer edges are on the bias and stretch: handle them little, and press without pulling.',
  'mirror-pairs':
    'Layers with wrong sides together cut mirror images. Unfold the fabric, all layers right side up.',
  'left-over': 'The cuts make {leftOver} more than the {count} asked for.',
} as const;
