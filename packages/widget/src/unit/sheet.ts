import {
  type Drawing,
  drawTemplate,
  drawUnit,
  drawUnitCut,
  length,
  paint,
  toSvg,
  type UnitCut,
  type UnitPlan,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { choiceField, named } from '../base/fields.js';
import { rectangleMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import { stepper } from '../base/stepper.js';
import type { Voice } from '../base/voice.js';
import { drawingView } from '../drawing/drawingView.js';
import { titleOf } from './words.js';

/** What the sheet with the drawings needs to know. */
export interface UnitSheet {
  readonly plan: UnitPlan;
  readonly voice: Voice;
  readonly headline: TemplateResult;
  readonly hand: 'left' | 'right';
  readonly setHand: (hand: string) => void;
  readonly isLocked: (field: string) => boolean;
  /** The drawing that is shown: 0 is the unit, then its cuts. */
  readonly at: number;
  readonly goTo: (step: number) => void;
}

/** The unit and each of its cuts. */
export const drawingsOf = ({ cuts }: UnitPlan): number => cuts.length + 1;

/** The template a cut is cut round, by its place among them, from 1. */
function templateOf(cut: UnitCut, { cuts, templates }: UnitPlan): number | undefined {
  if (templates === undefined || cut.shape !== 'template') return undefined;
  return cuts.filter(({ shape }) => shape === 'template').indexOf(cut) + 1;
}

/** A sheet at true size to save: the page sends and stores nothing. */
function saving(template: number, { plan, voice }: UnitSheet): TemplateResult {
  const { units, figures } = voice.measures;
  const drawing = drawTemplate(plan, { template });
  const written = {
    write: figures,
    words: voice.drawingWords,
    scale: units === 'metric' ? 'centimeters' : 'inches',
  } as const;
  const { width, height } = paint(drawing, written);
  const step = units === 'metric' ? '1 cm' : '1/4';
  const [across, down] = [width, height].map((side) =>
    length(Math.ceil(side * 1000))
      .dividedBy(1000)
      .toGrid(step, 'up'),
  );
  const svg = toSvg(drawing, { ...written, size: 'true' });
  const size = rectangleMeasure(across ?? 0, down ?? 0, voice);
  return html`<p>
    <a
      class="link"
      part="button"
      download="template-${template}.svg"
      href="data:image/svg+xml,${encodeURIComponent(svg)}"
      .textContent=${voice.say('saveTemplate')}
    ></a>
    ${sentence('templateSheet', { size }, voice)}
  </p>`;
}

/** The unit, or one of its cuts; a template without its sheet of paper. */
export function unitDrawing(at: number, plan: UnitPlan, hand: 'left' | 'right'): Drawing {
  const cut = plan.cuts[at - 1];
  if (cut === undefined) return drawUnit(plan, { hand });
  const template = templateOf(cut, plan);
  return template === undefined
    ? drawUnitCut(plan, { cut: at, hand })
    : drawTemplate(plan, { template, sheet: false });
}

interface Picture {
  readonly how: string;
  readonly save: TemplateResult | typeof nothing;
}

function pictureOf(at: number, sheet: UnitSheet): Picture {
  const { plan, voice } = sheet;
  const cut = plan.cuts[at - 1];
  if (cut === undefined) {
    const how = voice.say(plan.trims > 0 && !plan.approximate ? 'trimHow' : 'shapeHow');
    return { how, save: nothing };
  }
  const template = templateOf(cut, plan);
  const { count, fabric } = cut;
  const label = titleOf(cut.label, voice);
  const how = voice.say('cutHow', { count, label, fabric });
  return { how, save: template === undefined ? nothing : saving(template, sheet) };
}

export function unitSheet(sheet: UnitSheet): TemplateResult {
  const { plan, voice, at, goTo, hand, setHand, isLocked } = sheet;
  const cuts = plan.cuts.length;
  const name = at === 0 ? voice.say('asSewn') : voice.say('cutOf', { number: at, cuts });
  const { how, save } = pictureOf(at, sheet);
  const hands = named(voice, ['right', 'hand-right'], ['left', 'hand-left']);
  return html`<div class="sheet" part="sheet">
    ${sheet.headline}
    <div class="controls">
      ${stepper({ voice, name, at, steps: drawingsOf(plan), goTo })}
      ${choiceField('hand', voice.say('hand'), hands, { isLocked, chosen: hand, choose: setHand })}
    </div>
    <figure>
      <figcaption .textContent=${how}></figcaption>
      ${drawingView(unitDrawing(at, plan, hand), voice)}
    </figure>
    ${save}
  </div>`;
}
