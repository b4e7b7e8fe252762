import type { EighthsError } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { choiceField, countField, lengthField, named } from '../../base/fields.js';
import type { MessageName } from '../../messages/messages.js';
import {
  type CompareModel,
  compareModel,
  keptAsOther,
  type OtherField,
  type OtherTexts,
  otherFields,
  settingsOfOther,
  usualOther,
} from './compareModel.js';
import { comparisonTable, fabricsOf } from './comparisonTable.js';
import { anyLocked, panelForm, textsOf } from './form.js';
import { Memory } from './memory.js';
import type { BlocklessContext, LogCabinPanel } from './panel.js';
import { action } from './said.js';
import { smallPlan } from './smallBlock.js';

const known = new Memory<CompareModel>();

function otherForm(
  texts: OtherTexts,
  faults: ReadonlyMap<string, EighthsError>,
  context: BlocklessContext,
): TemplateResult {
  const { voice, state } = context;
  const form = panelForm<OtherField>(texts, faults, context);
  const input = (field: OtherField, name: MessageName, placeholder: MessageName) =>
    lengthField(field, { label: voice.say(name), placeholder: voice.say(placeholder) }, form);
  const choice = (
    field: OtherField,
    name: MessageName,
    ...choices: readonly (readonly [string, MessageName])[]
  ) =>
    choiceField(field, voice.say(name), named(voice, ...choices), {
      isLocked: form.isLocked,
      chosen: texts[field],
      choose: (value) => state.type({ [field]: value }, false),
    });
  const curved = texts['other-kind'] === 'curved';
  return html`<div class="fields" role="group" aria-label=${voice.say('otherBlock')}>
    ${choice('other-kind', 'kind', ['plain', 'plain'], ['curved', 'curved'])}
    ${choice('other-layout', 'layout', ['spiral', 'spiral'], ['courthouse', 'courthouse'])}
    ${
      curved
        ? choice('other-first', 'first', ['wide', 'first-wide'], ['narrow', 'first-narrow'])
        : nothing
    }
    ${input('other-finished', 'finished', 'solved')}
    ${countField('other-rounds', { label: voice.say('rounds') }, form)}
    ${
      curved
        ? [
            input('other-wide', 'wide', 'none'),
            input('other-narrow', 'narrow', 'none'),
            input('other-strips-wide', 'strips-wide', 'usual'),
            input('other-strips-narrow', 'strips-narrow', 'usual'),
          ]
        : [input('other-log', 'log', 'none'), input('other-strips-log', 'strips-log', 'usual')]
    }
    ${input('other-center', 'center', 'solved')}
  </div>`;
}

/** Two variations: drawings, sizes, what each fabric shows, the curve, fabric and cuts. */
export const compare: LogCabinPanel = {
  name: 'compare',
  summary: 'panelCompare',
  needsPlan: false,
  render: (context) => {
    const { voice, state, settings, fill } = context;
    const texts = textsOf<OtherField>(usualOther(settings), state.texts);
    const { both, faults } = known.of(state, [settings, texts, voice.measures.units], () =>
      compareModel(settings, texts, voice.measures),
    );
    const swap = (): void => {
      state.type(keptAsOther(settings), false);
      fill(settingsOfOther(texts));
    };
    return html`${otherForm(texts, faults, context)}
      <div class="actions">
        ${action(voice.say('keepBlock'), () => state.type(keptAsOther(settings), false))}
        ${anyLocked(otherFields, context) ? nothing : action(voice.say('swapBlocks'), swap)}
      </div>
      ${
        both === undefined
          ? nothing
          : html`<div class="pair">${both.map(({ plan }) => smallPlan(plan, context, fabricsOf(both)))}</div>
              ${comparisonTable(both, context)}`
      }`;
  },
};
