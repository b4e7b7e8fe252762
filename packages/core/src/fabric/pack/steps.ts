import { fillSentence, type SentenceValue, type SentenceValues } from '../../errors/sentence.js';
import type { Length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import type { Step } from '../../plan/notice.js';
import { type Item, lying, type Parts } from './rectangles.js';
import { type PackStepCode, packSentences } from './sentences.js';

/** The cuts of a rectangle in order: a rectangle is cut apart before its parts are. */
export function packSteps(
  rectangle: { readonly width: Length; readonly length: Length; readonly count: number },
  items: readonly Item[],
  unit: Length,
  root: Parts,
): readonly Step<PackStepCode>[] {
  const { width, length: height, count } = rectangle;
  const steps = [step(count === 1 ? 'take-one' : 'take-several', { width, height, count })];
  const visit = (part: Parts): void => {
    const size =
      part === root
        ? { width, height }
        : { width: unit.times(part.width), height: unit.times(part.height) };
    if (part.kind === 'pieces') {
      const pieces = part.columns * part.rows;
      if (pieces === 1) return;
      const lies = lying(entryAt(items, part.item), part.turned);
      const [across, down] = [unit.times(lies.width), unit.times(lies.height)];
      steps.push(step('cut-pieces', { ...size, count: pieces, across, down }));
    } else if (part.kind === 'cut') {
      const values: Record<string, SentenceValue> = { ...size };
      const cut = part.parts.filter(({ kind }) => kind !== 'left');
      cut.forEach((each, i) => {
        values[`part${i + 1}`] = unit.times(part.along === 'across' ? each.width : each.height);
      });
      steps.push(step(part.along === 'across' ? 'cut-columns' : 'cut-rows', values));
      for (const each of cut) visit(each);
    }
  };
  visit(root);
  return steps;
}

const step = (code: PackStepCode, values: SentenceValues): Step<PackStepCode> => ({
  code,
  values,
  text: packStepText(code, values),
});

/**
 * A step of cutting a rectangle up, in words: its sentence, and in it what the parts measure
 * (`part1`, `part2`, and so on).
 *
 * @param sentences another language's, by default the English ones.
 * @param writeValue how a value is written; by default lengths stand in inches, exactly.
 * @example
 * const values = { width: 20, height: 17, part1: 5, part2: 4 };
 * packStepText('cut-rows', values); // 'Cut the rectangle 20 by 17 across, from the top: 5, 4.'
 */
export function packStepText(
  code: PackStepCode,
  values: SentenceValues,
  sentences: typeof packSentences = packSentences,
  writeValue?: (value: SentenceValue, name: string) => string,
): string {
  const parts: string[] = [];
  for (let i = 1; ; i += 1) {
    const part = values[`part${i}`];
    if (part === undefined) break;
    parts.push(fillSentence('{part}', { part }, writeValue));
  }
  return fillSentence(sentences[code], values, writeValue).replace('{parts}', () =>
    parts.join(', '),
  );
}
