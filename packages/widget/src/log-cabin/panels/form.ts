import type { EighthsError } from '@eighths/core';
import type { FormContext } from '../../base/fields.js';
import type { LogCabinField } from '../fields.js';
import type { PanelField, PanelTexts } from './inputs.js';
import type { BlocklessContext } from './panel.js';

type Texts<Field extends PanelField> = Readonly<Record<Field, string>>;

/** What stands in a panel’s inputs: what was typed, else what is usual. */
export const textsOf = <Field extends PanelField>(
  usual: Texts<Field>,
  typed: PanelTexts,
): Texts<Field> => ({ ...usual, ...pick(usual, typed) });

function pick<Field extends PanelField>(usual: Texts<Field>, typed: PanelTexts): PanelTexts {
  const entries = Object.entries(typed).filter(([field]) => Object.hasOwn(usual, field));
  return Object.fromEntries(entries);
}

/**
 * A panel’s form.
 *
 * @param lockedBy the element’s own input that fixes one of the panel’s, where the page fixes it
 */
export const panelForm = <Field extends PanelField>(
  texts: Texts<Field>,
  faults: ReadonlyMap<string, EighthsError>,
  { voice, state, isLocked }: BlocklessContext,
  lockedBy: (field: string) => string | undefined = () => undefined,
): FormContext<Field> => ({
  voice,
  settings: texts,
  faultAt: (field) => (state.settled ? faults.get(field) : undefined),
  isLocked: (field) => {
    const own = lockedBy(field);
    return own !== undefined && isLocked(own);
  },
  type: (field, text, pausing) => state.type({ [field]: text }, pausing),
  settle: () => state.settle(),
});

/** Whether the page fixes any of these of the element’s own inputs, so that no other block fits in. */
export const anyLocked = (
  fields: readonly LogCabinField[],
  { isLocked }: BlocklessContext,
): boolean => fields.some(isLocked);
