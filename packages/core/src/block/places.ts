import { type Length, length } from '../length/length.js';
import { type PerSide, perSide, runsAcross, type Side, turnSide } from '../plan/side.js';
import type { Cornerstone, Log, LogCabin } from './plan.js';

/** A rectangle on the block, measured from the top left corner of the finished center. */
export interface Place {
  readonly left: Length;
  readonly top: Length;
  readonly right: Length;
  readonly bottom: Length;
}

/** Where each part of a block lies when it is finished. */
export interface LogCabinPlaces {
  readonly center: Place;
  readonly logs: readonly { readonly log: Log; readonly place: Place }[];
  readonly cornerstones: readonly { readonly cornerstone: Cornerstone; readonly place: Place }[];
}

type Reach = PerSide<Length>;

const zero = length(0);

/** How far the finished block reaches beyond its center on each side after a round; 0 is the center. */
export function finishedReach(plan: LogCabin, round: number): Reach {
  const after = plan.rounds.find(({ number }) => number === round);
  return perSide((side) =>
    after === undefined ? zero : after.centerSeamToEdge[side].minus(plan.seam),
  );
}

/** The rectangle that reaches as far on each side, around the center. */
export function placeWithin(plan: LogCabin, reach: Reach): Place {
  const { width, height } = plan.center.finished;
  return {
    left: reach.left.negated(),
    top: reach.top.negated(),
    right: width.plus(reach.right),
    bottom: height.plus(reach.bottom),
  };
}

/** The part of `outer` that lies on one side beyond `inner`. */
export function beyond(side: Side, inner: Place, outer: Place): Place {
  return { ...outer, [turnSide(side, 2)]: inner[side] };
}

/** Where every part lies, from the plan alone; parts never overlap and fill the finished block. */
export function logCabinPlaces(plan: LogCabin): LogCabinPlaces {
  const stones: LogCabinPlaces['cornerstones'][number][] = [];
  const logs = plan.rounds.flatMap(({ number, logs: sewn }) => {
    const before = finishedReach(plan, number - 1);
    const after = finishedReach(plan, number);
    const now: Record<Side, Length> = { ...before };
    return sewn.map((log) => {
      const { side } = log;
      const inner = placeWithin(plan, now);
      now[side] = after[side];
      const strip = beyond(side, inner, placeWithin(plan, now));
      const own = plan.cornerstones.filter((stone) => stone.log === log.order);
      if (own.length === 0) return { log, place: strip };
      const core = placeWithin(plan, before);
      for (const cornerstone of own) {
        stones.push({ cornerstone, place: beyond(cornerstone.side, core, strip) });
      }
      const place = runsAcross(side)
        ? { ...strip, left: core.left, right: core.right }
        : { ...strip, top: core.top, bottom: core.bottom };
      return { log, place };
    });
  });
  return { center: placeWithin(plan, finishedReach(plan, 0)), logs, cornerstones: stones };
}
