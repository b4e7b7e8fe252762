/** The inputs of the quilt element, by the names of their attributes. */
export const quiltFields = [
  'size',
  'across',
  'down',
  'fabric-width',
  'method',
  'people',
  'each',
  'spares',
  'bolt',
  'price',
  'margin',
] as const;

export type QuiltField = (typeof quiltFields)[number];

/** What stands in each input, as text; empty where nothing is given. */
export type QuiltSettings = Readonly<Record<QuiltField, string>>;

/** What the page or the reader has set; what nobody has is not there. */
export type GivenQuiltSettings = Readonly<Partial<Record<QuiltField, string>>>;
