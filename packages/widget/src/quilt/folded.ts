import { html, type TemplateResult } from 'lit';
import type { Shown } from './shown.js';

/**
 * A part that folds away, made only when it is open; on a page to read it always stands there, under a
 * heading of its own.
 */
export function folded(
  part: string,
  title: TemplateResult,
  contents: () => TemplateResult,
  { readonly, isOpen, setOpen }: Pick<Shown, 'readonly' | 'isOpen' | 'setOpen'>,
): TemplateResult {
  if (readonly) {
    return html`<div class="fold">
      <h4>${title}</h4>
      ${contents()}
    </div>`;
  }
  const open = isOpen(part);
  const onToggle = ({ target }: Event): void => {
    if (target instanceof HTMLDetailsElement) setOpen(part, target.open);
  };
  return html`<details class="fold" part="more" .open=${open} @toggle=${onToggle}>
    <summary>${title}</summary>
    ${open ? contents() : ''}
  </details>`;
}
