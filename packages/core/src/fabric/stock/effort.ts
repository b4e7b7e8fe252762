/**
 * How much work may still be done, counted in elementary steps: the same input gives the same plan
 * on every machine, however fast it is.
 */
export class Effort {
  spent = 0;
  readonly #limit: number;

  constructor(limit: number) {
    this.#limit = limit;
  }

  spend(steps: number): void {
    this.spent += steps;
  }

  /** A part of what may still be done, to be counted apart. */
  share(part: number): Effort {
    return new Effort(Math.max(0, this.#limit - this.spent) * part);
  }

  /** Whether this much more may be done. */
  allows(steps: number): boolean {
    return this.spent + steps <= this.#limit;
  }
}
