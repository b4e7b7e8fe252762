import { html, type TemplateResult } from 'lit';
import type { MessageName } from '../messages/messages.js';
import type { Voice } from './voice.js';

/**
 * A message with templates in its places, so that each number stands in an element of its own: a
 * translator that wraps a text node would otherwise freeze the number in it.
 */
export function sentence(
  name: MessageName,
  places: Readonly<Record<string, TemplateResult>>,
  voice: Voice,
): TemplateResult {
  const parts = voice.template(name).split(/\{(\w+)\}/);
  return html`${parts.map((part, index) =>
    index % 2 === 1 ? (places[part] ?? part) : html`<span .textContent=${part}></span>`,
  )}`;
}
