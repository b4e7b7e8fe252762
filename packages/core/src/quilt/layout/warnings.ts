import type { Warning } from '../../plan/notice.js';
import type { Size } from '../../plan/size.js';
import { warningsFrom } from '../../unit/say.js';
import type { Cell } from './plan.js';
import type { LayoutTask } from './readLayout.js';
import { type LayoutWarningCode, layoutSentences } from './sentences.js';

const warn = warningsFrom(layoutSentences);

/** What a person should know of a top that can be made all the same. */
export function layoutWarnings(
  task: LayoutTask,
  cells: readonly Cell[],
  finished: Size,
): readonly Warning<LayoutWarningCode>[] {
  const { grid, seam, sashing, setting } = task;
  const warnings: Warning<LayoutWarningCode>[] = [];
  if (sashing && sashing.width.compareTo(seam.times(2)) < 0)
    warnings.push(warn('narrow-sash', 'sashing.width', { finished: sashing.width }));
  const upsideDown = cells.filter(({ turn }) => turn === 2).length;
  const sideways = cells.filter(({ turn }) => turn % 2 === 1).length;
  if (upsideDown + sideways > 0)
    warnings.push(warn('prints-turn', 'turns', { sideways, upsideDown }));
  if (setting === 'on-point') warnings.push(warn('prints-lean', 'setting'));
  if (!finished.width.isOnGrid(grid) || !finished.height.isOnGrid(grid))
    warnings.push(warn('finished-off-grid', 'block', { finished, grid }));
  return warnings;
}
