import { html, nothing, type TemplateResult } from 'lit';
import type { BlocklessContext, LogCabinPanel, WantedPanels } from './panel.js';

/** Which panels a page wants: all that there are, those it names, or `none`. */
export function wantedPanels(
  all: readonly LogCabinPanel[],
  names: string | undefined,
): readonly LogCabinPanel[] {
  if (names === undefined || names.trim() === '') return all;
  const wanted = names.split(/[\s,]+/);
  return all.filter(({ name }) => wanted.includes(name));
}

function contentsOf(panel: LogCabinPanel, context: BlocklessContext): TemplateResult {
  if (!panel.needsPlan) return panel.render(context);
  const { block, voice } = context;
  return block === undefined
    ? html`<p .textContent=${voice.say('panelNeedsPlan')}></p>`
    : panel.render({ ...context, ...block });
}

/** The panels below the sheet; what is in one is worked out only while it is open. */
export function panelList(
  { panels: all, names, opened }: WantedPanels,
  context: BlocklessContext,
): TemplateResult | undefined {
  const panels = wantedPanels(all, names);
  if (panels.length === 0) return undefined;
  const { voice, state } = context;
  const atFirst = (opened ?? '').split(/[\s,]+/);
  return html`<div class="panels wide" part="panels" role="group" aria-label=${voice.say('workshop')}>
    ${panels.map((panel) => {
      const isOpen = state.isOpen(panel.name, atFirst.includes(panel.name));
      const onToggle = ({ target }: Event): void => {
        if (target instanceof HTMLDetailsElement) state.setOpen(panel.name, target.open);
      };
      return html`<details
        class="panel panel-${panel.name}"
        part="panel"
        .open=${isOpen}
        @toggle=${onToggle}
      >
        <summary .textContent=${voice.say(panel.summary)}></summary>
        ${isOpen ? html`<div class="contents">${contentsOf(panel, context)}</div>` : nothing}
      </details>`;
    })}
  </div>`;
}
