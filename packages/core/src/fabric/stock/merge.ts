import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from './effort.js';
import type { Pattern, Run, Stock } from './stock.js';

/**
 * The same pieces from as many strips with fewer different strips: as long as there are three
 * patterns whose strips can be cut by two, or two whose strips can be cut by one, they are. Patterns
 * that are cut seldom come first: they are the likeliest to go.
 */
export function merged(stock: Stock, given: readonly Run[], effort: Effort): readonly Run[] {
  const runs = [...given].sort((a, b) => a.times - b.times);
  for (const [c, third] of runs.entries()) {
    for (const [b, second] of runs.slice(0, c).entries()) {
      for (const first of runs.slice(0, b + 1)) {
        // Where the first is the second again, they are two.
        const group = first === second ? [second, third] : [first, second, third];
        const fewer = inFewer(stock, group, effort);
        if (!effort.allows(0)) return runs;
        if (fewer === undefined) continue;
        return merged(stock, [...runs.filter((run) => !group.includes(run)), ...fewer], effort);
      }
    }
  }
  return runs;
}

/** The strips of a group cut by one pattern less, where they can be. */
function inFewer(stock: Stock, group: readonly Run[], effort: Effort): Run[] | undefined {
  const { sizes } = stock;
  let strips = 0;
  const pieces = sizes.map(() => 0);
  for (const { pattern, times } of group) {
    strips += times;
    for (let i = 0; i < pieces.length; i += 1) {
      pieces[i] = entryAt(pieces, i) + times * entryAt(pattern, i);
    }
  }
  effort.spend(sizes.length);
  if (group.length === 2) {
    if (pieces.some((count) => count % strips !== 0)) return undefined;
    return [{ pattern: pieces.map((count) => count / strips), times: strips }];
  }
  for (let rest = 1; 2 * rest <= strips; rest += 1) {
    const times = strips - rest;
    const pattern = split({ ...stock, demands: pieces }, times, rest, effort);
    if (pattern === undefined) continue;
    const other = pieces.map((count, i) => (count - times * entryAt(pattern, i)) / rest);
    return [
      { pattern, times },
      { pattern: other, times: rest },
    ];
  }
  return undefined;
}

/** One of two patterns that, cut `times` times and `rest` times, give exactly what is demanded. */
function split(
  { capacity, sizes, demands }: Stock,
  times: number,
  rest: number,
  effort: Effort,
): Pattern | undefined {
  const place = (item: number, room: number, otherRoom: number): number[] | undefined => {
    effort.spend(1);
    const size = sizes[item];
    if (size === undefined) return [];
    let count = entryAt(demands, item);
    for (let each = 0; count >= 0 && each * size <= room; each += 1, count -= times) {
      const taken = (count / rest) * size;
      if (count % rest !== 0 || taken > otherRoom) continue;
      const following = place(item + 1, room - each * size, otherRoom - taken);
      if (following !== undefined) return [each, ...following];
    }
    return undefined;
  };
  return place(0, capacity, capacity);
}
