import { type LogCabin, type LogCabinRound, SIDES, type Side } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { sizeMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { type Column, measureCell, measuresTable, rowHead } from '../base/table.js';
import type { Voice } from '../base/voice.js';

/** The sides in a round that have the same numbers. */
interface ChartRow {
  readonly round: LogCabinRound;
  readonly sides: readonly Side[];
  readonly side: Side;
}

function rowsOf(round: LogCabinRound, plan: LogCabin): readonly ChartRow[] {
  const rows = new Map<string, ChartRow>();
  // In a fixed order, so that rows do not jump when the sewing order changes.
  for (const side of SIDES.filter((each) => plan.sides.includes(each))) {
    const { centerSeamToEdge, lastSeamToEdge, trimAway } = round;
    const key = [centerSeamToEdge, lastSeamToEdge, trimAway].map((each) => each[side]).join();
    rows.set(key, { round, side, sides: [...(rows.get(key)?.sides ?? []), side] });
  }
  return [...rows.values()];
}

interface ChartContext {
  readonly plan: LogCabin;
  readonly voice: Voice;
  readonly round: number;
  readonly goTo: (round: number) => void;
}

/** A round's name, which shows its drawing, and its sizes. */
const roundHead = (round: LogCabinRound, { plan, voice, goTo }: ChartContext): TemplateResult =>
  html`<button
      type="button"
      class="link"
      part="button"
      @click=${() => goTo(round.number)}
      .textContent=${`${voice.say('round')} ${round.number}`}
    ></button>
    ${sentence('trimTo', { size: sizeMeasure(round.trimTo, voice) }, voice)}&ensp;
    ${
      plan.trimAfter === 'never'
        ? ''
        : html`<span class="minor"
            >${sentence('sewnSize', { size: sizeMeasure(round.untrimmed, voice) }, voice)}</span
          >`
    }`;

/** For each round and side, what is measured from which seam, and what the trim takes off. */
export function trimChart(context: ChartContext): TemplateResult {
  const { plan, voice } = context;
  const { say, list } = voice;
  const sidesOf = ({ sides }: ChartRow): string =>
    sides.length === SIDES.length ? say('allSides') : list(sides);
  const measured = (
    name: 'centerSeamToEdge' | 'lastSeamToEdge' | 'trimAway',
  ): Column<ChartRow> => ({
    name: say(name),
    cell: ({ round, side }) => measureCell(round[name][side], voice),
  });
  const columns: readonly Column<ChartRow>[] = [
    { name: say('side'), words: true, cell: (row) => rowHead(sidesOf(row)) },
    measured('centerSeamToEdge'),
    measured('lastSeamToEdge'),
  ];
  const groups = plan.rounds.map((round) => ({
    head: roundHead(round, context),
    rows: rowsOf(round, plan),
    className: round.number === context.round ? 'chosen' : '',
  }));
  return plan.trimAfter === 'never'
    ? measuresTable(say('exactChart'), columns, groups, voice, 'trims')
    : measuresTable(say('trimChart'), [...columns, measured('trimAway')], groups, voice, 'trims');
}
