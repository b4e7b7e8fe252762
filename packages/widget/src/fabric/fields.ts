/** The inputs of the fabric element, by the names of their attributes. */
export const fabricFields = [
  'pieces',
  'width',
  'method',
  'join',
  'increment',
  'straightening',
  'spare',
  'shrinkage',
  'layers',
  'on-hand',
  'precut',
  'pack-of',
] as const;

export type FabricField = (typeof fabricFields)[number];

/** What stands in each input, as text; empty where nothing is given. */
export type FabricSettings = Readonly<Record<FabricField, string>>;

/** The settings that hold a length each. */
export const lengthFields: readonly FabricField[] = ['width', 'straightening', 'spare'];
