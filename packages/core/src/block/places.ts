import { type Length, length } from '../length/length.js';
import { opposite, outward, type PerSide, perSide, type Side } from '../plan/side.js';
import type { Cornerstone, Log, LogCabin } from './plan.js';

/** A rectangle on the block, measured from the top left corner of the finished center. */
export type Place = PerSide<Length>;

/** Where each part of a block lies when it is finished. */
export interface LogCabinPlaces {
  readonly center: Place;
  readonly logs: readonly { readonly log: Log; readonly place: Place }[];
  readonly cornerstones: readonly { readonly cornerstone: Cornerstone; readonly place: Place }[];
}

const zero = length(0);

/** Where a side of a place comes to lie when it is moved outward. */
export const movedOut = (place: Place, side: Side, by: Length): Length =>
  place[side].plus(by.times(outward(side)));

/** How far the finished block reaches beyond its center on each side after a round; 0 is the center. */
function finishedReach(plan: LogCabin, round: number): PerSide<Length> {
  const after = plan.rounds.find(({ number }) => number === round)?.centerSeamToEdge;
  return perSide((side) => after?.[side].minus(plan.seam) ?? zero);
}

/** The finished block after a round. */
export function finishedPlace(plan: LogCabin, round: number): Place {
  const { width, height } = plan.center.finished;
  const center = { left: zero, top: zero, right: width, bottom: height };
  const reach = finishedReach(plan, round);
  return perSide((side) => movedOut(center, side, reach[side]));
}

/** The part of `outer` that lies on one side beyond `inner`. */
export const beyond = (side: Side, inner: Place, outer: Place): Place => ({
  ...outer,
  [opposite(side)]: inner[side],
});

/** Where every part lies, from the plan alone; parts never overlap and fill the finished block. */
export function logCabinPlaces(plan: LogCabin): LogCabinPlaces {
  const cornerstones: LogCabinPlaces['cornerstones'][number][] = [];
  const logs = plan.rounds.flatMap(({ number, logs: sewn }) => {
    const before = finishedPlace(plan, number - 1);
    const after = finishedPlace(plan, number);
    let now = before;
    return sewn.map((log) => {
      const { side, order } = log;
      const inner = now;
      now = { ...now, [side]: after[side] };
      const strip = beyond(side, inner, now);
      const stones = plan.cornerstones.filter((stone) => stone.log === order);
      for (const cornerstone of stones) {
        cornerstones.push({ cornerstone, place: beyond(cornerstone.side, before, strip) });
      }
      // Between its cornerstones a log is as long as the block was before the round.
      const place = { ...strip };
      for (const stone of stones) place[stone.side] = before[stone.side];
      return { log, place };
    });
  });
  return { center: finishedPlace(plan, 0), logs, cornerstones };
}
