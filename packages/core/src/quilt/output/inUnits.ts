import { logCabinSentences } from '../../block/sentences.js';
import { tableSentences } from '../../block/tableSentences.js';
import { fillSentence, type SentenceValue } from '../../errors/sentence.js';
import type { CuttingPlan } from '../../fabric/plan.js';
import { cuttingSentences } from '../../fabric/sentences.js';
import { cuttingStepText } from '../../fabric/steps.js';
import type { Notice } from '../../plan/notice.js';
import { unitSentences } from '../../unit/sentences/all.js';
import { backingSentences } from '../backing/sentences.js';
import { bindingSentences } from '../binding/sentences.js';
import { borderSentences } from '../borders/sentences.js';
import { kitSentences } from '../kits/sentences.js';
import { layoutSentences } from '../layout/sentences.js';
import { patternSentences } from '../pattern/sentences.js';
import type { Writing } from './writing.js';

/** Two rooms may have one code for sentences of their own: the text tells which was filled. */
const TABLES: readonly Readonly<Record<string, string>>[] = [
  patternSentences,
  kitSentences,
  layoutSentences,
  borderSentences,
  bindingSentences,
  backingSentences,
  logCabinSentences,
  tableSentences,
  unitSentences,
  cuttingSentences,
];

/**
 * What a plan says, its lengths in the document's units.
 *
 * @param names what people call the fabrics that it speaks of, by their ids.
 */
export function inUnits(
  { code, values, text }: Notice<string>,
  writing: Writing,
  names: ReadonlyMap<string, string> = new Map(),
): string {
  const template = TABLES.map((sentences) => sentences[code]).find(
    (each) => each !== undefined && fillSentence(each, values) === text,
  );
  if (template === undefined) return text;
  return fillSentence(template, values, (value, name) =>
    name === 'fabric' ? (names.get(String(value)) ?? String(value)) : writing.value(value),
  );
}

/** The cuts of a fabric's plan, in words. */
export const cuttingTexts = (
  { steps, width }: Pick<CuttingPlan, 'steps' | 'width'>,
  writing: Writing,
): readonly string[] =>
  steps.map(({ code, values }) => {
    const { strips, width: strip, count1, length1, count2 } = values;
    const whole =
      count1 === 1 && count2 === undefined && isLength(length1) && width.equals(length1.toJSON());
    // A strip that is one piece, such as binding, is not subcut.
    return whole && strip !== undefined
      ? `Cut ${strips === 1 ? '1 strip' : `${strips} strips`} ${writing.value(strip)} by the width of fabric.`
      : cuttingStepText(code, values, undefined, writing.value);
  });

const isLength = (value: SentenceValue | undefined): value is { toJSON(): string } =>
  typeof value === 'object' && 'toJSON' in value;
