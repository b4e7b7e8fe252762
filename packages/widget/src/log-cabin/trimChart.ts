import { type LogCabin, type LogCabinRound, type PerSide, SIDES, type Side } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { bareMeasure, measuredCaption, sizeMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';

/** Sides with the same numbers in a round share a row. */
function rowsOf(round: LogCabinRound, sides: readonly Side[]): readonly (readonly Side[])[] {
  const key = (side: Side): string =>
    [round.centerSeamToEdge, round.lastSeamToEdge, round.trimAway]
      .map((numbers: PerSide<{ toString(): string }>) => numbers[side])
      .join(' ');
  const rows = new Map<string, Side[]>();
  // In a fixed order, so that rows do not jump when the sewing order changes.
  for (const side of SIDES.filter((each) => sides.includes(each))) {
    rows.set(key(side), [...(rows.get(key(side)) ?? []), side]);
  }
  return [...rows.values()];
}

interface ChartContext {
  readonly plan: LogCabin;
  readonly voice: Voice;
  readonly round: number;
  readonly goTo: (round: number) => void;
}

function roundRows(round: LogCabinRound, context: ChartContext): TemplateResult {
  const { plan, voice, goTo } = context;
  const rows = rowsOf(round, plan.sides);
  const size = sizeMeasure(round.trimTo, voice);
  const untrimmed = sizeMeasure(round.untrimmed, voice);
  const trimmed = plan.trimAfter !== 'never';
  return html`<tbody class=${round.number === context.round ? 'chosen' : ''}>
    <tr>
      <th scope="rowgroup" colspan=${trimmed ? 4 : 3}>
        <button
          type="button"
          class="link"
          part="button"
          @click=${() => goTo(round.number)}
          .textContent=${`${voice.say('round')} ${round.number}`}
        ></button>
        ${sentence('trimTo', { size }, voice)}&ensp;
        ${trimmed ? html`<span class="minor">${sentence('sewnSize', { size: untrimmed }, voice)}</span>` : ''}
      </th>
    </tr>
    ${rows.map((sides) => {
      const [side] = sides;
      if (side === undefined) return '';
      return html`<tr>
        <th scope="row" .textContent=${sides.length === SIDES.length ? voice.say('allSides') : sides.map(voice.word).join(', ')}></th>
        <td class="figure">${bareMeasure(round.centerSeamToEdge[side], voice)}</td>
        <td class="figure">${bareMeasure(round.lastSeamToEdge[side], voice)}</td>
        ${trimmed ? html`<td class="figure">${bareMeasure(round.trimAway[side], voice)}</td>` : ''}
      </tr>`;
    })}
  </tbody>`;
}

/** For each round and side, what is measured from which seam, and what the trim takes off. */
export function trimChart(context: ChartContext): TemplateResult {
  const { plan, voice } = context;
  const trimmed = plan.trimAfter !== 'never';
  const head = (name: Parameters<Voice['say']>[0], className = 'figure') =>
    html`<th scope="col" class=${className} .textContent=${voice.say(name)}></th>`;
  return html`<table class="trims" part="table">
    ${measuredCaption(voice.say(trimmed ? 'trimChart' : 'exactChart'), voice)}
    <thead>
      <tr>
        ${head('side', '')}${head('centerSeamToEdge')}${head('lastSeamToEdge')}
        ${trimmed ? head('trimAway') : ''}
      </tr>
    </thead>
    ${plan.rounds.map((round) => roundRows(round, context))}
  </table>`;
}
