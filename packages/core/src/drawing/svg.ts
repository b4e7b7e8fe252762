import type { Drawing } from './drawing.js';
import { pathLooks, TINTS, textColor } from './look.js';
import type { Mark, PathMark, TextMark } from './marks.js';
import { type PaintOptions, paint } from './paint.js';

/** How an SVG text is written. */
export interface SvgOptions extends PaintOptions {
  /**
   * `screen` (default) leaves the size to the page; `true` gives it in real inches, for print at
   * 100 %.
   */
  readonly size?: 'screen' | 'true';
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters and halves of characters have no place in XML, escaped or not. */
const NOT_XML = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/** A text that may stand in XML. */
export const escaped = (text: string): string =>
  text.replace(NOT_XML, ' ').replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign);

/** Attributes as they stand in a tag. */
export const attributes = (values: Readonly<Record<string, string | number>>): string =>
  Object.entries(values)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

function pathElement({ role, d, tint }: PathMark): string {
  const fill = tint === undefined ? {} : { fill: TINTS[tint % TINTS.length] ?? 'none' };
  return `<path${attributes({ class: role, ...pathLooks[role], ...fill, d })}/>`;
}

function textElement({ role, x, y, size, anchor, upward, text }: TextMark): string {
  const [across, down] = [rounded(x), rounded(y)];
  const turned = upward ? { transform: `rotate(-90 ${across} ${down})` } : {};
  const placed = { x: across, y: down, 'font-size': rounded(size), 'text-anchor': anchor };
  const look = { fill: textColor(role), 'dominant-baseline': 'central', ...turned };
  return `<text${attributes({ class: role, ...placed, ...look })}>${escaped(text)}</text>`;
}

/** A mark as an SVG element. */
export const element = (mark: Mark): string =>
  mark.kind === 'path' ? pathElement(mark) : textElement(mark);

/**
 * A drawing as an SVG text: accessible (a title and a description), with no script, no style sheet,
 * no id and no reference to anything outside itself. Coordinates are inches.
 *
 * @example
 * const block = logCabin({ rounds: 4, finished: 9, wide: '1 1/4', narrow: '1/2' });
 * toSvg(drawLogCabin(block)).startsWith('<svg xmlns="http://www.w3.org/2000/svg" role="img"'); // true
 */
export function toSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const { x, y, width, height, marks } = paint(drawing, options);
  const [acrossInches, downInches] = [rounded(width), rounded(height)];
  const viewBox = `${rounded(x)} ${rounded(y)} ${acrossInches} ${downInches}`;
  const size =
    options.size === 'true' ? { width: `${acrossInches}in`, height: `${downInches}in` } : {};
  const root = attributes({
    xmlns: 'http://www.w3.org/2000/svg',
    role: 'img',
    viewBox,
    ...size,
    'font-family': 'sans-serif',
  });
  const title = `<title>${escaped(drawing.title.text)}</title>`;
  const description = `<desc>${escaped(drawing.description.text)}</desc>`;
  return `<svg${root}>${title}${description}${marks.map(element).join('')}</svg>`;
}
