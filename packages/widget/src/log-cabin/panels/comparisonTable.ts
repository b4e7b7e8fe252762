import type { LogCabinComparison, StripTotal } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { measure, sizeMeasure, spokenText } from '../../base/measure.js';
import { sentence } from '../../base/sentence.js';
import { angle, areaText, lines, offArc, percent, radius } from './figures.js';
import type { BlocklessContext } from './panel.js';
import { number } from './said.js';

interface Row {
  readonly name: string;
  readonly cell: (block: LogCabinComparison) => TemplateResult | undefined;
}

/** The fabrics of both blocks, in sewing order. */
export const fabricsOf = (both: readonly LogCabinComparison[]): readonly string[] => [
  ...new Set(both.flatMap(({ shares }) => shares.map(({ fabric }) => fabric))),
];

function areaOf(value: LogCabinComparison['fabric'], context: BlocklessContext): TemplateResult {
  const { voice } = context;
  const message = voice.measures.units === 'metric' ? 'squareCentimeters' : 'squareInches';
  const text = voice.say(message, { area: areaText(value, voice) });
  return spokenText(text, text);
}

function shareOf(
  fabric: string,
  { shares }: LogCabinComparison,
  context: BlocklessContext,
): TemplateResult | undefined {
  const found = shares.find((each) => each.fabric === fabric);
  if (found === undefined) return undefined;
  return lines([percent(found.share, context.voice), areaOf(found.area, context)]);
}

function stripsOf(
  fabric: string,
  { strips }: LogCabinComparison,
  { voice }: BlocklessContext,
): TemplateResult | undefined {
  const own = strips.filter((strip: StripTotal) => strip.fabric === fabric);
  if (own.length === 0) return undefined;
  return lines(
    own.map(({ width, length }) =>
      sentence(
        'stripsCut',
        {
          width: measure(width, voice, voice.measures.bare),
          length: measure(length, voice, voice.measures.bare),
        },
        voice,
      ),
    ),
  );
}

function rowsOf(both: readonly LogCabinComparison[], context: BlocklessContext): readonly Row[] {
  const { voice } = context;
  const { say, word } = voice;
  const fabrics = fabricsOf(both);
  const curve =
    (of: (curve: NonNullable<LogCabinComparison['curve']>) => TemplateResult | undefined) =>
    ({ curve: own }: LogCabinComparison) =>
      own === undefined ? undefined : of(own);
  return [
    { name: say('finished'), cell: ({ finished }) => sizeMeasure(finished, voice) },
    {
      name: say('compareUnfinished'),
      cell: ({ unfinished }) => sizeMeasure(unfinished, voice),
    },
    { name: say('center'), cell: ({ center }) => sizeMeasure(center, voice) },
    ...fabrics.map((fabric) => ({
      name: say('shareOf', { fabric: word(fabric) }),
      cell: (block: LogCabinComparison) => shareOf(fabric, block, context),
    })),
    {
      name: say('compareBend'),
      cell: curve(({ bendAtCenter }) => angle(bendAtCenter, voice)),
    },
    {
      name: say('compareRadius'),
      cell: curve(({ leastGreatest }) => leastGreatest && radius(leastGreatest.radius, voice)),
    },
    {
      name: say('compareOff'),
      cell: curve(({ leastGreatest }) => leastGreatest && offArc(leastGreatest.greatest, voice)),
    },
    { name: say('compareFabric'), cell: ({ fabric }) => areaOf(fabric, context) },
    ...fabrics.map((fabric) => ({
      name: say('compareStrips', { fabric: word(fabric) }),
      cell: (block: LogCabinComparison) => stripsOf(fabric, block, context),
    })),
    { name: say('comparePieces'), cell: ({ pieces }) => number(pieces) },
    { name: say('compareTrims'), cell: ({ trims }) => number(trims) },
  ];
}

/** Two blocks in columns, so that their figures stand beside each other. */
export function comparisonTable(
  both: readonly [LogCabinComparison, LogCabinComparison],
  context: BlocklessContext,
): TemplateResult {
  const { say } = context.voice;
  const rows = rowsOf(both, context)
    .map(({ name, cell }) => ({ name, cells: both.map(cell) }))
    .filter(({ cells }) => cells.some((cell) => cell !== undefined));
  return html`<table class="comparison" part="table">
    <caption .textContent=${say('comparison')}></caption>
    <thead>
      <tr>
        <th scope="col" .textContent=${say('figure')}></th>
        <th scope="col" class="figure" .textContent=${say('thisBlock')}></th>
        <th scope="col" class="figure" .textContent=${say('otherBlock')}></th>
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ name, cells }) => html`<tr>
          <th scope="row" .textContent=${name}></th>
          ${cells.map((cell) => html`<td class="figure">${cell ?? '–'}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
