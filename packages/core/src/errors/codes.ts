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
