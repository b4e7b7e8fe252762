import { entryAt } from '../../plan/entryAt.js';
import { dot, type Pattern } from './stock.js';
import { valueAt } from './values.js';

/** Below this a floating-point number counts as nothing. */
export const TINY = 1e-9;

/** Something that can be cut: how many it gives of each size, and what it costs. */
export interface Column {
  readonly counts: readonly number[];
  /** One where strips are counted, or none for a column that only lets go of a surplus. */
  readonly cost: number;
}

/**
 * A basis of the linear program "cut every size as often as it is needed, at little cost, parts of
 * strips allowed": revised simplex with a dense inverse, for a few dozen sizes.
 */
export class Simplex {
  readonly #columns: Column[];
  readonly #inverse: Float64Array[];
  /** How many of each basic column. */
  readonly #amounts: number[];
  /** What one more piece of each size would cost. */
  readonly duals: number[];

  /** Begins with columns of one size each, of which each gives so many. */
  constructor(
    demands: readonly number[],
    most: (item: number) => number,
    cost: (item: number) => number = () => 1,
  ) {
    const size = demands.length;
    this.#columns = demands.map((_, i) => ({
      counts: demands.map((_, j) => (i === j ? most(i) : 0)),
      cost: cost(i),
    }));
    this.#inverse = demands.map((_, i) => {
      const row = new Float64Array(size);
      row[i] = 1 / most(i);
      return row;
    });
    this.#amounts = demands.map((demand, i) => demand / most(i));
    this.duals = demands.map((_, i) => cost(i) / most(i));
  }

  get cost(): number {
    return this.#amounts.reduce(
      (sum, amount, row) => sum + amount * entryAt(this.#columns, row).cost,
      0,
    );
  }

  /** The patterns in use and how many strips of each. */
  get parts(): { readonly pattern: Pattern; readonly amount: number }[] {
    return this.#columns.flatMap(({ counts, cost }, row) => {
      const amount = entryAt(this.#amounts, row);
      return cost === 1 && amount > TINY ? [{ pattern: counts, amount }] : [];
    });
  }

  /** How many of a column are in use. */
  amountOf(column: Column): number {
    return this.#amounts[this.#columns.indexOf(column)] ?? 0;
  }

  usePattern(pattern: Pattern): void {
    this.use({ counts: pattern, cost: 1 });
  }

  /** Where a size costs less than nothing, lets more of it be cut than is needed. */
  releaseSurplus(): boolean {
    const item = this.duals.findIndex((dual) => dual < -TINY);
    if (item < 0) return false;
    this.use({ counts: this.duals.map((_, i) => (i === item ? -1 : 0)), cost: 0 });
    return true;
  }

  use(column: Column): void {
    const change = this.#inverse.map((row) => {
      let sum = 0;
      for (let i = 0; i < row.length; i += 1) sum += valueAt(row, i) * entryAt(column.counts, i);
      return sum;
    });
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    change.forEach((rate, row) => {
      if (rate < TINY) return;
      const ratio = entryAt(this.#amounts, row) / rate;
      if (ratio < least) [least, leaving] = [ratio, row];
    });
    const pivotRow = this.#inverse[leaving];
    if (pivotRow === undefined) return;
    const pivot = entryAt(change, leaving);

    for (let i = 0; i < pivotRow.length; i += 1) pivotRow[i] = valueAt(pivotRow, i) / pivot;
    this.#inverse.forEach((row, index) => {
      const rate = entryAt(change, index);
      if (index === leaving || rate === 0) return;
      for (let i = 0; i < row.length; i += 1)
        row[i] = valueAt(row, i) - rate * valueAt(pivotRow, i);
      this.#amounts[index] = Math.max(0, entryAt(this.#amounts, index) - rate * least);
    });
    this.#amounts[leaving] = least;
    this.#columns[leaving] = column;
    const gain = column.cost - dot(this.duals, column.counts);
    this.duals.forEach((dual, i) => {
      this.duals[i] = dual + gain * valueAt(pivotRow, i);
    });
  }
}
