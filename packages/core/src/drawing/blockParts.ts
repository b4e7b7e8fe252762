import { logCabinPlaces, type Place } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import { perSide } from '../plan/side.js';
import type { Label } from './drawing.js';
import { middleOf } from './points.js';

/** The fabrics of a block, in the order of their tints: the center's, then as they are sewn. */
export const fabricsOf = ({ center, logs, cornerstones }: LogCabin): readonly string[] => [
  ...new Set([
    center.fabric,
    ...logs.map(({ fabric }) => fabric),
    ...cornerstones.map(({ fabric }) => fabric),
  ]),
];

/** A part of the block with its fabric, and a log's place in the sewing order. */
export interface BlockPart {
  readonly place: Place;
  readonly fabric: string;
  readonly order?: number;
}

/** The parts sewn when the log of that order is on: the center, the logs, their cornerstones. */
export function blockParts(plan: LogCabin, sewn = plan.logs.length): readonly BlockPart[] {
  const { center, logs, cornerstones } = logCabinPlaces(plan);
  return [
    { place: center, fabric: plan.center.fabric },
    ...logs
      .filter(({ log }) => log.order <= sewn)
      .map(({ log, place }) => ({ place, fabric: log.fabric, order: log.order })),
    ...cornerstones
      .filter(({ cornerstone }) => cornerstone.log <= sewn)
      .map(({ cornerstone, place }) => ({ place, fabric: cornerstone.fabric })),
  ];
}

/** A log's place in the sewing order, as a figure on it. */
export const numbered = ({ place, order }: Omit<BlockPart, 'fabric'>): readonly Label[] =>
  order === undefined
    ? []
    : [{ kind: 'label', role: 'order', at: middleOf(place), text: { count: order } }];

/** A part at the edge of the block goes on to the raw edge: from `finished` to `raw`. */
export const reachOut = (place: Place, finished: Place, raw: Place): Place =>
  perSide((side) => (place[side].equals(finished[side]) ? raw : place)[side]);
