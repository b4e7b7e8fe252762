import { fillSentence, type SentenceValue, type SentenceValues } from '../errors/sentence.js';
import type { Step } from '../plan/notice.js';
import type { Strip } from './plan.js';
import { type CuttingStepCode, cuttingSentences } from './sentences.js';

/** The cuts in order, widest strips first, so that a slip leaves fabric for narrower ones. */
export const cuttingSteps = (
  strips: readonly Strip[],
  layers: number,
): readonly Step<CuttingStepCode>[] => [
  step('square-up', {}),
  ...strips.map(({ width, count, cuts }) => {
    const values: Record<string, SentenceValue> = { strips: count, width };
    cuts.forEach((cut, i) => {
      values[`count${i + 1}`] = cut.count;
      values[`length${i + 1}`] = cut.length;
    });
    if (count === 1) return step('cut-strip', values);
    return layers === 1
      ? step('cut-strips', values)
      : step('stack-strips', { ...values, layers: Math.min(layers, count) });
  }),
];

const step = (code: CuttingStepCode, values: SentenceValues): Step<CuttingStepCode> => ({
  code,
  values,
  text: cuttingStepText(code, values),
});

/**
 * A step in words: its sentence, and in it the pieces that are subcut (`count1` of `length1`,
 * `count2` of `length2`, and so on).
 *
 * @param sentences another language's, by default the English ones.
 * @param writeValue how a value is written; by default lengths stand in inches, exactly.
 */
export function cuttingStepText(
  code: CuttingStepCode,
  values: SentenceValues,
  sentences: typeof cuttingSentences = cuttingSentences,
  writeValue?: (value: SentenceValue, name: string) => string,
): string {
  const subcuts: string[] = [];
  for (let i = 1; ; i += 1) {
    const [count, length] = [values[`count${i}`], values[`length${i}`]];
    if (count === undefined || length === undefined) break;
    const sentence = sentences[count === 1 ? 'subcut-one' : 'subcut-several'];
    subcuts.push(fillSentence(sentence, { count, length }, writeValue));
  }
  // What is subcut is filled in last: it is worded already.
  return fillSentence(sentences[code], values, writeValue).replace('{subcuts}', () =>
    subcuts.join(', '),
  );
}
