import {
  type EighthsError,
  type LogCabinFindings,
  type LogCabinFit,
  type LogCabinSpec,
  resizeLogCabin,
  type SideBySide,
  sizesSideBySide,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { lengthField } from '../../base/fields.js';
import { measure } from '../../base/measure.js';
import type { Measures } from '../../base/measures.js';
import { sentence } from '../../base/sentence.js';
import { SettingsReader } from '../../base/settingsReader.js';
import { textsOfSpec } from '../fill.js';
import { type FitTable, fitTable } from './fitTable.js';
import { anyLocked, panelForm, textsOf } from './form.js';
import { Memory } from './memory.js';
import type { LogCabinPanel, PanelContext } from './panel.js';
import { notes, number } from './said.js';

const FIELD = 'resize-to';
type Texts = Readonly<Record<typeof FIELD, string>>;

/** The block at the size wished for, and the sizes that stand beside it. */
export interface ResizeModel {
  readonly findings?: LogCabinFindings;
  readonly beside: readonly SideBySide[];
  readonly faults: ReadonlyMap<typeof FIELD, EighthsError>;
}

export function resizeModel(texts: Texts, spec: LogCabinSpec, measures: Measures): ResizeModel {
  const reader = new SettingsReader<typeof FIELD>(texts, measures);
  const size = reader.length(FIELD);
  const findings =
    size &&
    reader.attempt(
      () => resizeLogCabin(spec, size, { most: 5 }),
      () => FIELD,
    );
  const beside =
    reader.attempt(
      () => sizesSideBySide(spec),
      () => FIELD,
    ) ?? [];
  return { ...(findings && { findings }), beside, faults: reader.faults };
}

const known = new Memory<ResizeModel>();

const USED = ['finished', 'rounds', 'kind', 'log', 'wide', 'narrow'] as const;

/** What choosing a block does, where the page leaves its sizes open. */
function choosing(context: PanelContext): Pick<FitTable, 'use'> {
  return anyLocked(USED, context) ? {} : { use: (fit) => useFit(fit, context) };
}

/** The block at its new size, trimmed as before from strips that are cut a little wide. */
function useFit({ spec, finished }: LogCabinFit, { voice, fill, plan }: PanelContext): void {
  const { trimAfter } = plan;
  const after = trimAfter === 'never' ? '' : trimAfter;
  fill({ ...textsOfSpec(spec, finished, voice.measures), 'trim-after': after });
}

function besideTable(beside: readonly SideBySide[], context: PanelContext): TemplateResult {
  const { voice } = context;
  return fitTable(
    {
      caption: voice.say('sideBySide'),
      fits: beside.map(({ fit }) => fit),
      ...choosing(context),
      sizes: true,
      strips: false,
      more: {
        name: voice.say('rowOf'),
        cell: (index) => {
          const { own = 0, others = 0, span = 0 } = beside[index] ?? {};
          const places = {
            own: number(own),
            others: number(others),
            span: measure(span, voice, voice.measures.bare),
          };
          return html`<td class="figure">${sentence('rowMeets', places, voice)}</td>`;
        },
      },
    },
    context,
  );
}

/** The same look at another size, and the sizes of one design that stand beside each other. */
export const resize: LogCabinPanel = {
  name: 'resize',
  summary: 'panelResize',
  needsPlan: true,
  render: (context) => {
    const { voice, state, spec, settings } = context;
    const texts = textsOf({ [FIELD]: '' }, state.texts);
    const model = known.of(state, [texts, settings, voice.measures.units], () =>
      resizeModel(texts, spec, voice.measures),
    );
    const form = panelForm<typeof FIELD>(texts, model.faults, context);
    const { findings, beside } = model;
    return html`<div class="fields">
        ${lengthField(FIELD, { label: voice.say('resizeTo') }, form)}
      </div>
      ${
        findings === undefined
          ? nothing
          : findings.fits.length === 0
            ? html`<p .textContent=${voice.say('noFit')}></p>
                ${notes(findings.relax, context)}`
            : fitTable(
                {
                  caption: voice.say('resized'),
                  fits: findings.fits,
                  ...choosing(context),
                  sizes: false,
                  strips: false,
                },
                context,
              )
      }
      ${beside.length === 0 ? nothing : besideTable(beside, context)}`;
  },
};
