import { fail } from '../../errors/error.js';
import { type Length, length } from '../../length/length.js';
import { stepsThatFit, stepsToCover } from '../whole.js';
import type { KitBolts } from './plan.js';

/**
 * How many bolts kits are cut from, each kit's piece in one, and what is left over of them.
 *
 * @param perKit what one kit's piece measures, more than 0.
 * @param pooled what all kits would take from one length.
 * @throws EighthsError `bolt-too-short`
 */
export function boltsFor(kits: number, perKit: Length, pooled: Length, bolt: Length): KitBolts {
  const kitsPerBolt = stepsThatFit(bolt, perKit);
  if (kitsPerBolt === 0) {
    fail(
      'bolt-too-short',
      'bolt',
      { bolt, needed: perKit },
      'A kit’s piece is {needed} long, and a bolt holds {bolt}. Give a longer bolt, or make the kits smaller.',
    );
  }
  const bolts = Math.ceil(kits / kitsPerBolt);
  const onLast = kits - (bolts - 1) * kitsPerBolt;
  return {
    bolt,
    kitsPerBolt,
    bolts,
    remnant: bolts > 1 ? bolt.minus(perKit.times(kitsPerBolt)) : length(0),
    lastRemnant: bolt.minus(perKit.times(onLast)),
    pooledBolts: stepsToCover(pooled, bolt),
  };
}
