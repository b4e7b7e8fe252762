import { fail } from '../errors/error.js';
import { stripsFor } from '../fabric/joined/join.js';
import type { Length } from '../length/length.js';

/** Strips cut across the width of fabric and joined end to end on the diagonal. */
export interface JoinedStrips {
  /** Strips to cut. */
  readonly count: number;
  /** What they make when they are joined. */
  readonly length: Length;
  readonly joins: number;
}

/**
 * Strips across the fabric that make a length when they are joined on the diagonal: n strips of length U
 * and width w make nU − (n − 1)w, since each join takes as much as the strip is wide.
 *
 * @throws EighthsError `strip-too-wide` where a strip is no longer than it is wide
 */
export function joinedStrips(
  needed: Length,
  strip: Length,
  fabricWidth: Length,
  field: string,
): JoinedStrips {
  if (fabricWidth.compareTo(strip) <= 0) {
    fail(
      'strip-too-wide',
      field,
      { strip, width: fabricWidth },
      'Strips {strip} wide cannot be joined on the diagonal from fabric {width} wide: they have to be narrower than that.',
    );
  }
  const count = stripsFor(needed, fabricWidth, strip);
  const joins = count - 1;
  return { count, length: fabricWidth.times(count).minus(strip.times(joins)), joins };
}
