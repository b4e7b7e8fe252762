import { html, nothing, type TemplateResult } from 'lit';
import { rectangleMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import { precutLayout } from './layouts.js';
import { missingList, warningList } from './notes.js';
import type { FabricAnswer } from './solving.js';
import { stepList } from './stepList.js';

/** How many precuts are needed, in a line: `Fat quarters: 3`. */
export const precutsNeeded = (
  fabric: string | undefined,
  { kind, needed }: NonNullable<FabricAnswer['precuts']>,
  voice: Voice,
): string =>
  voice.say(fabric === undefined ? 'precutsNeeded' : 'precutsNeededFabric', {
    kind: voice.say(`precut-${kind}`),
    count: needed,
    fabric: fabric ?? '',
  });

/** How many precuts to buy, how each is cut, and what cannot be cut from them. */
export function precutAnswer(
  fabric: string | undefined,
  answer: NonNullable<FabricAnswer['precuts']>,
  rows: readonly number[],
  voice: Voice,
): TemplateResult {
  const { packs, packOf, spare, usable, optimal, unfit, rectangles, steps, warnings } = answer;
  const size = rectangleMeasure(usable.width, usable.length, voice);
  const doubts = warnings.filter(({ code }) => code !== 'does-not-fit');
  return html`<p class="headline" part="headline">
      <span .textContent=${precutsNeeded(fabric, answer, voice)}></span>
      ${
        packOf === 1
          ? nothing
          : html`<span
              class="minor"
              .textContent=${voice.say('packs', { packs, packOf, spare })}
            ></span>`
      }
    </p>
    <p>
      ${sentence('usableSize', { size }, voice)}
      ${optimal && answer.needed > 0 ? sentence('precutsProven', {}, voice) : nothing}
    </p>
    ${
      unfit.length === 0
        ? nothing
        : html`<p .textContent=${voice.say('unfit')}></p>
          ${missingList(unfit, rows, voice)}`
    }
    ${warningList(doubts, voice)} ${steps.length === 0 ? nothing : stepList(steps, 1, voice)}
    ${precutLayout(rectangles, rows, voice)}`;
}
