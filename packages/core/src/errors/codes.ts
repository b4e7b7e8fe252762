import type { SentenceValue } from './sentence.js';

/** A length in the values of an error: it writes itself as exact inches, which `length()` reads back. */
type Measure = { toJSON(): string };

/** Every code an error can carry, with the values its sentence speaks of. */
export interface ErrorValues {
  /** A text or number that is not a length: what was read, and where reading stopped. */
  'length-syntax': { readonly text: string; readonly at: number; readonly reason: LengthFault };
  /** Division by zero, or by a length that is not a rational number. */
  'length-divisor': { readonly divisor: Measure };
  /** A root of something negative. */
  'length-root': { readonly radicand: Measure };
  /** A grid step that is not a positive rational length. */
  'length-step': { readonly step: Measure };
  /** A length that must be above (or at least) zero and is not. */
  'not-positive': { readonly value: Measure };
  /** A number that must be whole and within limits. */
  'not-a-count': { readonly value: SentenceValue; readonly least: number; readonly most: number };
  /** A word that is not one of the words accepted here. */
  'unknown-choice': { readonly value: string; readonly choices: string };
  /** A field that this spec does not have. */
  'unknown-field': { readonly name: string; readonly known: string };
  /** A field that is needed and missing. */
  'missing-field': { readonly name: string };
  /** Two fields that exclude each other. */
  'conflicting-fields': { readonly one: string; readonly other: string };
  /** A value of the wrong kind altogether (a word where an object is needed). */
  'wrong-kind': { readonly expected: string };
  /** A list with more or fewer entries than are needed. */
  'list-length': { readonly entries: number; readonly needed: number };
  /** Wide sides that are not neighbors. */
  'sides-not-adjacent': { readonly one: string; readonly other: string };
  /** A strip cut too narrow for the log it has to show. */
  'strip-too-narrow': { readonly log: Measure; readonly strip: Measure; readonly needed: Measure };
  /** Logs that leave no room for a center. */
  'center-not-positive': {
    readonly finished: Measure;
    readonly logs: Measure;
    readonly center: Measure;
  };
  /** A finished size that is not the center and the logs added up. */
  'sizes-disagree': { readonly finished: Measure; readonly sum: Measure };
  /** A block that is never trimmed from strips that are not exact. */
  'strip-not-exact': { readonly strip: Measure; readonly exact: Measure };

  /** A least that is more than the most. */
  'limits-cross': { readonly least: Measure; readonly most: Measure };

  /** Logs whose widths differ from round to round, where one width is needed. */
  'widths-vary': { readonly kind: string };

  /** Limits within which no curved block of a size can be made. */
  'no-arc': { readonly least: Measure; readonly most: Measure; readonly grid: Measure };

  /** A block without wide and narrow sides where a curve is asked for. */
  'not-curved': Readonly<Record<string, never>>;

  /** An odd number where an even one is needed. */
  'odd-count': { readonly value: number; readonly fewer: number; readonly more: number };

  /** Sheets of paper without end. */
  'too-many-pages': { readonly pages: number; readonly most: number };

  // Cutting plans and yardage
  /** A piece that does not fit across the fabric. */
  'piece-too-long': { readonly length: Measure; readonly width: Measure };
  /** Nothing to cut. */
  'no-pieces': Readonly<Record<string, never>>;
  /** More pieces all told than one plan takes. */
  'too-many-pieces': { readonly total: number; readonly most: number };
  /** More sizes of pieces than one plan takes. */
  'too-many-sizes': { readonly different: number; readonly most: number };
  /** Pieces of several fabrics in one plan. */
  'several-fabrics': { readonly one: string; readonly other: string };
  /** A cut size that holds a root, so that it lies on no grid. */
  'not-a-fraction': { readonly value: Measure };
  /** Cut sizes without a common grid that a plan can be made on. */
  'no-common-grid': { readonly units: number; readonly most: number };
  /** A shrinkage that is not at least 0 and below 1. */
  'not-a-shrinkage': { readonly value: Measure };
  /** A seam allowance that leaves nothing of the piece to show. */
  'seam-too-wide': { readonly seam: Measure; readonly finished: Measure };
  /** A size of two lengths where one is needed. */
  'not-square': { readonly width: Measure; readonly height: Measure };
  /** A length with a root where a plain fraction is needed. */
  'length-with-root': { readonly value: Measure };
  /** A length beyond its limits. */
  'out-of-range': { readonly value: Measure; readonly least: Measure; readonly most: Measure };
  /** An angle beyond its limits, in degrees. */
  'angle-out-of-range': {
    readonly value: SentenceValue;
    readonly least: number;
    readonly most: number;
  };
  /** Flying geese that the method cannot make from this width and height. */
  'goose-ratio': {
    readonly method: string;
    readonly width: Measure;
    readonly height: Measure;
    readonly wider: Measure;
    readonly lower: Measure;
  };
  /** A strip that is too short for a single piece. */
  'strip-too-short': { readonly usable: Measure; readonly needed: Measure };
}

/** Why a text is not a length. */
export type LengthFault =
  | 'empty'
  | 'unfinished'
  | 'syntax'
  | 'too-long'
  | 'not-finite'
  | 'zero-denominator'
  | 'exponent'
  | 'thousands'
  | 'spaced-slash'
  | 'spaced-hyphen'
  | 'unit-order'
  | 'wrong-kind';

export type ErrorCode = keyof ErrorValues;
