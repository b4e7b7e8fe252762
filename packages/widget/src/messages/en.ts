import { blockDrawingSentences, logCabinSentences } from '@eighths/core';

/**
 * Every word on every element, in English. Another language is a file of this shape; where one lacks
 * a message, this one is shown. Places in braces are filled with values.
 */
export const en = {
  // Units and numbers
  inches: 'Inches',
  centimeters: 'Centimeters',
  by: '{width} by {height}',
  /** A length in figures that stands alone, so that its unit is named. */
  inInches: '{length} in',
  /** Between the entries of a list. */
  comma: ', ',

  // The block
  sizes: 'Sizes',
  finished: 'Finished size',
  center: 'Center',
  rounds: 'Rounds',
  blocks: 'Blocks',
  kind: 'Logs',
  plain: 'All sides alike',
  curved: 'Wide and narrow (curved)',
  log: 'Log',
  wide: 'Wide log',
  narrow: 'Narrow log',
  'strips-log': 'Strip cut',
  'strips-wide': 'Wide strip cut',
  'strips-narrow': 'Narrow strip cut',
  'trim-oversize': 'Oversize',
  seam: 'Seam allowance',
  extra: 'Extra a log',
  more: 'Sewing, trimming and measures',
  layout: 'Layout',
  spiral: 'Spiral',
  courthouse: 'Courthouse steps',
  quarter: 'Quarter',
  direction: 'Sewn',
  clockwise: 'Clockwise',
  counterclockwise: 'Counterclockwise',
  first: 'First in each round',
  'first-wide': 'Wide pair',
  'first-narrow': 'Narrow pair',
  'trim-after': 'Trim',
  'trim-usual': 'As the strips are cut',
  'trim-round': 'After each round',
  'trim-log': 'After each log',
  'trim-never': 'Never',
  units: 'Measures',
  hand: 'Cutting hand',
  'hand-right': 'Right',
  'hand-left': 'Left',
  cornerstones: 'Cornerstones',
  solved: 'worked out',
  usual: 'exact',
  fractions: 'Put in a fraction',
  less: 'A step less',
  greater: 'A step more',

  // What can be done with the answer
  actions: 'With this answer',
  copyText: 'Copy as text',
  saveTables: 'Save the tables (CSV)',
  saveDrawing: 'Save the drawing (SVG)',
  printThis: 'Print this',
  copyLink: 'Copy a link to this',
  copied: 'Copied.',
  copyByHand: 'The page may not use the clipboard: copy this by hand.',

  // The answer
  headline: '{finished} finished, trim to {unfinished}',
  stale: 'These numbers do not match the sizes above yet.',
  nothing: 'There is nothing to show until the sizes above can be read.',
  summary: '{finished} finished, trim to {unfinished}. Center {center}. {rounds} rounds.',
  show: 'What is drawn',
  wholeBlock: 'Whole block',
  roundOf: 'Round {round} of {rounds}',
  cuts: 'cuts {cuts}',
  back: 'Back',
  next: 'Next',
  turnedHalf:
    'Turn the block half round. Lay the trimmed edges on the line for the unfinished size.',
  turnedQuarter: 'Turn the block so that the side to trim lies at your cutting hand.',
  facing: 'The block lies as it was sewn. Lay the ruler’s lines on the seams.',

  trimChart: 'Trim chart',
  round: 'Round',
  trimTo: 'trim to {size}',
  sewnSize: 'untrimmed {size}',
  side: 'Side',
  allSides: 'all sides',
  centerSeamToEdge: 'Center seam to edge',
  lastSeamToEdge: 'Last seam to edge',
  trimAway: 'Trims off',
  exactChart: 'Sizes after each round',

  cutList: 'Cut list',
  part: 'Part',
  fabric: 'Fabric',
  cut: 'Cut',
  forOne: 'For 1 block',
  forBlocks: 'For {blocks} blocks',
  pieceCenter: 'Center',
  pieceLogs: 'Log {orders}',
  pieceCornerstone: 'Cornerstone',
  stripList: 'Strips',
  stripWidth: 'Strip width',
  stripLength: 'Length for 1 block',
  stripLengths: 'Length for {blocks} blocks',

  warnings: 'Before you cut',
  caution:
    'A rotary cutter is a bare blade: close it after every cut, cut away from yourself, keep fingers back from the ruler’s edge. Follow its maker’s instructions.',

  // Words in drawings and sentences
  words: {
    finished: 'finished',
    'trim to': 'trim to',
    center: 'center',
    'center seam': 'center seam',
    'last seam': 'last seam',
    'trimmed edge': 'trimmed edge',
    hold: 'hold',
    'selvage to selvage': 'selvage to selvage',
    top: 'top',
    right: 'right',
    bottom: 'bottom',
    left: 'left',
    wide: 'wide',
    narrow: 'narrow',
    log: 'log',
    cornerstone: 'cornerstone',
  },

  // Sentences of plans and drawings, by code
  sentences: { ...logCabinSentences, ...blockDrawingSentences },
  /** By code, where the core's own English sentence would not do. */
  errors: {},
};
