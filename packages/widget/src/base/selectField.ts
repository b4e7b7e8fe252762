import { html, type TemplateResult } from 'lit';

/** One of many words, from a list that opens. */
export function selectField(
  field: string,
  label: string,
  choices: readonly (readonly [value: string, label: string])[],
  context: {
    readonly isLocked: (field: string) => boolean;
    readonly chosen: string;
    readonly choose: (value: string) => void;
  },
): TemplateResult {
  const { chosen, isLocked, choose } = context;
  const words = choices.find(([value]) => value === chosen)?.[1] ?? chosen;
  if (isLocked(field)) {
    return html`<div class="field" part="field">
      <span class="label" .textContent=${label}></span>
      <span class="fixed" .textContent=${words}></span>
    </div>`;
  }
  const onChange = ({ target }: Event): void => {
    if (target instanceof HTMLSelectElement) choose(target.value);
  };
  return html`<div class="field select" part="field">
    <label for=${field} .textContent=${label}></label>
    <select id=${field} part="input" @change=${onChange}>
      ${choices.map(
        ([value, name]) =>
          html`<option value=${value} .selected=${value === chosen} .textContent=${name}></option>`,
      )}
    </select>
  </div>`;
}
