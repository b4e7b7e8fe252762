import { SIDES, type Side, turnSide } from '../plan/side.js';
import type { LogCabin } from './plan.js';

/** The first wide side clockwise, the one that comes after a narrow side; undefined in a plain block. */
export function firstWideSide({ logs }: LogCabin): Side | undefined {
  const isWide = (side: Side): boolean =>
    logs.some((log) => log.side === side && log.kind === 'wide');
  return SIDES.find((side) => isWide(side) && !isWide(turnSide(side, -1)));
}
