/** What is to be looked into, the lowest bound first: a binary heap. */
export class Queue<Entry extends { readonly bound: number }> {
  readonly #heap: Entry[] = [];

  push(entry: Entry): void {
    const heap = this.#heap;
    let at = heap.length;
    heap.push(entry);
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const above = heap[parent];
      if (above === undefined || above.bound <= entry.bound) break;
      heap[at] = above;
      at = parent;
    }
    heap[at] = entry;
  }

  pop(): Entry | undefined {
    const heap = this.#heap;
    const [top] = heap;
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return top;
    let at = 0;
    for (;;) {
      const [left, right] = [heap[2 * at + 1], heap[2 * at + 2]];
      const next = right !== undefined && left !== undefined && right.bound < left.bound ? 2 : 1;
      const child = next === 2 ? right : left;
      if (child === undefined || child.bound >= last.bound) break;
      heap[at] = child;
      at = 2 * at + next;
    }
    heap[at] = last;
    return top;
  }
}
