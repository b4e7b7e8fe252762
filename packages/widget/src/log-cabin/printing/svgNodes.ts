import type { SvgNode } from '@eighths/core';

const SVG = 'http://www.w3.org/2000/svg';

/** An SVG element of the core as a node of a page: made, not parsed, so that no policy forbids it. */
export function svgElement(page: Document, { name, attributes, content = [] }: SvgNode): Element {
  const element = page.createElementNS(SVG, name);
  for (const [attribute, value] of Object.entries(attributes)) {
    if (attribute !== 'xmlns') element.setAttribute(attribute, String(value));
  }
  if (typeof content === 'string') element.textContent = content;
  else element.append(...content.map((each) => svgElement(page, each)));
  return element;
}
