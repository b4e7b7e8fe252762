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

  /** So much of what may still be done, to be counted apart. */
  atMost(steps: number): Effort {
    return new Effort(Math.min(Math.max(0, this.#limit - this.spent), steps));
  }

  /** Whether this much more may be done. */
  allows(steps: number): boolean {
    return this.spent + steps <= this.#limit;
  }
}
