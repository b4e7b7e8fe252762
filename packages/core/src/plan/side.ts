import { entryAt } from './entryAt.js';

/** A side of a block as it faces the person. */
export type Side = 'top' | 'right' | 'bottom' | 'left';

/** One thing for each side. */
export type PerSide<Value> = Readonly<Record<Side, Value>>;

/** The sides clockwise, as the block faces the person. */
export const SIDES: readonly [Side, Side, Side, Side] = ['top', 'right', 'bottom', 'left'];

/** Both hands that may hold a cutter, by their sides. */
export const HANDS = ['left', 'right'] as const;

/** The side where `side` comes to lie when the block is turned clockwise by quarter turns. */
export const turnSide = (side: Side, quarterTurns: number): Side =>
  entryAt(SIDES, (SIDES.indexOf(side) + quarterTurns) & 3);

export const opposite = (side: Side): Side => turnSide(side, 2);

/** Whether the side runs across (top, bottom) rather than down. */
export const runsAcross = (side: Side): boolean => side === 'top' || side === 'bottom';

/** Which way coordinates go beyond a side: x to the right, y down. */
export const outward = (side: Side): 1 | -1 => (side === 'left' || side === 'top' ? -1 : 1);

/** A value for every side. */
export const perSide = <Value>(value: (side: Side) => Value): PerSide<Value> => ({
  top: value('top'),
  right: value('right'),
  bottom: value('bottom'),
  left: value('left'),
});
