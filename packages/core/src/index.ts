// Lengths

export type { ErrorCode, ErrorValues, LengthFault } from './errors/codes.js';
// Errors
export { EighthsError } from './errors/error.js';
export type { SentenceValue, SentenceValues } from './errors/sentence.js';
export { fillSentence } from './errors/sentence.js';
export type { FormatOptions, WrittenUnit } from './length/format.js';
export { formatLength } from './length/format.js';
export type { FractionInput, LengthInput, Rounding } from './length/length.js';
export { Length, length, squareRoot } from './length/length.js';
export type { ReadOptions } from './length/read.js';
export type { LengthUnit } from './length/units.js';

// What all plans share
export type { Notice, Step, Warning } from './plan/notice.js';
export type { Piece, PieceInput } from './plan/piece.js';
export type { PerSide, Side } from './plan/side.js';
export { SIDES } from './plan/side.js';
export type { Size, SizeInput } from './plan/size.js';
