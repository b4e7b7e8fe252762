import type { Painting } from '@eighths/core';
import { html, nothing } from 'lit';
import { countField } from '../../base/fields.js';
import { rectangleMeasure } from '../../base/measure.js';
import { selectField } from '../../base/selectField.js';
import { sentence } from '../../base/sentence.js';
import { paintingView } from '../../drawing/drawingView.js';
import { panelForm, textsOf } from './form.js';
import { Memory } from './memory.js';
import type { LogCabinPanel, PanelContext } from './panel.js';
import { paintedTop } from './quiltTop.js';
import { action, number } from './said.js';
import { settingsFor, type TopField, type TopModel, topModel, usualTop } from './topModel.js';

interface Painted extends TopModel {
  readonly painting?: Painting;
}

const known = new Memory<Painted>();

function quiltTop({ top, painting }: Painted, context: PanelContext) {
  const { voice, isLocked, fill } = context;
  if (top === undefined || painting === undefined) return nothing;
  const { drawing, blocks, finished } = top;
  const places = {
    blocks: number(blocks),
    finished: rectangleMeasure(finished.width, finished.height, voice),
  };
  return html`<p>${sentence('quiltTop', places, voice)}</p>
    <figure class="top">${paintingView(painting, drawing, voice)}</figure>
    <p class="minor" .textContent=${voice.say('turnsWarning')}></p>
    ${
      isLocked('blocks')
        ? nothing
        : html`<p>
            ${action(voice.say('useBlocks', { blocks }), () => fill({ blocks: String(blocks) }))}
          </p>`
    }`;
}

/** A quilt top of the real blocks, turned as in a traditional setting. */
export const settings: LogCabinPanel = {
  name: 'settings',
  summary: 'panelSettings',
  needsPlan: true,
  render: (context) => {
    const { voice, state, plan, settings: own, hand } = context;
    const texts = textsOf<TopField>(usualTop, state.texts);
    const model = known.of(state, [texts, own, hand, voice.measures.units], () => {
      const made = topModel(texts, plan, voice.measures);
      return made.top === undefined
        ? made
        : { ...made, painting: paintedTop(made.top.drawing, voice) };
    });
    const form = panelForm<TopField>(texts, model.faults, context);
    return html`<div class="fields" role="group" aria-label=${voice.say('panelSettings')}>
        ${selectField(
          'top-setting',
          voice.say('setting'),
          settingsFor(plan).map((setting) => [setting, voice.word(setting)]),
          {
            isLocked: form.isLocked,
            chosen: model.setting,
            choose: (setting) => state.type({ 'top-setting': setting }, false),
          },
        )}
        ${countField('top-across', { label: voice.say('across') }, form)}
        ${countField('top-down', { label: voice.say('down') }, form)}
      </div>
      ${[...model.faults].map(([field, fault]) =>
        field === 'top-setting'
          ? html`<p class="error" .textContent=${voice.error(fault)}></p>`
          : nothing,
      )}
      ${quiltTop(model, context)}`;
  },
};
