import {
  type Drawing,
  drawLogCabin,
  drawTrim,
  type LogCabin,
  type RulerPlacement,
  trimCuts,
} from '@eighths/core';
import { html, nothing, type TemplateResult } from 'lit';
import { choiceField, named } from '../base/fields.js';
import { sizeMeasure } from '../base/measure.js';
import { sentence } from '../base/sentence.js';
import type { Voice } from '../base/voice.js';
import { drawingView } from '../drawing/drawingView.js';

/** One of the drawings that are stepped through. */
export interface SheetStep {
  /** 0 for the whole block. */
  readonly round: number;
  /** How the ruler lies, and its place among the round's placements, where the round is trimmed. */
  readonly placement?: RulerPlacement;
  readonly order: number;
}

/** The whole block; then each round, once for each way the ruler is laid on it. */
export const sheetSteps = (plan: LogCabin, hand: 'left' | 'right'): readonly SheetStep[] => [
  { round: 0, order: 1 },
  ...plan.rounds.flatMap((round): SheetStep[] => {
    const placements = trimCuts(plan, round, hand);
    return placements.length === 0
      ? [{ round: round.number, order: 1 }]
      : placements.map((placement, index) => ({
          round: round.number,
          placement,
          order: index + 1,
        }));
  }),
];

/** What the sheet with the drawings needs to know. */
export interface SheetContext {
  readonly plan: LogCabin;
  readonly voice: Voice;
  readonly hand: 'left' | 'right';
  readonly setHand: (hand: string) => void;
  readonly isLocked: (field: string) => boolean;
  readonly steps: readonly SheetStep[];
  /** The step that is drawn. */
  readonly at: number;
  readonly goTo: (step: number) => void;
}

/** How the block is turned and the ruler laid, in a sentence. */
function instruction({ turn, cuts }: RulerPlacement, voice: Voice): string {
  const onTrimmedEdges = cuts.every(({ lines }) => lines[0]?.on === 'trimmed-edge');
  if (turn === 2 && onTrimmedEdges) return voice.say('turnedHalf');
  return voice.say(turn === 0 ? 'facing' : 'turnedQuarter');
}

/** What a step shows. */
export const stepDrawing = (
  { round, placement, order }: SheetStep,
  plan: LogCabin,
  hand: 'left' | 'right',
): Drawing =>
  placement === undefined
    ? drawLogCabin(plan, round === 0 ? {} : { round })
    : drawTrim(plan, { round, placement: order, hand });

function drawn(step: SheetStep, { plan, voice, hand }: SheetContext): TemplateResult {
  const { placement } = step;
  const words = placement === undefined ? '' : instruction(placement, voice);
  return html`<figure>
    <figcaption .textContent=${words}></figcaption>
    ${drawingView(stepDrawing(step, plan, hand), voice)}
  </figure>`;
}

/** The cuts that a step shows, by their numbers in the drawing. */
function stepName({ round, placement }: SheetStep, { plan, voice }: SheetContext): string {
  if (round === 0) return voice.say('wholeBlock');
  const where = voice.say('roundOf', { round, rounds: plan.rounds.length });
  if (placement === undefined) return where;
  const cuts = placement.cuts.map(({ order }) => order).join(', ');
  return `${where}: ${voice.say('cuts', { cuts })}`;
}

/** Back and on through the drawings. At either end a button stays, so that the focus does. */
function stepper(step: SheetStep, context: SheetContext): TemplateResult {
  const { voice, steps, at, goTo } = context;
  const button = (name: 'back' | 'next', to: number) =>
    html`<button
      type="button"
      part="button"
      aria-disabled=${steps[to] === undefined ? 'true' : 'false'}
      @click=${() => goTo(steps[to] === undefined ? at : to)}
      .textContent=${voice.say(name)}
    ></button>`;
  return html`<div class="stepper" role="group" aria-label=${voice.say('show')}>
    ${button('back', at - 1)}
    <span class="where" aria-live="polite" .textContent=${stepName(step, context)}></span>
    ${button('next', at + 1)}
  </div>`;
}

/** The block's name in numbers: both sizes, always named. */
const headline = ({ plan, voice }: SheetContext): TemplateResult => {
  const finished = sizeMeasure(plan.finished, voice);
  const unfinished = sizeMeasure(plan.unfinished, voice);
  return html`<p class="headline" part="headline">
    ${sentence('headline', { finished, unfinished }, voice)}
  </p>`;
};

export function logCabinSheet(context: SheetContext): TemplateResult {
  const { plan, voice, steps, at, hand, setHand, isLocked } = context;
  const step = steps[at] ?? { round: 0, order: 1 };
  const hands = named(voice, ['right', 'hand-right'], ['left', 'hand-left']);
  return html`<div class="sheet" part="sheet">
    ${headline(context)}
    <div class="controls">
      ${stepper(step, context)}
      ${
        plan.trimAfter === 'never'
          ? nothing
          : choiceField('hand', voice.say('hand'), hands, {
              isLocked,
              chosen: hand,
              choose: setHand,
            })
      }
    </div>
    ${drawn(step, context)}
  </div>`;
}
