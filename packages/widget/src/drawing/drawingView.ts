import { type Drawing, type Mark, paint } from '@eighths/core';
import { html, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import type { Voice } from '../base/voice.js';

const FABRIC_TINTS = 8;

function markView(mark: Mark): SVGTemplateResult {
  if (mark.kind === 'path') {
    const tint = mark.tint === undefined ? '' : ` tint-${mark.tint % FABRIC_TINTS}`;
    return svg`<path class=${mark.role + tint} d=${mark.d}></path>`;
  }
  const { role, x, y, size, anchor, upward, text } = mark;
  return svg`<text class=${role} x=${x} y=${y} font-size=${size} text-anchor=${anchor}
    dominant-baseline="central" transform=${upward ? `rotate(-90 ${x} ${y})` : 'rotate(0)'}
    translate="no" .textContent=${text}></text>`;
}

/** A drawing on the page. Its text alternative names it and points to the tables with its measures. */
export function drawingView(drawing: Drawing, voice: Voice): TemplateResult {
  const { x, y, width, height, marks } = paint(drawing, {
    write: voice.measures.figures,
    words: voice.drawingWords,
    scale: voice.measures.units === 'metric' ? 'centimeters' : 'inches',
  });
  const label = `${voice.notice(drawing.title)}. ${voice.notice(drawing.description)}`;
  return html`<svg
    part="drawing"
    role="img"
    aria-label=${label}
    viewBox="${x} ${y} ${width} ${height}"
  >
    ${marks.map(markView)}
  </svg>`;
}
