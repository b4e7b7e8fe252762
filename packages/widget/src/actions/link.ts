/** What marks an element's settings in a link's fragment: `#block?finished=9&rounds=4`. */
const MARK = '?';

/** The settings in a fragment that are meant for the element of this name. */
export function settingsIn(
  fragment: string,
  name: string,
  fields: readonly string[],
): ReadonlyMap<string, string> {
  const start = `#${encodeURIComponent(name)}${MARK}`;
  if (!fragment.startsWith(start)) return new Map();
  const given = new URLSearchParams(fragment.slice(start.length));
  return new Map([...given].filter(([field]) => fields.includes(field)));
}

/** The page's address with an element's settings in its fragment. */
export function linkWith(
  address: string,
  name: string,
  settings: Readonly<Record<string, string>>,
): string {
  const url = new URL(address);
  const given = new URLSearchParams(Object.entries(settings).filter(([, text]) => text !== ''));
  url.hash = `${encodeURIComponent(name)}${MARK}${given}`;
  return url.href;
}
