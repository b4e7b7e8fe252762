/** The inputs of the fabric element, by the names of their attributes. */
export const fabricFields = [
  'pieces',
  'width',
  'increment',
  'straightening',
  'spare',
  'shrinkage',
  'layers',
  'on-hand-width',
  'on-hand-length',
] as const;

export type FabricField = (typeof fabricFields)[number];

/** What stands in each input, as text; empty where nothing is given. */
export type FabricSettings = Readonly<Record<FabricField, string>>;
