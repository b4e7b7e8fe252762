import { type Length, length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import type { EndRow, Strip, StripCut, StripEnd } from '../plan.js';
import type { SheetRun } from './fillSheet.js';
import type { Layout, Row } from './sheet.js';
import type { ThriftyTask } from './sheetOf.js';

/** A cutting in lengths, widest strips first: what is as wide as its strip first in it, then its ends. */
export function thriftyStrips(
  { sheet, sizes, widths }: ThriftyTask,
  fabric: Length,
  runs: readonly SheetRun[],
): readonly Strip[] {
  const cutsOf = ({ level, pattern }: Row): StripCut[] =>
    entryAt(sheet.levels, level).items.flatMap((item, i) => {
      const size = sizes[item];
      const count = entryAt(pattern, i);
      const width = widths[level];
      if (size === undefined || width === undefined || count === 0) return [];
      const { pieces } = size;
      return size.width.equals(width)
        ? [{ length: size.length, count, pieces }]
        : [{ length: size.width, count, pieces, turned: true }];
    });
  const endOf = (rows: readonly Row[]): StripEnd => {
    const cut = rows
      .map((row): EndRow => ({ width: entryAt(widths, row.level), count: 1, cuts: cutsOf(row) }))
      .sort((a, b) => b.width.compareTo(a.width) || byWriting(a, b));
    const long = cut.map(({ cuts }) => extent(cuts)).sort((a, b) => b.compareTo(a))[0];
    return { length: long ?? fabric, count: 1, rows: together(cut) };
  };
  const strips = runs.map(({ layout: { level, sections }, times }): Strip => {
    const isFull = (rows: readonly Row[]): boolean => rows[0]?.level === level;
    const cuts = merged(
      sections.filter(isFull).flatMap(([row]) => (row === undefined ? [] : cutsOf(row))),
    );
    const ends = together(
      alike(sections.filter((rows) => !isFull(rows)))
        .map(endOf)
        .sort(longestFirst),
    );
    const taken = extent([...cuts, ...ends]);
    return {
      width: entryAt(widths, level),
      count: times,
      cuts,
      ...(ends.length > 0 && { ends }),
      end: fabric.minus(taken),
    };
  });
  const level = (strip: Strip): number => widths.findIndex((width) => width.equals(strip.width));
  return together(strips.sort((a, b) => level(a) - level(b) || byWriting(a, b))).sort(
    (a, b) => level(a) - level(b) || b.count - a.count,
  );
}

/** Sections with rows of the same widths as one, whose rows hold what all of theirs do. */
function alike(sections: Layout['sections']): Layout['sections'] {
  const byLevels = new Map<string, Row[]>();
  for (const section of sections) {
    const rows = [...section].sort((a, b) => a.level - b.level);
    const key = rows.map(({ level }) => level).join();
    const known = byLevels.get(key);
    byLevels.set(
      key,
      rows.map(({ level, pattern }, i) => ({
        level,
        pattern: pattern.map((count, j) => count + (known?.[i]?.pattern[j] ?? 0)),
      })),
    );
  }
  return [...byLevels.values()];
}

const written = (value: object): string => JSON.stringify({ ...value, count: 0 });

const byWriting = (a: object, b: object): number => (written(a) < written(b) ? -1 : 1);

const longestFirst = (a: { readonly length: Length }, b: { readonly length: Length }): number =>
  b.length.compareTo(a.length) || byWriting(a, b);

/** What is alike, one after the other, as one with both counts. */
function together<Counted extends { readonly count: number }>(list: readonly Counted[]): Counted[] {
  const all: Counted[] = [];
  for (const each of list) {
    const last = all.at(-1);
    if (last === undefined || written(last) !== written(each)) all.push(each);
    else all[all.length - 1] = { ...last, count: last.count + each.count };
  }
  return all;
}

/** Cuts of several sections that are as wide as the strip, longest first. */
const merged = (cuts: readonly StripCut[]): StripCut[] => together([...cuts].sort(longestFirst));

const extent = (cuts: readonly { readonly length: Length; readonly count: number }[]): Length =>
  cuts.reduce((total, cut) => total.plus(cut.length.times(cut.count)), length(0));
