import { EighthsError } from '@eighths/core';
import { type MarkupElement, openingTag, writeMarkup } from './node.js';
import { readTag } from './readTag.js';
import { recipeIn, recipeScript } from './recipe.js';
import { stillNodes } from './still.js';
import { templateNodes } from './templateNodes.js';

/** An element's class, as far as a rendering without a document needs it. */
export interface RenderableElement {
  new (): object;
  readonly observedAttributes: readonly string[];
}

/** How often a plan that takes longer is asked for before what there is of it is shown. */
const MOST_WAITS = 1000;

const call = (element: object, method: string, ...values: readonly unknown[]): unknown => {
  const found: unknown = Reflect.get(element, method);
  return typeof found === 'function' ? Reflect.apply(found, element, values) : undefined;
};

/** Whether an element has made its plan, or something is wrong with its attributes. */
function hasAnswered(element: object): boolean {
  const model: unknown = Reflect.get(element, 'model');
  if (typeof model !== 'object' || model === null) return false;
  const faults: unknown = Reflect.get(model, 'faults');
  if (faults instanceof Map) for (const fault of faults.values()) throw fault;
  return Reflect.get(model, 'plan') !== undefined;
}

/** What an element with these attributes shows when its plan is ready. */
async function answerOf(
  Element: RenderableElement,
  attributes: ReadonlyMap<string, string>,
  recipe: string | undefined,
): Promise<readonly MarkupElement[]> {
  // Asking for them readies the class, as registering it does; an element made before has no properties.
  const { observedAttributes } = Element;
  const element = new Element();
  for (const name of observedAttributes) {
    const value = attributes.get(name);
    if (value !== undefined) call(element, 'attributeChangedCallback', name, null, value);
  }
  // Elements look for it on themselves and around them; it is no property of theirs.
  const lang = attributes.get('lang');
  if (lang !== undefined) call(element, 'setAttribute', 'lang', lang);
  if (recipe !== undefined) {
    Reflect.set(element, 'recipe', recipe);
    // Nothing is folded away, and there are no inputs.
    Reflect.set(element, 'readonly', '');
  }
  for (let waits = 0; waits < MOST_WAITS; waits += 1) {
    call(element, 'willUpdate', new Map());
    if (hasAnswered(element)) break;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  return stillNodes(templateNodes(call(element, 'render')));
}

/**
 * An element's tag with its static answer inside, which a page shows where no script runs. The same
 * tag gives the same text every time; nothing of the attributes is ever markup in it.
 *
 * @param tag such as `<eighths-log-cabin finished="9" rounds="4">`.
 *   Of what stands in it only a recipe's script is read, and kept.
 * @param elements the classes by the name of their tag.
 * @param read the text of the file that `src` names.
 * @throws EighthsError `unknown-choice` for a tag that is none of theirs; `wrong-kind`; and what the
 *   element finds wrong with its attributes.
 */
export async function renderTag(
  tag: string,
  elements: Readonly<Record<string, RenderableElement>>,
  read?: (path: string) => Promise<string>,
): Promise<string> {
  const { name, attributes } = readTag(tag);
  const Element = Object.hasOwn(elements, name) ? elements[name] : undefined;
  if (Element === undefined) {
    throw new EighthsError(
      'unknown-choice',
      'tag',
      { value: name, choices: Object.keys(elements).join(', ') },
      'There is no element {value}; known are {choices}.',
    );
  }
  const inside = recipeIn(tag);
  const src = attributes.get('src');
  const recipe = inside ?? (src === undefined ? undefined : await read?.(src));
  const answer = await answerOf(Element, attributes, recipe);
  const script = inside === undefined ? '' : recipeScript(inside);
  const lines = answer.map((node) => `  ${writeMarkup([node], '  ')}\n`).join('');
  return `${openingTag({ name, attributes })}\n${script}${lines}</${name}>\n`;
}
