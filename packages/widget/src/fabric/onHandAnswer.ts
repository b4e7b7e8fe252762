import { html, nothing, type TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';
import { onHandLayout } from './layouts.js';
import { missingList, warningList } from './notes.js';
import type { OnHandAnswer } from './solving.js';
import { stepList } from './stepList.js';

/** What fabric on hand gives of the pieces, and of the list as a whole. */
function summary({ cut, pieces, complete, sets }: OnHandAnswer, voice: Voice): TemplateResult {
  const all = pieces.reduce((sum, { count }) => sum + count, 0);
  const done = cut.reduce((sum, count) => sum + count, 0);
  const { blocks, bound, proven } = sets;
  return html`<p
      .textContent=${voice.say(proven ? 'sets' : 'setsUnproven', { sets: blocks, bound })}
    ></p>
    ${complete ? nothing : html`<p .textContent=${voice.say('handSome', { cut: done, pieces: all })}></p>`}`;
}

/** What can be cut from fabric on hand, how, and what is still missing. */
export function onHandAnswer(
  fabric: string | undefined,
  answer: OnHandAnswer,
  rows: readonly number[],
  voice: Voice,
): TemplateResult {
  const headline = fabric === undefined ? 'handAll' : 'handAllFabric';
  const doubts = answer.warnings.filter(({ code }) => code !== 'not-cut');
  return html`${
    answer.complete
      ? html`<p
          class="headline"
          part="headline"
          .textContent=${voice.say(headline, { fabric: fabric ?? '' })}
        ></p>`
      : nothing
  }
  ${summary(answer, voice)}
  ${answer.complete ? nothing : missingList(answer.missing, rows, voice)}
  ${warningList(doubts, voice)}
  ${answer.steps.length === 0 ? nothing : stepList(answer.steps, 1, voice)}
  ${onHandLayout(answer, rows, voice)}`;
}
