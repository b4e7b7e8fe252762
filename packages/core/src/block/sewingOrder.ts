import { opposite, type Side, turnSide } from '../plan/side.js';
import type { Direction, Layout } from './spec.js';

/** The next side round. */
const next = (side: Side, direction: Direction): Side =>
  turnSide(side, direction === 'clockwise' ? 1 : -1);

/**
 * The side of a pair of neighbors from which going round in `direction` comes to the other one next,
 * so that the two are sewn one after the other.
 */
export const firstOfPair = ([one, other]: readonly [Side, Side], direction: Direction): Side =>
  next(one, direction) === other ? one : other;

/** The sides of one round in the order they are sewn. */
export function sewingOrder(layout: Layout, direction: Direction, start: Side): readonly Side[] {
  const second = next(start, direction);
  switch (layout) {
    case 'spiral':
      return [start, second, opposite(start), opposite(second)];
    case 'courthouse':
      return [start, opposite(start), second, opposite(second)];
    case 'quarter':
      return [start, second];
  }
}
