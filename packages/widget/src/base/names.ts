/** `strips-wide` for `stripsWide`, `strips.wide` or `strips.wide[2]`: the name of an attribute. */
export const attributeName = (path: string): string =>
  path
    .replace(/\[\d+\]/g, '')
    .replace(/\./g, '-')
    .replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** `stripsWide` for `strips-wide`: the name of a property. */
export const propertyName = (attribute: string): string =>
  attribute.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
