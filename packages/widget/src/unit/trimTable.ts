import type { Length, TrimMark } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { measure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { type Column, measuresTable, rowHead } from '../base/table.js';
import type { Voice } from '../base/voice.js';
import type { UnitLists } from './cutList.js';
import { titleOf } from './words.js';

/** A place, or the two ends of a line. */
function span(from: Length, to: Length, voice: Voice): TemplateResult {
  const { bare } = voice.measures;
  const ends = { from: measure(from, voice, bare), to: measure(to, voice, bare) };
  return html`<td class="figure">
    ${from.equals(to) ? ends.from : sentence('span', ends, voice)}
  </td>`;
}

const endsOf = (mark: TrimMark) => (mark.kind === 'point' ? { from: mark.at, to: mark.at } : mark);

/** Where the diagonal, the point and the centering lines lie on the trimmed unit. */
export function trimTable({ plan, voice }: UnitLists): TemplateResult | typeof nothing {
  if (plan.trim.length === 0) return nothing;
  const away = (name: string, axis: 'x' | 'y'): Column<TrimMark> => ({
    name,
    cell: (mark) => {
      const { from, to } = endsOf(mark);
      return span(from[axis], to[axis], voice);
    },
  });
  const columns: readonly Column<TrimMark>[] = [
    {
      name: voice.say('mark'),
      words: true,
      cell: ({ role }) => rowHead(titleOf(role, voice, 'mark')),
    },
    away(voice.say('fromLeft'), 'x'),
    away(voice.say('fromTopEdge'), 'y'),
  ];
  return measuresTable(voice.say('trimMarks'), columns, [{ rows: plan.trim }], voice);
}
