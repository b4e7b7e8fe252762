/**
 * Works something out anew only where what it is made from has changed: once for each element, whatever
 * else is typed there.
 */
export class Memory<Value> {
  readonly #last = new WeakMap<object, { readonly key: string; readonly value: Value }>();

  /**
   * @param owner whose memory it is
   * @param from plain data that the value is made from
   */
  of(owner: object, from: unknown, make: () => Value): Value {
    const key = JSON.stringify(from);
    const before = this.#last.get(owner);
    if (before?.key === key) return before.value;
    const value = make();
    this.#last.set(owner, { key, value });
    return value;
  }
}
