import { alike } from './alike.js';
import { type Bound, certified, simpleBound } from './bound.js';
import { dive } from './dive.js';
import { Effort } from './effort.js';
import { fill, firstFit } from './greedy.js';
import { merged } from './merge.js';
import { preferred } from './preference.js';
import { relaxation, wholeStrips } from './relaxation.js';
import { search } from './search.js';
import { type Run, type Stock, stripsIn } from './stock.js';

/** A cutting, and why it cannot take fewer strips than that. */
export interface Cutting {
  readonly runs: readonly Run[];
  readonly bound: Bound;
  /** Whether a cutting with as few strips as the bound was looked for everywhere, in vain. */
  readonly searched: boolean;
}

/** How often a dive may settle on another pattern than the nearest, at most. */
const MOST_SKIPS = 9;
/** A complete search goes as deep as there are strips: beyond this it would not end anyway. */
const MOST_STRIPS_SEARCHED = 200;
/** Steps for making a finished cutting simpler: a small part of a person's patience. */
const MERGING_STEPS = 5_000;

/**
 * The fewest strips that give all pieces, proven where the effort suffices, and among equal cuttings
 * few different strips. Yields between pieces of work, so that a caller may pause or stop.
 *
 * From cheap to dear: greedy cuttings against bounds that need no search; prices from the relaxation
 * and the bound they certify; cuttings built from those prices; dives; and, only where one strip is
 * still in doubt, a complete search.
 */
export function* cuttingStock(stock: Stock, effort: Effort): Generator<void, Cutting> {
  let bound = simpleBound(stock);
  let runs: readonly Run[] = firstFit(stock);
  const offer = (other: readonly Run[]): void => {
    runs = preferred(stock, runs, other);
  };
  const inDoubt = (): number => stripsIn(runs) - bound.strips;

  if (inDoubt() > 0) offer(fill(stock, stock.sizes, effort));
  const pool = runs.map(({ pattern }) => pattern);
  if (inDoubt() > 0) {
    const relaxed = yield* relaxation(stock, pool, effort);
    bound = certified(stock, relaxed.duals, wholeStrips(relaxed.strips), effort);
  }
  offer(alike(stock, bound.strips, bound, effort));

  for (let skips = 0; skips <= MOST_SKIPS && inDoubt() > 0 && effort.allows(0); skips += 1) {
    yield* dive(stock, bound.strips, skips, pool, effort, offer);
  }
  let searched = false;
  if (inDoubt() === 1 && stripsIn(runs) <= MOST_STRIPS_SEARCHED) {
    const found = yield* search(stock, bound.strips, bound, effort);
    searched = found === 'none';
    if (typeof found === 'object') offer(found);
  }
  return { runs: inOrder(merged(stock, runs, new Effort(MERGING_STEPS))), bound, searched };
}

/** What is cut most often first; the odd strips, with the longest ends, come last. */
const inOrder = (runs: readonly Run[]): readonly Run[] =>
  [...runs].sort((a, b) => b.times - a.times);
