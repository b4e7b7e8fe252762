import {
  type ArcFit,
  type CurvedLogCabinSpec,
  type EighthsError,
  fitArc,
  type Length,
  type LengthInput,
  type LogCabin,
  logCabinCurve,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { countField, lengthField } from '../../base/fields.js';
import { measure } from '../../base/measure.js';
import type { Measures, Units } from '../../base/measures.js';
import { attributeName } from '../../base/names.js';
import { sentence } from '../../base/sentence.js';
import { SettingsReader } from '../../base/settingsReader.js';
import { type Column, measuresTable, rowHead } from '../../base/table.js';
import type { MessageName } from '../../messages/messages.js';
import { fieldNamed } from '../fields.js';
import { textsOfSpec } from '../fill.js';
import { type Common, commonOf } from './common.js';
import { offArc, radius } from './figures.js';
import { anyLocked, panelForm, textsOf } from './form.js';
import { readLimits } from './limits.js';
import { Memory } from './memory.js';
import type { LogCabinPanel, PanelContext } from './panel.js';
import { action, measures } from './said.js';
import { smallBlock } from './smallBlock.js';

const arcFields = [
  'arc-finished',
  'arc-rounds',
  'arc-center',
  'arc-strips-wide',
  'arc-strips-narrow',
  'arc-least-trim',
] as const;
type ArcField = (typeof arcFields)[number];
type Texts = Readonly<Record<ArcField, string>>;

/** The widths nearest to an arc, or what is wrong with what was typed. */
export interface ArcModel {
  readonly arc?: ArcFit;
  readonly finished?: Length;
  readonly faults: ReadonlyMap<ArcField, EighthsError>;
}

function fieldOf({ field }: EighthsError): ArcField {
  const name = `arc-${attributeName(field)}`;
  // A strip that is missing is spoken of as a limit of its logs.
  const strip = `arc-strips-${attributeName(field)}`;
  return arcFields.find((known) => known === name || known === strip) ?? 'arc-finished';
}

/** What the grid of an arc is: millimeters, or eighths. */
const gridOf = ({ units }: Measures): string => (units === 'metric' ? '1 mm' : '1/8');

export function arcModel(texts: Texts, measures: Measures, common: Common): ArcModel {
  const reader = new SettingsReader<ArcField>(texts, measures);
  const finished = reader.needed('arc-finished');
  const rounds = reader.count('arc-rounds', 1, 12);
  const center = reader.read('arc-center', (text) => readLimits(text, measures.read));
  const wide = reader.needed('arc-strips-wide');
  const narrow = reader.needed('arc-strips-narrow');
  const leastTrim = reader.length('arc-least-trim');
  const { faults } = reader;
  if (faults.size > 0) return { faults };
  if (finished === undefined || wide === undefined || narrow === undefined) return { faults };
  const { layout, ...rest } = common;
  const request = {
    ...rest,
    ...(layout === 'courthouse' && { layout }),
    finished,
    rounds: rounds ?? 1,
    center: center ?? {},
    strips: { wide, narrow },
    grid: gridOf(measures),
    ...(leastTrim && { leastTrim }),
  };
  const arc = reader.attempt(() => fitArc(request), fieldOf);
  return { ...(arc && { arc }), finished, faults };
}

const known = new Memory<ArcModel>();

/** For a block that is plain so far. */
const USUAL_STRIPS: Readonly<Record<Units, Readonly<Record<'wide' | 'narrow', string>>>> = {
  inches: { wide: '2', narrow: '1 1/2' },
  metric: { wide: '5', narrow: '3.5' },
};

function usual({ settings, finished, plan, voice }: PanelContext): Texts {
  const { typed } = voice.measures;
  const strip = (kind: 'wide' | 'narrow'): string => {
    const given = settings[`strips-${kind}`];
    if (given !== '') return given;
    const log = plan.logs.find((each) => each.kind === kind);
    return log === undefined ? USUAL_STRIPS[voice.measures.units][kind] : typed(log.cut.width);
  };
  return {
    'arc-finished': finished,
    'arc-rounds': settings.rounds,
    'arc-center': typed(plan.center.finished.width),
    'arc-strips-wide': strip('wide'),
    'arc-strips-narrow': strip('narrow'),
    'arc-least-trim': '',
  };
}

/** How far the farthest corner of the block above lies from the circle nearest to it. */
function ownDeviation(plan: LogCabin): number | undefined {
  const curved = plan.logs.some(({ kind }) => kind === 'wide');
  const { width, height } = plan.center.finished;
  return curved && width.equals(height) ? logCabinCurve(plan).leastGreatest?.greatest : undefined;
}

function widthTable(arc: ArcFit, context: PanelContext): TemplateResult {
  const { voice } = context;
  const rows = arc.wide.map((wide, index) => ({ wide, index }));
  type Row = (typeof rows)[number];
  const columns: readonly Column<Row>[] = [
    { name: voice.say('round'), words: true, cell: ({ index }) => rowHead(String(index + 1)) },
    {
      name: voice.say('fitWideNarrow'),
      cell: ({ wide, index }) => html`<td class="figure">
        ${measures([wide, arc.narrow[index] ?? 0], context)}
      </td>`,
    },
    {
      name: voice.say('fitTrims'),
      cell: ({ index }) => {
        const { wide = [], narrow = [] } = arc.trimsOff;
        return html`<td class="figure">
          ${measures([wide[index] ?? 0, narrow[index] ?? 0], context)}
        </td>`;
      },
    },
    {
      name: voice.say('arcOff'),
      cell: ({ index }) => html`<td class="figure">
        ${offArc(arc.corners[index + 1]?.deviation ?? 0, voice)}
      </td>`,
    },
  ];
  return measuresTable(voice.say('arcWidths'), columns, [{ rows }], voice);
}

function answer(arc: ArcFit, finished: LengthInput, context: PanelContext): TemplateResult {
  const { voice, plan, fill } = context;
  const own = ownDeviation(plan);
  const center = measure(arc.center, voice);
  const greatest = offArc(arc.greatestDeviation, voice);
  const spec: CurvedLogCabinSpec = arc.spec;
  return html`<div class="beside">
    ${smallBlock(spec, context)}
    <div>
      ${widthTable(arc, context)}
      <p>
        ${
          arc.radius === undefined
            ? sentence('arcStraight', { center }, voice)
            : sentence('arcRadius', { center, radius: radius(arc.radius, voice) }, voice)
        }
        ${
          own === undefined
            ? sentence('arcGreatestAlone', { arc: greatest }, voice)
            : sentence('arcGreatest', { arc: greatest, own: offArc(own, voice) }, voice)
        }
      </p>
      ${
        anyLocked(['kind', 'wide', 'narrow'], context)
          ? nothing
          : html`<p>
              ${action(voice.say('useArc'), () => fill(textsOfSpec(spec, finished, voice.measures)))}
            </p>`
      }
    </div>
  </div>`;
}

/** Widths round by round, so that the line of color follows an arc. */
export const arc: LogCabinPanel = {
  name: 'arc',
  summary: 'panelArc',
  needsPlan: true,
  render: (context) => {
    const { voice, state } = context;
    const texts = textsOf<ArcField>(usual(context), state.texts);
    const common = commonOf(context);
    const model = known.of(state, [texts, common, voice.measures.units], () =>
      arcModel(texts, voice.measures, common),
    );
    const form = panelForm<ArcField>(texts, model.faults, context, (field) =>
      fieldNamed(field.replace(/^arc-/, '')),
    );
    const input = (field: ArcField, name: MessageName, placeholder?: string) =>
      lengthField(
        field,
        { label: voice.say(name), ...(placeholder !== undefined && { placeholder }) },
        form,
      );
    return html`<p .textContent=${voice.say('arcAbout')}></p>
      <div class="fields" role="group" aria-label=${voice.say('panelArc')}>
        ${input('arc-finished', 'arcFinished')}
        ${countField('arc-rounds', { label: voice.say('rounds') }, form)}
        ${input('arc-center', 'findCenter', voice.say('any'))}
        ${input('arc-strips-wide', 'strips-wide')} ${input('arc-strips-narrow', 'strips-narrow')}
        ${input('arc-least-trim', 'findLeastTrim', '0')}
      </div>
      ${
        model.arc === undefined || model.finished === undefined
          ? nothing
          : answer(model.arc, model.finished, context)
      }`;
  },
};
