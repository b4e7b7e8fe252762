import type { ErrorCode, ErrorValues } from './codes.js';
import { fillSentence, type SentenceValues } from './sentence.js';

/**
 * The one error this library throws: what a caller asked for cannot be made.
 *
 * `code` is one of a closed list, `field` the path of the input it is about (`pieces[2].width`),
 * `values` what the sentence speaks of, `message` an English sentence that says what would be
 * accepted, and `template` that sentence with its places open, for writing it in other units.
 *
 * @example
 * try {
 *   length('ten');
 * } catch (error) {
 *   if (error instanceof EighthsError) error.code; // 'length-syntax'
 * }
 */
export class EighthsError<Code extends ErrorCode = ErrorCode> extends Error {
  override readonly name = 'EighthsError';
  readonly code: Code;
  readonly field: string;
  readonly values: ErrorValues[Code] & SentenceValues;
  readonly template: string;

  constructor(
    code: Code,
    field: string,
    values: ErrorValues[Code] & SentenceValues,
    template: string,
  ) {
    super(fillSentence(template, values));
    this.code = code;
    this.field = field;
    this.values = values;
    this.template = template;
  }
}

/**
 * Throws. Sentences stand where they are thrown, not in one table, so that a page which imports only
 * lengths does not carry the sentences of cutting plans.
 */
export function fail<Code extends ErrorCode>(
  code: Code,
  field: string,
  values: ErrorValues[Code] & SentenceValues,
  template: string,
): never {
  throw new EighthsError(code, field, values, template);
}
