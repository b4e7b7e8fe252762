import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import {
  type Along,
  areaOf,
  cutInto,
  type Filling,
  grid,
  type Item,
  lying,
  type Parts,
  turnsOf,
} from './rectangles.js';
import type { Table } from './table.js';

/** How a rectangle is filled, one choice after another. */
export interface Rule {
  /** Which item is tried first. */
  readonly order: readonly number[];
  /** Which way a grid grows first where there are too few pieces for all of it. */
  readonly grow: Along;
  /** Which cut comes first beside a grid: always one, or the one that leaves a longer piece whole. */
  readonly split: Along | 'longer' | 'shorter';
  readonly smallestFirst: boolean;
  /** Whether a rectangle takes what the table finds best, where there are enough pieces for it. */
  readonly table: boolean;
  /** How many columns or rows an item may take the first time, by item; after that it comes last. */
  readonly caps: ReadonlyMap<number, number>;
}

/** What cutting a rectangle takes besides looking at the items and the gaps. */
const STEPS = 20;

interface Open {
  readonly width: number;
  readonly height: number;
  filled?: Parts | { readonly along: Along; readonly opens: readonly Open[] };
}

/** Fills a rectangle with what is left to cut: largest gap or smallest first, by the rule. */
export function fill(
  size: { readonly width: number; readonly height: number },
  items: readonly Item[],
  left: readonly number[],
  rule: Rule,
  table: Table | undefined,
  effort: Effort,
): Filling {
  const remaining = [...left];
  const order = [...rule.order];
  const caps = new Map(rule.caps);
  const root: Open = { width: size.width, height: size.height };
  const open = [root];
  for (;;) {
    const at = next(open, rule.smallestFirst);
    if (at === undefined) break;
    effort.spend(STEPS + items.length + open.length);
    if (rule.table && table !== undefined) {
      const { parts: whole, counts } = table.best(at.width, at.height);
      if (counts.every((count, i) => count <= entryAt(remaining, i))) {
        counts.forEach((count, i) => {
          remaining[i] = entryAt(remaining, i) - count;
        });
        at.filled = whole;
        continue;
      }
    }
    const block = firstFit(at, items, remaining, order, rule.grow, caps);
    if (block?.kind !== 'pieces') continue;
    remaining[block.item] = entryAt(remaining, block.item) - block.columns * block.rows;
    if (caps.delete(block.item)) {
      order.splice(order.indexOf(block.item), 1);
      order.push(block.item);
    }
    const beside = at.width - block.width;
    const under = at.height - block.height;
    const along = splitBy(rule.split, beside, under);
    const here: Open = { width: block.width, height: block.height, filled: block };
    // Cut across first, the right part keeps the whole height; cut down first, the lower part the width.
    const right: Open = { width: beside, height: along === 'across' ? at.height : block.height };
    const lower: Open = { width: along === 'across' ? block.width : at.width, height: under };
    const [inner, outer, turned]: [Open, Open, Along] =
      along === 'across' ? [lower, right, 'down'] : [right, lower, 'across'];
    const first: Open = {
      width: along === 'across' ? block.width : at.width,
      height: along === 'across' ? at.height : block.height,
      filled: { along: turned, opens: [here, inner] },
    };
    at.filled = { along, opens: [first, outer] };
    for (const each of [inner, outer]) {
      if (each.width > 0 && each.height > 0) open.push(each);
    }
  }
  const counts = left.map((count, i) => count - entryAt(remaining, i));
  return { parts: closed(root), counts };
}

function next(open: Open[], smallestFirst: boolean): Open | undefined {
  let chosen = 0;
  const sign = smallestFirst ? 1 : -1;
  open.forEach((each, i) => {
    const before = open[chosen];
    if (before !== undefined && sign * (areaOf(each) - areaOf(before)) < 0) chosen = i;
  });
  return open.splice(chosen, 1)[0];
}

/** The greatest grid of the first item in order that fits at all. */
function firstFit(
  { width, height }: Open,
  items: readonly Item[],
  remaining: readonly number[],
  order: readonly number[],
  grow: Along,
  caps: ReadonlyMap<number, number>,
): Parts | undefined {
  for (const at of order) {
    const item = items[at];
    const left = entryAt(remaining, at);
    if (item === undefined || left === 0) continue;
    const most = caps.get(at) ?? Number.POSITIVE_INFINITY;
    let best: Parts | undefined;
    let gives = 0;
    for (const turned of turnsOf(item)) {
      const lies = lying(item, turned);
      const fitting: [number, number] = [
        Math.floor(width / lies.width),
        Math.floor(height / lies.height),
      ];
      const across = grow === 'across';
      const long = Math.min(left, across ? fitting[0] : fitting[1], most);
      if (long === 0) continue;
      const deep = Math.min(Math.floor(left / long), across ? fitting[1] : fitting[0]);
      if (long * deep <= gives) continue;
      gives = long * deep;
      best = across ? grid(item, at, turned, long, deep) : grid(item, at, turned, deep, long);
    }
    if (best !== undefined) return best;
  }
  return undefined;
}

function splitBy(split: Rule['split'], beside: number, under: number): Along {
  if (split === 'across' || split === 'down') return split;
  return beside > under === (split === 'longer') ? 'across' : 'down';
}

/** The cuts, from the choices; what was never filled is left over. */
function closed({ width, height, filled }: Open): Parts {
  if (filled === undefined) return { kind: 'left', width, height };
  if (!('opens' in filled)) return filled;
  return cutInto(filled.along, { width, height }, filled.opens.map(closed));
}
