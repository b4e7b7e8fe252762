import { type Drawing, type Mark, type Painting, paint } from '@eighths/core';
import { html, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';

const FABRIC_TINTS = 8;

function markView(mark: Mark, tints: number): SVGTemplateResult {
  if (mark.kind === 'path') {
    const tint = mark.tint === undefined ? '' : ` tint-${mark.tint % tints}`;
    return svg`<path class=${mark.role + tint} d=${mark.d}></path>`;
  }
  const { role, x, y, size, anchor, upward, text } = mark;
  return svg`<text class=${role} x=${x} y=${y} font-size=${size} text-anchor=${anchor}
    dominant-baseline="central" transform=${upward ? `rotate(-90 ${x} ${y})` : 'rotate(0)'}
    translate="no" .textContent=${text}></text>`;
}

/** A drawing on the page. Its text alternative names it and points to the tables with its measures. */
export const drawingView = (drawing: Drawing, voice: Voice, tints = FABRIC_TINTS): TemplateResult =>
  paintingView(
    paint(drawing, {
      write: voice.measures.figures,
      words: voice.drawingWords,
      scale: voice.measures.units === 'metric' ? 'centimeters' : 'inches',
    }),
    drawing,
    voice,
    tints,
  );

/** The same of a drawing that is painted already. */
export function paintingView(
  { x, y, width, height, marks }: Painting,
  { title, description }: Pick<Drawing, 'title' | 'description'>,
  voice: Voice,
  tints = FABRIC_TINTS,
): TemplateResult {
  const label = `${voice.notice(title)}. ${voice.notice(description)}`;
  return html`<svg
    part="drawing"
    role="img"
    aria-label=${label}
    viewBox="${x} ${y} ${width} ${height}"
  >
    ${marks.map((mark) => markView(mark, tints))}
  </svg>`;
}
