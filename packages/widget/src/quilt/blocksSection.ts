import { logCabinSteps, type Notice, type QuiltBlock, type QuiltBlockCount } from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { sizeMeasure, spokenText } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { folded } from './folded.js';
import { said } from './said.js';
import { fabricNames, type Shown } from './shown.js';

function blockSteps(block: QuiltBlock): readonly Notice<string>[] {
  switch (block.kind) {
    case 'log-cabin':
      return logCabinSteps(block.plan);
    case 'unit':
      return block.plan.steps;
    case 'pieces':
      return block.units.flatMap(({ plan }) => plan.steps);
    case 'plain':
      return [];
  }
}

/** Plain squares, and rectangles by themselves, are only sewn together. */
const hasSteps = (block: QuiltBlock): boolean =>
  block.kind === 'pieces' ? block.units.length > 0 : block.kind !== 'plain';

const count = (value: number): TemplateResult => spokenText(String(value), String(value));

function makeLine({ block, count: blocks, inBorders }: QuiltBlockCount, { voice }: Shown) {
  const { finished, unfinished } = block;
  return html`<p>
    ${sentence(
      'makeBlocks',
      {
        count: count(blocks),
        finished: sizeMeasure(finished, voice),
        unfinished: sizeMeasure(unfinished, voice),
      },
      voice,
    )}
    ${inBorders > 0 ? sentence('forBorders', { count: count(inBorders) }, voice) : nothing}
  </p>`;
}

/** How many of each block there are, and how it is sewn. */
export function blocksSection(shown: Shown): TemplateResult {
  const { plan, voice, recipe } = shown;
  const names = fabricNames(recipe);
  return html`<section class="wide part blocks">
    <h3 .textContent=${voice.say('blocksTitle')}></h3>
    ${plan.blocks.map((counted) => {
      const { block } = counted;
      const line = makeLine(counted, shown);
      if (!hasSteps(block)) {
        return html`<h4 .textContent=${block.name}></h4>
          ${line}`;
      }
      const list = () =>
        html`<ol class="steps" part="steps" aria-label=${block.name}>
          ${blockSteps(block).map(
            (step) => html`<li translate="no" .textContent=${said(step, voice, names)}></li>`,
          )}
        </ol>`;
      const title = html`<span .textContent=${block.name}></span>`;
      return html`${line}${folded(`block ${block.id}`, title, list, shown)}`;
    })}
  </section>`;
}
