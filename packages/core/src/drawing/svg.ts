import { entryAt } from '../plan/entryAt.js';
import { escaped } from '../plan/escaped.js';
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

/** Control characters and halves of characters have no place in XML, escaped or not. */
const NOT_XML = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/** A text that may stand in XML. */
const xmlText = (text: string): string => escaped(text.replace(NOT_XML, ' '));

/** Attributes as they stand in a tag. */
const attributes = (values: Readonly<Record<string, string | number>>): string =>
  Object.entries(values)
    .map(([name, value]) => ` ${name}="${xmlText(String(value))}"`)
    .join('');

/** An SVG element as data: a page makes a node of it, `svgText` a text. */
export interface SvgNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  /** A text, or the elements inside. */
  readonly content?: string | readonly SvgNode[];
}

/** An SVG element as text. */
export function svgText({ name, attributes: values, content = [] }: SvgNode): string {
  const inside = typeof content === 'string' ? xmlText(content) : content.map(svgText).join('');
  const tag = `${name}${attributes(values)}`;
  return inside === '' ? `<${tag}/>` : `<${tag}>${inside}</${name}>`;
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

function pathNode({ role, d, tint }: PathMark): SvgNode {
  const fill = tint === undefined ? {} : { fill: entryAt(TINTS, tint % TINTS.length) };
  return { name: 'path', attributes: { class: role, ...pathLooks[role], ...fill, d } };
}

function textNode({ role, x, y, size, anchor, upward, text }: TextMark): SvgNode {
  const [across, down] = [rounded(x), rounded(y)];
  const turned = upward ? { transform: `rotate(-90 ${across} ${down})` } : {};
  const placed = { x: across, y: down, 'font-size': rounded(size), 'text-anchor': anchor };
  const look = { fill: textColor(role), 'dominant-baseline': 'central', ...turned };
  return { name: 'text', attributes: { class: role, ...placed, ...look }, content: text };
}

/** A mark as an SVG element. */
export const markNode = (mark: Mark): SvgNode =>
  mark.kind === 'path' ? pathNode(mark) : textNode(mark);

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
  return svgText({
    name: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      viewBox,
      ...size,
      'font-family': 'sans-serif',
    },
    content: [
      { name: 'title', attributes: {}, content: drawing.title.text },
      { name: 'desc', attributes: {}, content: drawing.description.text },
      ...marks.map(markNode),
    ],
  });
}
