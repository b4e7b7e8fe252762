import { fillSentence, type SentenceValue, type SentenceValues } from '../errors/sentence.js';
import type { Length } from '../length/length.js';
import type { Step } from '../plan/notice.js';
import type { Strip, StripCut } from './plan.js';
import { type CuttingStepCode, cuttingSentences } from './sentences.js';

/** The cuts in order, widest strips first, so that a slip leaves fabric for narrower ones. */
export const cuttingSteps = (
  strips: readonly Strip[],
  layers: number,
): readonly Step<CuttingStepCode>[] => [
  step('square-up', {}),
  ...strips.map((strip) => {
    const { width, count } = strip;
    const values = { strips: count, width, ...subcutValues(strip) };
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

/** What is subcut, numbered from 1 in the order of the cuts. */
function subcutValues({ cuts, ends = [] }: Strip): SentenceValues {
  const values: Record<string, SentenceValue> = {};
  let number = 0;
  const add = (kind: string, count: number, size: Length, extent: 'length' | 'width'): void => {
    number += 1;
    values[`${kind}${number}`] = count;
    values[`${extent}${number}`] = size;
  };
  const addCuts = (list: readonly StripCut[]): void => {
    for (const { length, count, turned } of list) {
      add('count', count, length, 'length');
      if (turned === true) values[`turned${number}`] = 1;
    }
  };
  addCuts(cuts);
  for (const end of ends) {
    add('ends', end.count, end.length, 'length');
    for (const row of end.rows) {
      add('rows', row.count, row.width, 'width');
      addCuts(row.cuts);
    }
  }
  return values;
}

/**
 * A step in words: its sentence, and in it what is subcut, numbered from 1: `count1` pieces of
 * `length1` (`turned1` where they lie turned), or `ends2` ends of `length2`, whose rows come next, or
 * `rows3` rows of `width3`, whose pieces come next.
 *
 * @param sentences another language's, by default the English ones.
 * @param writeValue how a value is written; by default lengths stand in inches, exactly.
 * @example
 * const { steps } = cuttingPlan({ width: 42, pieces: [{ width: 5, length: 5, count: 8 }] });
 * const { code, values } = steps[1];
 * cuttingStepText(code, values); // 'Cut 1 strip 5 by the width of fabric; from it subcut 8 pieces 5.'
 */
export function cuttingStepText(
  code: CuttingStepCode,
  values: SentenceValues,
  sentences: typeof cuttingSentences = cuttingSentences,
  writeValue?: (value: SentenceValue, name: string) => string,
): string {
  let number = 1;
  const value = (kind: string): SentenceValue | undefined => values[`${kind}${number}`];
  // Words that are filled in last are worded already.
  const filled = (sentence: string, own: SentenceValues, place: string, words: string): string =>
    fillSentence(sentence, own, writeValue).replace(place, () => words);
  const pieces = (): string[] => {
    const worded: string[] = [];
    for (;;) {
      const [count, length] = [value('count'), value('length')];
      if (count === undefined || length === undefined) return worded;
      const sentence = sentences[count === 1 ? 'subcut-one' : 'subcut-several'];
      const words = fillSentence(sentence, { count, length }, writeValue);
      const isTurned = value('turned') !== undefined;
      worded.push(isTurned ? filled(sentences['subcut-turned'], {}, '{subcut}', words) : words);
      number += 1;
    }
  };
  const rows = (): string[] => {
    const worded: string[] = [];
    for (;;) {
      const [count, width] = [value('rows'), value('width')];
      if (count === undefined || width === undefined) return worded;
      number += 1;
      const sentence = sentences[count === 1 ? 'subcut-row' : 'subcut-rows'];
      worded.push(filled(sentence, { count, width }, '{subcuts}', pieces().join(', ')));
    }
  };
  const subcuts = pieces();
  for (;;) {
    const [count, length] = [value('ends'), value('length')];
    if (count === undefined || length === undefined) break;
    number += 1;
    const sentence = sentences[count === 1 ? 'subcut-end' : 'subcut-ends'];
    subcuts.push(filled(sentence, { count, length }, '{rows}', rows().join(' + ')));
  }
  return filled(sentences[code], values, '{subcuts}', subcuts.join(', '));
}
