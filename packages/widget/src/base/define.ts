/** A custom element's class that says which version of it this is. */
interface VersionedElement extends CustomElementConstructor {
  readonly version: string;
}

const isVersioned = (element: CustomElementConstructor): element is VersionedElement =>
  'version' in element;

/**
 * Registers an element, once. A second copy of the file finds the first one's registration and leaves
 * it: silently where it is the same version, with one warning where it is another. Never throws.
 */
export function define(
  tag: string,
  element: VersionedElement,
  registry: CustomElementRegistry = customElements,
): void {
  const first = registry.get(tag);
  if (first === undefined) {
    registry.define(tag, element);
    return;
  }
  const version = isVersioned(first) ? first.version : 'unknown';
  if (first !== element && version !== element.version) {
    console.warn(
      `<${tag}> is registered already: version ${version} stays, version ${element.version} is not used.`,
    );
  }
}
