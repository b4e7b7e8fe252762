import { drawLogCabin, type LogCabin, type LogCabinSpec, logCabin } from '@eighths/core';
import { html, type TemplateResult } from 'lit';
import { drawingView } from '../../drawing/drawingView.js';
import type { BlocklessContext } from './panel.js';

/**
 * A block, drawn beside its numbers.
 *
 * @param fabrics those whose tints come first, where it stands beside a block that has them too
 */
export function smallPlan(
  plan: LogCabin,
  { voice }: BlocklessContext,
  fabrics: readonly string[] = [],
): TemplateResult {
  const drawing = drawLogCabin(plan);
  const tinted = { ...drawing, fabrics: [...new Set([...fabrics, ...drawing.fabrics])] };
  return html`<figure class="small">${drawingView(tinted, voice)}</figure>`;
}

/** The block of a spec that was found. */
export const smallBlock = (spec: LogCabinSpec, context: BlocklessContext): TemplateResult =>
  smallPlan(logCabin(spec), context);
