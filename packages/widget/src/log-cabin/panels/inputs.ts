/** What is typed in a panel's input: a length (or several), from one length to another, or none. */
type PanelInput = 'length' | 'lengths' | 'limits' | 'other';

/** The inputs of the panels, by their ids in the element. */
export const panelInputs = {
  'find-finished': 'limits',
  'find-rounds': 'other',
  'find-kind': 'other',
  'find-grid': 'other',
  'find-wish-ratio': 'other',
  'find-wish-center': 'length',
  'find-center': 'limits',
  'find-log': 'limits',
  'find-wide': 'limits',
  'find-narrow': 'limits',
  'find-strips-log': 'length',
  'find-strips-wide': 'length',
  'find-strips-narrow': 'length',
  'find-least-trim': 'length',
  'find-most': 'other',

  'resize-to': 'length',

  'have-0': 'other',
  'have-1': 'other',
  'have-2': 'other',
  'have-3': 'other',
  'have-length': 'length',

  'arc-finished': 'length',
  'arc-rounds': 'other',
  'arc-center': 'limits',
  'arc-strips-wide': 'length',
  'arc-strips-narrow': 'length',
  'arc-least-trim': 'length',

  'other-finished': 'length',
  'other-center': 'length',
  'other-rounds': 'other',
  'other-kind': 'other',
  'other-first': 'other',
  'other-layout': 'other',
  'other-log': 'lengths',
  'other-wide': 'lengths',
  'other-narrow': 'lengths',
  'other-strips-log': 'lengths',
  'other-strips-wide': 'lengths',
  'other-strips-narrow': 'lengths',

  'top-setting': 'other',
  'top-across': 'other',
  'top-down': 'other',

  'table-method': 'other',
  'table-mat': 'other',
  'table-ruler': 'length',
  'table-mat-side': 'length',
  'table-layers': 'other',

  'seam-strip': 'length',
  'seam-strips': 'other',
  'seam-measured': 'length',
  'rescue-measured': 'lengths',
  'rescue-finished': 'length',
  'rescue-across': 'other',
  'rescue-down': 'other',

  'sheet-kind': 'other',
  'sheet-round': 'other',
  'sheet-paper': 'other',
} as const satisfies Readonly<Record<string, PanelInput>>;

export type PanelField = keyof typeof panelInputs;

const fields = Object.keys(panelInputs) as readonly PanelField[];

/** Inputs that hold lengths: what they hold is written anew when the reader changes the units. */
export const panelLengths = fields.filter((field) => panelInputs[field] !== 'other');

/** What was typed in panels; what nobody has typed is not there. */
export type PanelTexts = Readonly<Partial<Record<PanelField, string>>>;
