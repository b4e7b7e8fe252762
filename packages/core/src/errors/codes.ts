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

  // Quilts
  /** Blocks on point whose numbers across and down add up to an even number. */
  'even-sum': { readonly across: number; readonly down: number };
  /** A pieced border whose repeat does not divide it. */
  'repeat-does-not-fit': {
    readonly side: Measure;
    readonly unit: Measure;
    readonly fewer: number;
    readonly fewerUnit: Measure;
    readonly more: number;
    readonly moreUnit: Measure;
    readonly spacer: Measure;
  };
  /** A block that is not of the size that its layout is of. */
  'block-size-differs': { readonly block: SentenceValue; readonly layout: SentenceValue };
  /** Binding that no allowed number of squares or strips can make. */
  'strip-too-wide': { readonly strip: Measure; readonly width: Measure };

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

  // Money
  /** What is no amount of money, or one below 0. */
  'not-money': { readonly value: string; readonly example: string };
  /** A currency that is not named by its code. */
  'unknown-currency': { readonly value: string };
  /** Amounts of different currencies that should be added up. */
  'several-currencies': { readonly one: string; readonly other: string };
  /** More money than sums stay exact with. */
  'too-much-money': { readonly most: Measure; readonly currency: string };
  /** A margin that is not at least 0 and below 1. */
  'not-a-margin': { readonly value: Measure };

  // Recipes, whole quilts and kits
  /** A text that is not JSON. */
  'not-json': { readonly reason: string };
  /** A recipe that an address does not give: what it answered, 0 where nothing did. */
  'not-loaded': { readonly address: string; readonly status: number };
  /** A text that is longer than is read. */
  'text-too-long': { readonly characters: number; readonly most: number };
  /** A text that is empty or longer than its field takes. */
  'not-a-text': { readonly most: number };
  /** What is no name that other fields can refer to. */
  'not-an-id': { readonly value: string };
  /** What is no part of a whole, from 0 up to 1. */
  'not-a-share': { readonly value: string };
  /** A list with fewer or more entries than it may have. */
  'not-a-list': { readonly least: number; readonly most: number };
  /** An id or a name that two entries of a list have. */
  'listed-twice': { readonly value: string };
  /** A block that is not a rectangle. */
  'block-not-rectangular': { readonly unit: string };
  /** Blocks of one quilt that finish to different sizes. */
  'blocks-differ': { readonly size: SentenceValue; readonly needed: SentenceValue };
  /** The pieces of a block that do not add up to it. */
  'pieces-do-not-fill': { readonly pieces: Measure; readonly block: Measure };
  /** A piece of a block that reaches over its edge. */
  'piece-outside': { readonly block: SentenceValue };
  /** Two pieces of a block on one place. */
  'pieces-overlap': { readonly x: Measure; readonly y: Measure };
  /** A piece that is cut smaller than it has to be. */
  'cut-too-small': { readonly cut: SentenceValue; readonly needed: SentenceValue };
  /** A kit that no bolt is long enough for. */
  'bolt-too-short': { readonly bolt: Measure; readonly needed: Measure };
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

/** Every code an error can carry. */
export type ErrorCode = keyof ErrorValues;
