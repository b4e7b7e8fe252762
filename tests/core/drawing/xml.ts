/** A strict reader of the little XML that drawings are written in: no library, no mercy. */

export interface XmlElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** The text directly in it. */
  readonly text: string;
}

const NAME = /[A-Za-z_][\w.-]*/y;
const SPACE = /\s+/y;
const ENTITY = /&(?:amp|lt|gt|quot|apos|#\d+|#x[\da-fA-F]+);/y;
/** What XML 1.0 has no place for, written or escaped. */
const NO_CHARACTER = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u;

const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&apos;': "'",
};

/** The root element of a well-formed text; throws at the first thing that is not well-formed. */
export function readXml(xml: string): XmlElement {
  if (NO_CHARACTER.test(xml)) throw new Error('There is a character that XML does not have.');
  let at = 0;
  const stop = (wanted: string): never => {
    throw new Error(`${wanted} is needed at ${at}: ${xml.slice(at, at + 40)}`);
  };
  const take = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    const [match] = pattern.exec(xml) ?? [];
    if (match !== undefined) at += match.length;
    return match;
  };
  const skip = (text: string): void => {
    if (!xml.startsWith(text, at)) stop(text);
    at += text.length;
  };
  const textUntil = (end: string): string => {
    let text = '';
    while (at < xml.length && xml[at] !== end) {
      if (xml[at] === '<') stop('&lt;');
      if (xml[at] !== '&') {
        text += xml[at];
        at += 1;
        continue;
      }
      const entity = take(ENTITY) ?? stop('An entity');
      const code = entity.startsWith('&#x') ? `0x${entity.slice(3, -1)}` : entity.slice(2, -1);
      text += ENTITIES[entity] ?? String.fromCodePoint(Number(code));
    }
    return text;
  };

  const readElement = (): XmlElement => {
    skip('<');
    const name = take(NAME) ?? stop('A name');
    const attributes = new Map<string, string>();
    while (take(SPACE) !== undefined) {
      const attribute = take(NAME);
      if (attribute === undefined) break;
      if (attributes.has(attribute)) stop(`Only one ${attribute}`);
      skip('="');
      attributes.set(attribute, textUntil('"'));
      skip('"');
    }
    if (xml.startsWith('/>', at)) {
      skip('/>');
      return { name, attributes, children: [], text: '' };
    }
    skip('>');
    const children: XmlElement[] = [];
    let text = '';
    for (;;) {
      text += textUntil('<');
      if (at >= xml.length) stop(`</${name}>`);
      if (xml.startsWith('</', at)) break;
      children.push(readElement());
    }
    skip(`</${name}>`);
    return { name, attributes, children, text };
  };

  const root = readElement();
  if (at !== xml.length) stop('The end');
  return root;
}

/** An element and everything in it. */
export const withDescendants = (element: XmlElement): readonly XmlElement[] => [
  element,
  ...element.children.flatMap(withDescendants),
];
