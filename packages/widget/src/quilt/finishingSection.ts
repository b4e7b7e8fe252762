import type { Backing, Binding, BorderPart, QuiltBorder } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { measure, rectangleMeasure, sizeMeasure, spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { type Column, measuresTable } from '../base/table.js';
import type { Voice } from '../base/voice.js';
import type { MessageName } from '../messages/messages.js';
import { said } from './said.js';
import { fabricNames, type Shown } from './shown.js';

const STRIPS: Readonly<Record<BorderPart['part'], MessageName>> = {
  sides: 'sides',
  'top-and-bottom': 'topAndBottom',
  corners: 'corners',
};

interface BorderRow {
  readonly number: number;
  readonly border: QuiltBorder;
  readonly part: BorderPart;
}

/** What the quilt measures when a border is on. */
const thenFinishes = ({ finished }: QuiltBorder, voice: Voice): TemplateResult =>
  html`<div class="minor">
    ${sentence('thenFinishes', { finished: sizeMeasure(finished, voice) }, voice)}
  </div>`;

/** The strips of all borders. */
function borderTable({ plan: { borders }, voice }: Shown): TemplateResult | typeof nothing {
  if (borders === undefined) return nothing;
  const { bare } = voice.measures;
  const rows = borders.borders.flatMap((border, index) =>
    border.parts.map((part): BorderRow => ({ number: index + 1, border, part })),
  );
  const columns: readonly Column<BorderRow>[] = [
    {
      name: voice.say('strips'),
      words: true,
      cell: (row) => {
        const strips = voice.say(STRIPS[row.part.part]);
        const border = voice.say('partBorder', { border: row.number });
        const name =
          borders.borders.length > 1 ? voice.say('borderStrips', { border, strips }) : strips;
        return html`<th scope="row">
          <span class="capital" .textContent=${name}></span>
          ${row.part === row.border.parts.at(-1) ? thenFinishes(row.border, voice) : nothing}
        </th>`;
      },
    },
    {
      name: voice.say('cut'),
      cell: ({ part: { cut, units } }) =>
        units === undefined
          ? html`<td class="figure">${rectangleMeasure(cut.width, cut.length, voice, bare)}</td>`
          : html`<td class="figure" .textContent=${voice.say('unitsEach', { count: units })}></td>`,
    },
    {
      name: voice.say('howMany'),
      cell: ({ part: { count } }) =>
        html`<td class="figure" translate="no" .textContent=${String(count)}></td>`,
    },
  ];
  return html`<section class="part">
    <h3 .textContent=${voice.say('bordersTitle')}></h3>
    ${measuresTable(voice.say('bordersCaption'), columns, [{ rows }], voice, 'cuts')}
  </section>`;
}

const count = (value: number): TemplateResult => spokenText(String(value), String(value));

const BACKINGS = {
  none: 'backingOne',
  vertical: 'backingVertical',
  horizontal: 'backingHorizontal',
} as const;

const backingFact = ({ target, best }: Backing, voice: Voice): TemplateResult =>
  sentence(
    BACKINGS[best.seams],
    {
      target: sizeMeasure(target, voice),
      panels: count(best.panels),
      panel: measure(best.panel, voice),
    },
    voice,
  );

function bindingFact(binding: Binding, voice: Voice): TemplateResult {
  const { strip, length, needed } = binding;
  const common = {
    strip: measure(strip, voice),
    length: measure(length, voice),
    needed: measure(needed, voice),
  };
  switch (binding.cut) {
    case 'straight':
      return sentence('bindingStraight', { ...common, strips: count(binding.strips) }, voice);
    case 'bias-strips': {
      const { strips, fabric } = binding;
      const more = { strips: count(strips), fabric: measure(fabric, voice) };
      return sentence('bindingBias', { ...common, ...more }, voice);
    }
    case 'bias-continuous': {
      const { squares, square } = binding;
      const more = { squares: count(squares), square: measure(square, voice) };
      return sentence('bindingContinuous', { ...common, ...more }, voice);
    }
  }
}

/** Backing, batting and binding, and near misses that save fabric. */
function finishing(shown: Shown): TemplateResult | typeof nothing {
  const { voice, recipe } = shown;
  const { backing, batting, binding } = shown.plan;
  const names = fabricNames(recipe);
  const facts = [
    backing && backingFact(backing, voice),
    ...(backing?.nearMisses ?? []).map(
      ({ note }) => html`<span translate="no" .textContent=${said(note, voice, names)}></span>`,
    ),
    batting && sentence('battingFact', { target: sizeMeasure(batting.target, voice) }, voice),
    binding && bindingFact(binding, voice),
  ].filter((fact) => fact !== undefined);
  if (facts.length === 0) return nothing;
  return html`<section class="part">
    <h3 .textContent=${voice.say('finishingTitle')}></h3>
    <ul class="facts">
      ${facts.map((fact) => html`<li>${fact}</li>`)}
    </ul>
  </section>`;
}

/** What is done when the blocks are together, in the order of a printed pattern. */
export const finishingSections = (shown: Shown): TemplateResult =>
  html`${borderTable(shown)} ${finishing(shown)}`;
