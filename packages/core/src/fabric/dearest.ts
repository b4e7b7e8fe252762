import { entryAt } from '../plan/entryAt.js';

/** Pieces of one length, and what each is worth. */
export interface Priced {
  readonly size: number;
  readonly count: number;
  readonly price: number;
}

/**
 * The greatest price of pieces within each room up to a whole strip, piece by piece: the checkers' own
 * reckoning, which has nothing of the solver in it.
 */
export function dearest(capacity: number, priced: readonly Priced[]): readonly number[] {
  const most = new Array<number>(capacity + 1).fill(0);
  for (const { size, count, price } of priced) {
    const copies = Math.min(count, Math.floor(capacity / size));
    for (let copy = 0; copy < copies; copy += 1) {
      for (let room = capacity; room >= size; room -= 1) {
        most[room] = Math.max(entryAt(most, room), entryAt(most, room - size) + price);
      }
    }
  }
  return most;
}
