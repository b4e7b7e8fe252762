import type { Length } from '../length/length.js';
import type { Warning } from '../plan/notice.js';
import type { Basics } from './basics.js';
import type { UnitSentence } from './sentences/all.js';
import { offGrid } from './stripUnit.js';

/** One warning for each width that is rounded up, where nothing is trimmed afterwards. */
export function offGridStrips(
  finished: readonly Length[],
  { seam, grid }: Pick<Basics, 'seam' | 'grid'>,
): Warning<UnitSentence>[] {
  const told: Length[] = [];
  return finished.flatMap((width) => {
    const exact = width.plus(seam.times(2));
    if (told.some((one) => one.equals(exact))) return [];
    told.push(exact);
    return offGrid('strip-off-grid', exact, exact.toGrid(grid, 'up'));
  });
}
