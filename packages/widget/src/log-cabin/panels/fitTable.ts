import type { FitStrip, Length, LogCabinFit } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { spokenText } from '../../base/measure.js';
import { type Column, measureCell, measuresTable } from '../../base/table.js';
import { areaText } from './figures.js';
import type { BlocklessContext } from './panel.js';
import { action, measures, number } from './said.js';

/** What stands in a row, and what choosing it does. */
export interface FitTable {
  readonly caption: string;
  readonly fits: readonly LogCabinFit[];
  /** Left out where the page fixes what would have to change. */
  readonly use?: (fit: LogCabinFit) => void;
  /** Whether the blocks may differ in size. */
  readonly sizes: boolean;
  /** Whether their strips are settled too. */
  readonly strips: boolean;
  /** A column besides: how many ways there are, or how blocks meet. */
  readonly more?: { readonly name: string; readonly cell: (index: number) => TemplateResult };
}

const logsOf = (fit: LogCabinFit): readonly Length[] =>
  fit.kind === 'plain' ? [fit.log] : [fit.wide, fit.narrow];

const stripsOf = (fit: LogCabinFit): readonly FitStrip[] =>
  fit.kind === 'plain' ? [fit.strips.log] : [fit.strips.wide, fit.strips.narrow];

/** Blocks that come out, best first, each with a button that takes it. */
export function fitTable(table: FitTable, context: BlocklessContext): TemplateResult {
  const { voice } = context;
  const { caption, fits, use, sizes, strips, more } = table;
  const rows = fits.map((fit, index) => ({ fit, index }));
  type Row = (typeof rows)[number];
  const several = (name: string, of: (fit: LogCabinFit) => readonly Length[]): Column<Row> => ({
    name,
    cell: ({ fit }) => html`<td class="figure">${measures(of(fit), context)}</td>`,
  });
  const curved = fits.some(({ kind }) => kind === 'curved');
  const columns: Column<Row>[] = [
    {
      name: voice.say('fitBlock'),
      words: true,
      cell: ({ fit, index }) =>
        html`<th scope="row">
          ${
            use === undefined
              ? number(index + 1)
              : action(voice.say('use', { number: index + 1 }), () => use(fit), 'link')
          }
        </th>`,
    },
    ...(sizes
      ? [
          {
            name: voice.say('finished'),
            cell: ({ fit }: Row) => measureCell(fit.finished, voice),
          },
        ]
      : []),
    { name: voice.say('center'), cell: ({ fit }) => measureCell(fit.center, voice) },
    several(voice.say(curved ? 'fitWideNarrow' : 'fitLogs'), logsOf),
    ...(strips
      ? [
          several(voice.say('fitStrips'), (fit) => stripsOf(fit).map(({ cut }) => cut)),
          several(voice.say('fitTrims'), (fit) => stripsOf(fit).map(({ trimsOff }) => trimsOff)),
        ]
      : []),
    ...(more === undefined
      ? [
          {
            name: voice.say(voice.measures.units === 'metric' ? 'fitFabricMetric' : 'fitFabric'),
            cell: ({ fit }: Row) => {
              const area = areaText(fit.ranking.fabric, voice);
              return html`<td class="figure">${spokenText(area, area)}</td>`;
            },
          },
        ]
      : [{ name: more.name, cell: ({ index }: Row) => more.cell(index) }]),
  ];
  return measuresTable(caption, columns, [{ rows }], voice, 'fits');
}
