// Lengths
export { Length, length, squareRoot } from './length/length.js';
export type { FractionInput, LengthInput, Rounding } from './length/length.js';
export type { ReadOptions } from './length/read.js';
export type { LengthUnit } from './length/units.js';
export { formatLength } from './length/format.js';
export type { FormatOptions, WrittenUnit } from './length/format.js';

// Errors, and the sentences that plans speak in
export { EighthsError } from './errors/error.js';
export type { ErrorCode, ErrorValues, LengthFault } from './errors/codes.js';
export { fillSentence } from './errors/sentence.js';
export type { SentenceValue, SentenceValues } from './errors/sentence.js';

// What all plans share
export type { Notice, Sentences, Step, Warning } from './plan/notice.js';
export type { Piece, PieceInput } from './plan/piece.js';
export { SIDES } from './plan/side.js';
export type { PerSide, Side } from './plan/side.js';
export type { Size, SizeInput } from './plan/size.js';

// Log cabin blocks
export { logCabin } from './block/logCabin.js';
export type {
  CurvedLogCabinSpec,
  Direction,
  Layout,
  LogCabinFabrics,
  LogCabinSpec,
  LogKind,
  PerRound,
  PlainLogCabinSpec,
  TrimAfter,
} from './block/spec.js';
export type {
  Cornerstone,
  Log,
  LogCabin,
  LogCabinRound,
  LogSize,
  StripTotal,
} from './block/plan.js';
export { logCabinSentences } from './block/warnings.js';
export type { LogCabinWarningCode } from './block/warnings.js';

// Trimming with a ruler
export { trimCuts } from './block/trimCuts.js';
export type { Hand, RulerLine, RulerPlacement, TrimCut } from './block/trimCuts.js';

// Drawings: data first, then marks, then SVG
export { drawLogCabin } from './drawing/logCabinDrawing.js';
export { drawTrim } from './drawing/trimDrawing.js';
export type { TrimDrawingOptions } from './drawing/trimDrawing.js';
export type {
  Area,
  AreaRole,
  Dimension,
  Drawing,
  DrawingWord,
  Label,
  Line,
  LineRole,
  Point,
  Scale,
  Shape,
} from './drawing/drawing.js';
export { drawingSentences } from './drawing/sentences.js';
export type { DrawingSentence } from './drawing/sentences.js';
export { paint } from './drawing/paint.js';
export type { PaintOptions } from './drawing/paint.js';
export type { Mark, MarkRole, Painting, PathMark, TextMark } from './drawing/marks.js';
export type { ScaleUnit } from './drawing/scale.js';
export { toSvg } from './drawing/svg.js';
export type { SvgOptions } from './drawing/svg.js';
