import type { Length } from '../length/length.js';
import type { Cornerstone, Log, LogCabin, LogCabinPiece, StripTotal } from './plan.js';

interface Group<Item> {
  readonly first: Item;
  readonly items: Item[];
}

/** Items that share a key, in the order in which each key first came. */
function groupBy<Item>(
  items: readonly Item[],
  key: (item: Item) => string,
): readonly Group<Item>[] {
  const groups = new Map<string, Group<Item>>();
  for (const item of items) {
    const itsKey = key(item);
    const group = groups.get(itsKey);
    if (group === undefined) groups.set(itsKey, { first: item, items: [item] });
    else group.items.push(item);
  }
  return [...groups.values()];
}

/** How much strip of each fabric and width a block takes, in the order of sewing. */
export const stripTotals = (logs: readonly Log[]): readonly StripTotal[] =>
  groupBy(logs, ({ fabric, cut }) => `${cut.width} ${fabric}`).map(({ first, items }) => ({
    fabric: first.fabric,
    width: first.cut.width,
    length: items.reduce((sum: Length, { cut }) => sum.plus(cut.length), first.cut.length.times(0)),
  }));

const logPieces = (logs: readonly Log[]): readonly LogCabinPiece[] =>
  groupBy(logs, ({ fabric, cut }) => `${cut.width} ${cut.length} ${fabric}`).map(
    ({ first, items }) => ({
      part: 'log',
      logs: items.map(({ order }) => order),
      label: `${items.length === 1 ? 'log' : 'logs'} ${items.map(({ order }) => order).join(', ')}`,
      fabric: first.fabric,
      width: first.cut.width,
      length: first.cut.length,
      count: items.length,
    }),
  );

const cornerstonePieces = (stones: readonly Cornerstone[]): readonly LogCabinPiece[] =>
  groupBy(stones, ({ fabric, cut }) => `${cut.width} ${cut.height} ${fabric}`).map(
    ({ first, items }) => ({
      part: 'cornerstone',
      logs: items.map(({ log }) => log),
      label: 'cornerstone',
      fabric: first.fabric,
      width: first.cut.height,
      length: first.cut.width,
      count: items.length,
    }),
  );

/** What one block takes: center, logs that are alike together, cornerstones. */
export const blockPieces = (
  center: LogCabin['center'],
  logs: readonly Log[],
  cornerstones: readonly Cornerstone[],
): readonly LogCabinPiece[] => [
  {
    part: 'center',
    logs: [],
    label: 'center',
    fabric: center.fabric,
    width: center.cut.height,
    length: center.cut.width,
    count: 1,
  },
  ...logPieces(logs),
  ...cornerstonePieces(cornerstones),
];
