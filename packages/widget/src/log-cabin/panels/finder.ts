import { type EighthsError, type LogCabinFindings, type LogCabinFit, length } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { choiceField, countField, lengthField, named, wordField } from '../../base/fields.js';
import { selectField } from '../../base/selectField.js';
import type { MessageName } from '../../messages/messages.js';
import type { GivenSettings } from '../defaults.js';
import { fieldNamed } from '../fields.js';
import { textsOfSpec } from '../fill.js';
import { commonOf } from './common.js';
import {
  type FinderField,
  type FinderModel,
  type FinderTexts,
  finderModel,
  GRIDS,
  leastTrim,
  MANY,
  SOME,
  USUAL_GRID,
  usualFinder,
} from './finderModel.js';
import { fitTable } from './fitTable.js';
import { panelForm, textsOf } from './form.js';
import { Memory } from './memory.js';
import type { BlocklessContext, LogCabinPanel } from './panel.js';
import { action, notes, number, saidNotice } from './said.js';

const found = new Memory<FinderModel>();

/** The element’s own input that says the same. */
const sameField = (field: string) => fieldNamed(field.replace(/^find-/, ''));

/** What is trimmed off the block above at least: what is found is sewn as it is. */
function leastTrimOf({ block, voice }: BlocklessContext): string {
  const least = block && leastTrim(block.plan);
  return least === undefined || least.sign() <= 0 ? '' : voice.measures.typed(least);
}

function textsIn(context: BlocklessContext): FinderTexts {
  const { settings, finished, state, voice, isLocked } = context;
  const { measures } = voice;
  const fixed = (field: keyof typeof settings) => (isLocked(field) ? settings[field] : '');
  const texts = textsOf(
    usualFinder(settings, { finished, leastTrim: leastTrimOf(context) }, measures.units, fixed),
    state.texts,
  );
  // A grid of the other measure is none of these.
  const { units } = measures;
  return GRIDS[units].includes(texts['find-grid'])
    ? texts
    : { ...texts, 'find-grid': USUAL_GRID[units] };
}

function finderForm(
  texts: FinderTexts,
  faults: ReadonlyMap<FinderField, EighthsError>,
  context: BlocklessContext,
): TemplateResult {
  const { voice, state } = context;
  const form = panelForm<FinderField>(texts, faults, context, sameField);
  const label = voice.say;
  const kind = texts['find-kind'];
  const input = (field: FinderField, name: MessageName) =>
    lengthField(field, { label: label(name), placeholder: label('any') }, form);
  const limits: readonly (readonly [FinderField, MessageName])[] = [
    ['find-center', 'findCenter'],
    ...(kind === 'curved' ? [] : [['find-log', 'findLog'] as const]),
    ...(kind === 'plain'
      ? []
      : [['find-wide', 'findWide'] as const, ['find-narrow', 'findNarrow'] as const]),
  ];
  const strips: readonly (readonly [FinderField, MessageName])[] = [
    ...(kind === 'curved' ? [] : [['find-strips-log', 'strips-log'] as const]),
    ...(kind === 'plain'
      ? []
      : [
          ['find-strips-wide', 'strips-wide'] as const,
          ['find-strips-narrow', 'strips-narrow'] as const,
        ]),
  ];
  return html`<div class="fields" role="group" aria-label=${label('panelFinder')}>
    ${choiceField(
      'find-kind',
      label('kind'),
      named(voice, ['plain', 'plain'], ['curved', 'curved'], ['any', 'findBoth']),
      {
        isLocked: form.isLocked,
        chosen: kind,
        choose: (value) => state.type({ 'find-kind': value }, false),
      },
    )}
    ${input('find-finished', 'findFinished')}
    ${countField('find-rounds', { label: label('rounds') }, form)}
    ${
      kind === 'plain'
        ? nothing
        : wordField(
            'find-wish-ratio',
            { label: label('findWishRatio'), placeholder: label('any') },
            form,
          )
    }
    ${input('find-wish-center', 'findWishCenter')}
    ${limits.map(([field, name]) => input(field, name))}
    ${strips.map(([field, name]) => input(field, name))}
    ${lengthField('find-least-trim', { label: label('findLeastTrim'), placeholder: '0' }, form)}
    ${selectField(
      'find-grid',
      label('findGrid'),
      GRIDS[voice.measures.units].map((grid) => [grid, grid]),
      {
        isLocked: form.isLocked,
        chosen: texts['find-grid'],
        choose: (grid) => state.type({ 'find-grid': grid }, false),
      },
    )}
  </div>`;
}

/** The texts of a block’s inputs, and the grid where the block above stands on a coarser one. */
function textsOfFit(
  { spec, finished }: LogCabinFit,
  grid: string,
  { voice }: BlocklessContext,
): GivenSettings {
  const texts = textsOfSpec(spec, finished, voice.measures);
  return length(grid).isOnGrid(voice.measures.step) ? texts : { ...texts, grid };
}

function answer(
  { findings, sizes }: FinderModel,
  texts: FinderTexts,
  context: BlocklessContext,
): TemplateResult | typeof nothing {
  const { voice, state, fill } = context;
  const use = (fit: LogCabinFit): void => fill(textsOfFit(fit, texts['find-grid'], context));
  if (sizes !== undefined) {
    if (sizes.length === 0) return html`<p .textContent=${voice.say('noSize')}></p>`;
    return fitTable(
      {
        caption: voice.say('reachable'),
        fits: sizes.map(({ best }) => best),
        use,
        sizes: true,
        strips: true,
        more: {
          name: voice.say('fitWays'),
          cell: (index) => html`<td class="figure">${number(sizes[index]?.ways ?? 0)}</td>`,
        },
      },
      context,
    );
  }
  if (findings === undefined) return nothing;
  const { fits, closest, relax, order, leftOut, warnings } = findings;
  const table = (caption: MessageName, rows: readonly LogCabinFit[]) =>
    fitTable(
      { caption: voice.say(caption), fits: rows, use, sizes: isRange(rows), strips: true },
      context,
    );
  if (fits.length === 0) {
    return html`<p .textContent=${voice.say('noFit')}></p>
      ${notes(relax, context)} ${closest.length === 0 ? nothing : table('closestFits', closest)}`;
  }
  const some = texts['find-most'] === SOME && leftOut > 0;
  return html`${table('fits', fits)} ${notes(warnings, context)}
    ${
      some
        ? html`<p>
            ${action(voice.say('showAllFits'), () => state.type({ 'find-most': MANY }, false))}
          </p>`
        : nothing
    }
    <div class="minor">
      <p .textContent=${voice.say('fitOrder')}></p>
      ${orderList(order, context)}
    </div>`;
}

const orderList = (order: LogCabinFindings['order'], context: BlocklessContext): TemplateResult =>
  html`<ol class="order">${order.map((each) => html`<li>${saidNotice(each, context)}</li>`)}</ol>`;

const isRange = ([first, ...rest]: readonly LogCabinFit[]): boolean =>
  first !== undefined && rest.some(({ finished }) => !finished.equals(first.finished));

/** Every block that comes out exactly; one that is chosen fills the inputs. */
export const finder: LogCabinPanel = {
  name: 'finder',
  summary: 'panelFinder',
  needsPlan: false,
  render: (context) => {
    const { voice, state } = context;
    const texts = textsIn(context);
    const common = commonOf(context);
    const model = found.of(state, [texts, common, voice.measures.units], () =>
      finderModel(texts, voice.measures, common),
    );
    return html`${finderForm(texts, model.faults, context)} ${answer(model, texts, context)}`;
  },
};
