import { fail } from '../errors/error.js';
import { type Length, type LengthInput, length } from '../length/length.js';
import { absolute } from '../length/longer.js';
import { checkFields, countField, lengthField, missing } from '../plan/field.js';
import { type Notice, notice } from '../plan/notice.js';
import { type SeamNoteCode, seamSentences } from './seamSentences.js';

/** Strips sewn side by side, pressed and measured across. */
export interface SeamTestInput {
  /** How wide all of them measure together. */
  readonly measured: LengthInput;
  /** The width that each was cut; default 1 1/2. */
  readonly strip?: LengthInput;
  /** How many, from 2 to 12; default 3. */
  readonly strips?: number;
  /** The seam allowance wanted; default 1/4. */
  readonly wanted?: LengthInput;
}

/** What a seam test gave. */
export interface SeamTest {
  /** What each seam takes of each strip, pressing included. */
  readonly seam: Length;
  /** How much deeper it is than wanted; less than 0 where it is scant. */
  readonly deeperBy: Length;
  /** What the strips would measure with the seam wanted. */
  readonly expected: Length;
  readonly verdict: Notice<SeamNoteCode>;
}

/**
 * The real seam from a test: n strips cut `W` measure nW less 2(n − 1) seam allowances, so
 * seam = (nW − measured) / 2(n − 1). Three strips of 1 1/2 should measure 3 1/2.
 *
 * @throws EighthsError `out-of-range` where the strips measure more than they were cut, and those of
 *   single fields
 * @example
 * const { seam, verdict } = seamTest({ measured: '3 3/8' });
 * seam.toString(); // '9/32'
 * verdict.text; // 'The seam is 9/32, which is 1/32 deeper than 1/4: every strip shows less.'
 */
export function seamTest(input: SeamTestInput): SeamTest {
  checkFields(input, '', ['measured', 'strip', 'strips', 'wanted']);
  const { strip: stripInput = '1 1/2', strips = 3, wanted: wantedInput = '1/4' } = input;
  const measured = lengthField(input.measured ?? missing('measured'), 'measured');
  const strip = lengthField(stripInput, 'strip');
  const count = countField(strips, 'strips', 2, 12);
  const wanted = lengthField(wantedInput, 'wanted', 'zero or more');
  const cut = strip.times(count);
  if (measured.compareTo(cut) > 0) {
    fail(
      'out-of-range',
      'measured',
      { value: measured, least: length(0), most: cut },
      'Strips that were cut {most} in all cannot measure {value} when they are sewn. Measure across all of them, pressed flat.',
    );
  }
  const allowances = 2 * (count - 1);
  const seam = cut.minus(measured).dividedBy(allowances);
  const deeperBy = seam.minus(wanted);
  const sign = deeperBy.sign();
  const code = sign === 0 ? 'seam-true' : sign > 0 ? 'seam-deep' : 'seam-scant';
  return {
    seam,
    deeperBy,
    expected: cut.minus(wanted.times(allowances)),
    verdict: notice(seamSentences, code, { seam, by: absolute(deeperBy), wanted }),
  };
}
