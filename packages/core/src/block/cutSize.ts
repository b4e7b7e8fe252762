import type { Length } from '../length/length.js';

/** Sizes to cut on the grid, and what they were rounded up from where that differs. */
export interface Cut<Sizes> {
  readonly cut: Sizes;
  readonly exact?: Sizes;
}

/** Rounds every side of a size up to the grid: too much can be trimmed, too little is lost. */
export function cutSize<Name extends string>(
  exact: Readonly<Record<Name, Length>>,
  grid: Length,
): Cut<Readonly<Record<Name, Length>>> {
  const cut: Record<Name, Length> = { ...exact };
  let onGrid = true;
  for (const name in exact) {
    cut[name] = exact[name].toGrid(grid, 'up');
    onGrid &&= cut[name].equals(exact[name]);
  }
  return onGrid ? { cut } : { cut, exact };
}
