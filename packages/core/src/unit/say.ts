import type { SentenceValue, SentenceValues } from '../errors/sentence.js';
import { Length } from '../length/length.js';
import {
  type Notice,
  notice,
  type Sentences,
  type Step,
  warningsFrom as warnings,
} from '../plan/notice.js';
import type { UnitSentence } from './sentences/all.js';

/** Fractions finer than this, and roots, are written as decimals in sentences: nobody reads `5√2`. */
const FINEST = 1000n;

/** A length as it stands in a sentence; `values` hold it exactly. */
function readable(length: Length): string {
  const fraction = length.toFraction();
  const plain = fraction !== undefined && fraction.d <= FINEST;
  return plain ? length.toString() : `about ${length.toNumber().toFixed(3)}`;
}

function write(value: SentenceValue): string {
  if (value instanceof Length) return readable(value);
  if (typeof value !== 'object') return String(value);
  if (!('width' in value)) return value.toJSON();
  const [width, height] = [write(value.width), write(value.height)];
  return width === height ? width : `${width} by ${height}`;
}

/** A notice whose lengths stand as people read them. */
export const inWords = <Code extends string>(
  sentences: Sentences<Code>,
  code: Code,
  values: SentenceValues,
): Notice<Code> => notice(sentences, code, values, write);

/** Says steps from one table of sentences: each unit brings only the tables that it speaks from. */
export const stepsFrom =
  <Code extends UnitSentence>(sentences: Sentences<Code>) =>
  (code: Code, values: SentenceValues = {}): Step<Code> =>
    inWords(sentences, code, values);

/** The same for warnings. */
export const warningsFrom = <Code extends string>(sentences: Sentences<Code>) =>
  warnings(sentences, write);
