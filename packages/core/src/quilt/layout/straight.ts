import { type Length, length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import type { UnitPoint } from '../../unit/point.js';
import type { Cell, CellKind } from './plan.js';
import type { LayoutTask } from './readLayout.js';

/** What lies between two lines of the top: blocks, or the sashes after the block of that index. */
interface Track {
  readonly kind: 'block' | 'sash';
  readonly index: number;
  readonly from: Length;
  readonly to: Length;
}

/** Blocks, and sashes between and perhaps round them, one after the other. */
function tracks(count: number, side: Length, { sashing }: LayoutTask): readonly Track[] {
  const list: Track[] = [];
  let from = length(0);
  const put = (kind: Track['kind'], index: number, width: Length): void => {
    const to = from.plus(width);
    list.push({ kind, index, from, to });
    from = to;
  };
  if (sashing?.outer) put('sash', -1, sashing.width);
  for (let index = 0; index < count; index += 1) {
    put('block', index, side);
    if (sashing && (sashing.outer || index < count - 1)) put('sash', index, sashing.width);
  }
  return list;
}

const corners = (across: Pick<Track, 'from' | 'to'>, down: Track): readonly UnitPoint[] => [
  { x: across.from, y: down.from },
  { x: across.to, y: down.from },
  { x: across.to, y: down.to },
  { x: across.from, y: down.to },
];

function cellAt(across: Track, down: Track, task: LayoutTask): Cell {
  const [row, column] = [down.index, across.index];
  const isBlock = across.kind === 'block' && down.kind === 'block';
  const alternate = task.alternate && Math.abs(row + column) % 2 === 1;
  const between: CellKind = across.kind === 'sash' && down.kind === 'sash' ? 'cornerstone' : 'sash';
  const kind = isBlock ? (alternate ? 'alternate' : 'block') : between;
  const turn = kind === 'block' ? task.turnAt(row, column) : 0;
  return { kind, row, column, turn, corners: corners(across, down) };
}

/** The cells of a top whose blocks stand in rows. Without cornerstones, sashes between rows are whole. */
export function straightCells(task: LayoutTask): readonly Cell[] {
  const across = tracks(task.across, task.block.width, task);
  const down = tracks(task.down, task.block.height, task);
  const whole = { from: length(0), to: entryAt(across, across.length - 1).to };
  return down.flatMap((line): readonly Cell[] => {
    if (line.kind === 'sash' && !task.sashing?.cornerstones) {
      const row = line.index;
      return [{ kind: 'sash', row, column: -1, turn: 0, corners: corners(whole, line) }];
    }
    return across.map((track) => cellAt(track, line, task));
  });
}
