import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { type Filled, filled } from '../stock/knapsack.js';
import { TINY } from '../stock/simplex.js';
import { type Values, valueAt } from '../stock/values.js';
import type { Sheet } from './sheet.js';

/** A section of a strip: how long it is, and the levels of the rows it is worth most with. */
export interface PlannedSection {
  readonly length: number;
  readonly levels: readonly number[];
}

/** A strip in sections, and how many of each size it gives. */
export interface PlannedStrip {
  readonly level: number;
  readonly sections: readonly PlannedSection[];
  readonly counts: readonly number[];
}

/** What a sum in floating point reaches. */
const reaches = (sum: number, value: number): boolean => sum >= value - TINY;

/**
 * What rows, sections and strips can be worth at given prices (by stages, as Gilmore and Gomory 1965):
 * a knapsack over the pieces of each row, one over the rows of each section, one over the sections of
 * each strip, for every length at once. Only what is asked for is reckoned. No row holds more of a size
 * than is demanded; several rows together may, so the values are upper bounds.
 */
export class Tables {
  /** Whether nothing was left out for want of effort. */
  complete = true;
  readonly #sheet: Sheet;
  readonly #prices: readonly number[];
  readonly #effort: Effort;
  readonly #nothing: Filled;
  readonly #rows: Filled[] = [];
  readonly #stacks: Values[] = [];
  readonly #strips: { readonly sections: Values; readonly values: Values }[] = [];

  constructor(sheet: Sheet, prices: readonly number[], effort: Effort) {
    this.#sheet = sheet;
    this.#prices = prices;
    this.#effort = effort;
    this.#nothing = { best: new Float64Array(sheet.capacity + 1), patternOf: () => [] };
  }

  /** The greatest value of a strip. */
  strip(level: number): number {
    return valueAt(this.#strip(level).values, this.#sheet.capacity);
  }

  /** The sections of the most valuable strip of a level that is so long. */
  sections(level: number, length: number): readonly PlannedSection[] {
    const { sections, values } = this.#strip(level);
    const full = this.#row(level).best;
    const planned: PlannedSection[] = [];
    let left = length;
    let width = 1;
    // What is left when it is worth no more than one row as wide as the strip is that row.
    while (!reaches(valueAt(full, left), valueAt(values, left)) && width <= left) {
      const worth = valueAt(sections, width);
      if (worth > 0 && reaches(valueAt(values, left - width) + worth, valueAt(values, left))) {
        planned.push({ length: width, levels: this.#rowsOf(level, width) });
        left -= width;
      } else width += 1;
    }
    return [{ length: left, levels: [level] }, ...planned];
  }

  /** The most valuable strip of a level; of some sizes it may give more than are demanded. */
  plannedStrip(level: number): PlannedStrip {
    const counts = this.#sheet.demands.map(() => 0);
    const sections = this.sections(level, this.#sheet.capacity);
    for (const { length, levels } of sections) {
      for (const row of levels) {
        const pattern = this.#row(row).patternOf(length);
        this.#sheet.levels[row]?.items.forEach((item, i) => {
          counts[item] = entryAt(counts, item) + (pattern[i] ?? 0);
        });
      }
    }
    return { level, sections, counts };
  }

  /** The levels of the rows that a section of a strip is worth most with. */
  #rowsOf(level: number, length: number): readonly number[] {
    const { levels } = this.#sheet;
    const rows: number[] = [];
    let height = entryAt(levels, level).height;
    let value = valueAt(this.#strip(level).sections, length);
    levels.forEach((row, index) => {
      while (index > level && row.height <= height && value > TINY) {
        const rest = valueAt(this.#stack(height - row.height), length);
        if (!reaches(rest + valueAt(this.#row(index).best, length), value)) break;
        rows.push(index);
        height -= row.height;
        value = rest;
      }
    });
    return rows;
  }

  #row(level: number): Filled {
    if (this.#rows[level] !== undefined) return this.#rows[level];
    const { capacity, levels } = this.#sheet;
    const { items, sizes } = entryAt(levels, level);
    const demands = items.map((item) => entryAt(this.#sheet.demands, item));
    const prices = items.map((item) => entryAt(this.#prices, item));
    const row = demands.some((count, i) => count > 0 && entryAt(prices, i) > 0)
      ? filled({ capacity, sizes, demands }, prices, this.#effort)
      : this.#nothing;
    if (row === undefined) this.complete = false;
    this.#rows[level] = row ?? this.#nothing;
    return row ?? this.#nothing;
  }

  /** Sections that are so high at most. */
  #stack(height: number): Values {
    const known = this.#stacks[height];
    if (known !== undefined) return known;
    const stack = this.#stacked(height, 0);
    this.#stacks[height] = stack;
    return stack;
  }

  /** The same, of rows from a level on: a row, and whatever fits below it. */
  #stacked(height: number, from: number): Values {
    const { capacity, levels } = this.#sheet;
    let best = this.#nothing.best;
    for (let level = from; level < levels.length; level += 1) {
      const rest = height - entryAt(levels, level).height;
      const row = rest < 0 ? this.#nothing : this.#row(level);
      if (row === this.#nothing) continue;
      if (best === this.#nothing.best) best = new Float64Array(capacity + 1);
      const below = this.#stack(rest);
      this.#effort.spend(capacity);
      for (let x = 0; x <= capacity; x += 1) {
        const value = valueAt(row.best, x) + valueAt(below, x);
        if (value > valueAt(best, x)) best[x] = value;
      }
    }
    return best;
  }

  #strip(level: number) {
    const known = this.#strips[level];
    if (known !== undefined) return known;
    const { capacity, levels } = this.#sheet;
    const sections = this.#stacked(entryAt(levels, level).height, level + 1);
    /** Of lower sections alone, and with one row as wide as the strip, which no strip needs twice. */
    const lower = new Float64Array(capacity + 1);
    const values = this.#row(level).best.slice();
    for (let width = 1; width <= capacity; width += 1) {
      const worth = valueAt(sections, width);
      // Neither as much as a shorter section, nor as several together.
      if (reaches(Math.max(valueAt(sections, width - 1), valueAt(lower, width)), worth)) continue;
      this.#effort.spend(2 * (capacity - width));
      for (let x = width; x <= capacity; x += 1) {
        lower[x] = Math.max(valueAt(lower, x), valueAt(lower, x - width) + worth);
        values[x] = Math.max(valueAt(values, x), valueAt(values, x - width) + worth);
      }
    }
    const strip = { sections, values };
    this.#strips[level] = strip;
    return strip;
  }
}
