import { EighthsError, type QuiltRecipe, readRecipe } from '@eighths/core';
import { fetchedText } from './fetched.js';

/** What there is of the recipe. */
export type RecipeState =
  /** It is on its way. */
  | { readonly kind: 'waiting' }
  | { readonly kind: 'error'; readonly error: EighthsError }
  /** `number` counts the recipes that this element has read. */
  | { readonly kind: 'recipe'; readonly recipe: QuiltRecipe; readonly number: number };

const WAITING: RecipeState = { kind: 'waiting' };

const NONE: RecipeState = {
  kind: 'error',
  error: new EighthsError(
    'missing-field',
    'recipe',
    { name: 'recipe' },
    'There is no pattern here yet: the page gives one in a script of type application/json inside this element, or names its address in “src”.',
  ),
};

/** What a fetch has come to. */
type Answer = { readonly text: string } | { readonly error: EighthsError };

/** A fetch, and its answer when there is one. */
interface Request {
  readonly address: string;
  readonly controller: AbortController;
  answer?: Answer;
}

/** What an element says of its recipe. */
export interface RecipeHost extends HTMLElement {
  /** The recipe, or its text. */
  readonly recipe: unknown;
  /** Where its text is. */
  readonly src: string | undefined;
}

const isGiven = (value: unknown): boolean => value !== undefined && value !== null && value !== '';

/** Where there is no page, as on a server, nothing more will come. */
const pageIsLoading = (): boolean =>
  typeof document !== 'undefined' && document.readyState === 'loading';

/** Finds an element's recipe: its property, or else its `src`, or else the script inside it. */
export class RecipeSource {
  readonly #host: RecipeHost;
  readonly #changed: () => void;
  #observer: MutationObserver | undefined;
  #request: Request | undefined;
  #input: unknown;
  #state: RecipeState = NONE;
  #number = 0;

  /** @param changed is called when there may be another recipe. */
  constructor(host: RecipeHost, changed: () => void) {
    this.#host = host;
    this.#changed = changed;
  }

  /** Begins to watch what stands inside the element. */
  connect(): void {
    this.#observer = new MutationObserver(this.#changed);
    this.#observer.observe(this.#host, { childList: true, characterData: true, subtree: true });
    if (pageIsLoading()) document.addEventListener('DOMContentLoaded', this.#changed);
  }

  disconnect(): void {
    this.#observer?.disconnect();
    document.removeEventListener('DOMContentLoaded', this.#changed);
    // What has come stays: the element may only be on its way to another place.
    if (this.#request?.answer === undefined) this.#stop();
  }

  get state(): RecipeState {
    const { recipe, src } = this.#host;
    if (isGiven(recipe)) return this.#read(recipe);
    if (src !== undefined && src !== null && src.trim() !== '') return this.#fetched(src.trim());
    this.#stop();
    const text = this.#scriptText();
    if (text === undefined) return pageIsLoading() ? WAITING : NONE;
    const state = this.#read(text);
    // A script's text may come in several parts.
    return state.kind === 'error' && pageIsLoading() ? WAITING : state;
  }

  #scriptText(): string | undefined {
    if (typeof document === 'undefined') return undefined;
    const script = this.#host.querySelector(':scope > script[type="application/json"]');
    return script?.textContent ?? undefined;
  }

  #read(input: unknown): RecipeState {
    if (input === this.#input) return this.#state;
    this.#input = input;
    try {
      const recipe = readRecipe(input);
      this.#number += 1;
      this.#state = { kind: 'recipe', recipe, number: this.#number };
    } catch (error) {
      if (!(error instanceof EighthsError)) throw error;
      this.#state = { kind: 'error', error };
    }
    return this.#state;
  }

  #fetched(src: string): RecipeState {
    // Apart from any page it shows what it has, and asks for nothing.
    if (this.#host.isConnected && this.#request?.address !== src) this.#load(src);
    const answer = this.#request?.answer;
    if (answer === undefined) return WAITING;
    return 'error' in answer ? { kind: 'error', ...answer } : this.#read(answer.text);
  }

  #load(address: string): void {
    this.#stop();
    const request: Request = { address, controller: new AbortController() };
    this.#request = request;
    const settle = (answer: Answer): void => {
      request.answer = answer;
      if (request === this.#request) this.#changed();
    };
    fetchedText(address, request.controller).then(
      (text) => text !== undefined && settle({ text }),
      (error: unknown) => {
        if (!(error instanceof EighthsError)) throw error;
        settle({ error });
      },
    );
  }

  #stop(): void {
    this.#request?.controller.abort();
    this.#request = undefined;
  }
}
