/** Follows the element on the page whose cut list another one takes over. */
export class SourceList {
  readonly #take: (pieces: readonly unknown[]) => void;
  #source: Element | undefined;

  /** @param take is given the pieces, now and after each change. */
  constructor(take: (pieces: readonly unknown[]) => void) {
    this.#take = take;
  }

  /** Finds the element with an id, in a page or a shadow root, and listens to it alone. */
  follow(id: string | undefined, root: Node): void {
    this.leave();
    if (!id || !(root instanceof Document || root instanceof ShadowRoot)) return;
    const source = root.querySelector(`#${CSS.escape(id)}`);
    if (source === null) return;
    this.#source = source;
    source.addEventListener('eighths-change', this.#receive);
    void customElements.whenDefined(source.localName).then(this.#receive);
  }

  leave(): void {
    this.#source?.removeEventListener('eighths-change', this.#receive);
    this.#source = undefined;
  }

  readonly #receive = async (): Promise<void> => {
    const source = this.#source;
    if (source === undefined) return;
    await Reflect.get(source, 'updateComplete');
    const pieces: unknown = Reflect.get(source, 'pieces');
    if (Array.isArray(pieces)) this.#take(pieces);
  };
}
