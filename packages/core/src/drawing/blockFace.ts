import { finishedPlace } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import { firstWideSide } from '../block/wideCorner.js';
import { type Length, length } from '../length/length.js';
import { perSide, runsAcross, SIDES, type Side } from '../plan/side.js';
import { type Size, type SizeInput, sizeField } from '../plan/size.js';
import type { UnitPlan } from '../unit/plan.js';
import { blockParts } from './blockParts.js';
import type { Point } from './drawing.js';
import { dotAt } from './geometry.js';
import { cornersOf, sizeOf, turnPlace } from './points.js';
import { pointAt, seenPatches } from './unitOutlines.js';

/** A finished block as a picture: areas of fabric, measured from its upper left corner. */
export interface BlockFace {
  readonly size: Size;
  /** Painted in their order. */
  readonly areas: readonly { readonly points: readonly Point[]; readonly fabric: string }[];
}

/**
 * A log cabin block as a picture. A curved block is first brought to its wide half right and below, as
 * the traditional settings take it; one that is not square stays as it is.
 *
 * @example
 * logCabinFace(logCabin({ rounds: 2, center: 2, log: 1 })).areas.length; // 9
 */
export function logCabinFace(plan: LogCabin): BlockFace {
  const { width, height } = plan.finished;
  const first = width.equals(height) ? firstWideSide(plan) : undefined;
  const turns = first === undefined ? 0 : (1 - SIDES.indexOf(first)) & 3;
  const whole = turnPlace(finishedPlace(plan, plan.rounds.length), turns);
  const offset = (side: Side): Length => (runsAcross(side) ? whole.top : whole.left);
  return {
    size: sizeOf(whole),
    areas: blockParts(plan).map(({ place, fabric }) => {
      const turned = turnPlace(place, turns);
      return { fabric, points: cornersOf(perSide((side) => turned[side].minus(offset(side)))) };
    }),
  };
}

/**
 * A pieced unit as a picture. Its points are approximate, as all drawing is.
 *
 * @example
 * unitFace(halfSquareTriangles({ finished: 3 })).areas.map(({ fabric }) => fabric); // ["dark","light"]
 */
export const unitFace = (plan: UnitPlan): BlockFace => ({
  size: plan.finished,
  areas: seenPatches(plan, plan.outline.map(dotAt)).map(({ fabric, dots }) => ({
    fabric,
    points: dots.map(pointAt),
  })),
});

/**
 * A plain square or rectangle as a picture.
 *
 * @throws EighthsError `not-positive` or of a length
 * @example
 * plainFace(6, 'sky').size; // {"width":"6","height":"6"}
 */
export function plainFace(finished: SizeInput, fabric: string): BlockFace {
  const size = sizeField(finished, 'finished');
  const none = length(0);
  const place = { left: none, top: none, right: size.width, bottom: size.height };
  return { size, areas: [{ fabric, points: cornersOf(place) }] };
}
