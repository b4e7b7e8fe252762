import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import type { Layout } from './layout.js';
import {
  type Along,
  areaOf,
  cutInto,
  type Extent,
  grid,
  type Item,
  lying,
  type Parts,
  type Sheet,
  turnsOf,
} from './rectangles.js';

/** Beyond so many different selections of pieces no complete search is begun. */
const MOST_SELECTIONS = 2_000;

/** A rectangle that some pieces fill as a guillotine cutting, and no other of theirs is smaller. */
type Box = {
  readonly width: number;
  readonly height: number;
} & (
  | { readonly item: number; readonly turned: boolean }
  | { readonly along: Along; readonly of: readonly [Box, Box] }
);

/**
 * The packing that leaves the least area of pieces uncut, and of those for sheets of one size one
 * with the fewest sheets: every selection of pieces is made up of two smaller ones in every way.
 *
 * @param items their counts are what is needed.
 * @returns undefined where there are too many selections, or the effort ends.
 */
export function exactPacking(
  sheets: readonly Sheet[],
  items: readonly Item[],
  effort: Effort,
): readonly Layout[] | undefined {
  const bases: number[] = [];
  let selections = 1;
  for (const { count } of items) {
    bases.push(selections);
    selections *= count + 1;
    if (selections > MOST_SELECTIONS) return undefined;
  }
  const digits = Array.from({ length: selections }, (_, s) =>
    items.map(({ count }, i) => Math.floor(s / entryAt(bases, i)) % (count + 1)),
  );
  const within = (part: number, whole: number): boolean => {
    effort.spend(items.length);
    const all = entryAt(digits, whole);
    return entryAt(digits, part).every((count, i) => count <= entryAt(all, i));
  };

  const boxes: Box[][] = Array.from({ length: selections }, () => []);
  const offer = (to: number, box: Box): void => {
    const known = entryAt(boxes, to);
    effort.spend(known.length + sheets.length);
    const fits = sheets.some((sheet) => holds(sheet, box));
    if (!fits || known.some((other) => holds(box, other))) return;
    boxes[to] = [...known.filter((other) => !holds(other, box)), box];
  };
  for (let s = 1; s < selections; s += 1) {
    const at = items.findIndex(({ count }, i) => count > 0 && bases[i] === s);
    const item = items[at];
    if (item !== undefined) {
      for (const turned of turnsOf(item)) offer(s, { item: at, turned, ...lying(item, turned) });
    }
    for (let part = 1; 2 * part <= s; part += 1) {
      if (!within(part, s)) continue;
      for (const one of entryAt(boxes, part)) {
        for (const other of entryAt(boxes, s - part)) {
          offer(s, beside('across', one, other));
          offer(s, beside('down', one, other));
        }
      }
      if (!effort.allows(0)) return undefined;
    }
  }

  const areas = digits.map((counts) =>
    counts.reduce((sum, count, i) => sum + count * areaOf(entryAt(items, i)), 0),
  );
  /** By selection: the packing of so many sheets that gives it. */
  let reached = new Map<number, readonly (readonly [number, Box])[]>([[0, []]]);
  let best = 0;
  let packing: readonly (readonly [number, Box])[] = [];
  for (const [index, sheet] of sheets.entries()) {
    const fitting = boxes.flatMap((known, s) => {
      const box = known.find((each) => holds(sheet, each));
      return box === undefined ? [] : [{ s, box }];
    });
    for (let copy = 0; copy < sheet.count && best < selections - 1; copy += 1) {
      const more = new Map(reached);
      for (const [before, sofar] of reached) {
        for (const { s, box } of fitting) {
          const after = before + s;
          if (more.has(after) || !within(s, selections - 1 - before)) continue;
          const all = [...sofar, [index, box]] as const;
          more.set(after, all);
          if (entryAt(areas, after) > entryAt(areas, best)) [best, packing] = [after, all];
        }
        if (!effort.allows(0)) return undefined;
      }
      if (more.size === reached.size) break;
      reached = more;
    }
  }
  return packing.map(([index, box]) => {
    const sheet = entryAt(sheets, index);
    const parts = partsOf(box, items);
    const row = cutInto('across', { width: sheet.width, height: parts.height }, [parts]);
    return { sheet: index, count: 1, parts: cutInto('down', sheet, [row]) };
  });
}

const holds = (outer: Extent, inner: Extent): boolean =>
  inner.width <= outer.width && inner.height <= outer.height;

const beside = (along: Along, one: Box, other: Box): Box =>
  along === 'across'
    ? {
        along,
        of: [one, other],
        width: one.width + other.width,
        height: Math.max(one.height, other.height),
      }
    : {
        along,
        of: [one, other],
        width: Math.max(one.width, other.width),
        height: one.height + other.height,
      };

function partsOf(box: Box, items: readonly Item[]): Parts {
  const { width, height } = box;
  if ('of' in box) {
    return cutInto(
      box.along,
      { width, height },
      box.of.map((each) => partsOf(each, items)),
    );
  }
  return grid(entryAt(items, box.item), box.item, box.turned);
}
