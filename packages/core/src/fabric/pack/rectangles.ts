import { entryAt } from '../../plan/entryAt.js';

/** A size of pieces to pack, in whole units. */
export interface Item {
  /** Across. */
  readonly width: number;
  /** Down. */
  readonly height: number;
  readonly count: number;
  readonly turnable: boolean;
}

/** Fabric to pack them into, in the same units. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** How many of this size there are. */
  readonly count: number;
}

/** Which way the parts of a rectangle follow one another. */
export type Along = 'across' | 'down';

export interface Extent {
  readonly width: number;
  readonly height: number;
}

/**
 * How a rectangle is cut, always from edge to edge: it is a grid of equal pieces, or left over, or
 * parts side by side (`across`) or one below the other (`down`).
 */
export type Parts = Extent &
  (
    | {
        readonly kind: 'pieces';
        readonly item: number;
        readonly turned: boolean;
        readonly columns: number;
        readonly rows: number;
      }
    | { readonly kind: 'left' }
    | { readonly kind: 'cut'; readonly along: Along; readonly parts: readonly Parts[] }
  );

/** A filled rectangle, and how many of each item it gives. */
export interface Filling {
  readonly parts: Parts;
  readonly counts: readonly number[];
}

/** An item's width and height as it lies. */
export const lying = ({ width, height }: Item, turned: boolean): Extent =>
  turned ? { width: height, height: width } : { width, height };

/** The ways in which an item may lie. */
export const turnsOf = ({ width, height, turnable }: Item): readonly boolean[] =>
  turnable && width !== height ? [false, true] : [false];

/** Whether an item fits into a rectangle, one way or the other. */
export const fitsIn = (item: Item, { width, height }: Extent): boolean =>
  turnsOf(item).some((turned) => {
    const lies = lying(item, turned);
    return lies.width <= width && lies.height <= height;
  });

/** In square units. */
export const areaOf = ({ width, height }: Extent): number => width * height;

/** A grid of one item. */
export function grid(item: Item, at: number, turned: boolean, columns = 1, rows = 1): Parts {
  const { width, height } = lying(item, turned);
  const size = { width: width * columns, height: height * rows };
  return { kind: 'pieces', item: at, turned, columns, rows, ...size };
}

/**
 * Parts that follow one another in a rectangle; what they do not fill of it is left over. Cuts in
 * cuts of the same direction become one, equal grids grow together, and what is left over comes last.
 */
export function cutInto(along: Along, size: Extent, parts: readonly Parts[]): Parts {
  const across = along === 'across';
  const extent = across ? size.width : size.height;
  const kept: Parts[] = [];
  let used = 0;
  for (const part of parts.flatMap((each) => flat(along, widened(along, size, each)))) {
    if (part.kind === 'left') continue;
    used += across ? part.width : part.height;
    const same = kept.findIndex((other) => alike(along, other, part));
    const other = kept[same];
    if (other?.kind !== 'pieces' || part.kind !== 'pieces') kept.push(part);
    else kept[same] = grown(along, other, part);
  }
  const [only] = kept;
  if (only === undefined) return { kind: 'left', ...size };
  if (used === extent && kept.length === 1) return only;
  const rest = across
    ? { width: extent - used, height: size.height }
    : { width: size.width, height: extent - used };
  return {
    kind: 'cut',
    along,
    ...size,
    parts: used === extent ? kept : [...kept, { kind: 'left', ...rest }],
  };
}

const flat = (along: Along, part: Parts): readonly Parts[] =>
  part.kind === 'cut' && part.along === along ? part.parts : [part];

/** The part with what is beside it, so that it reaches from edge to edge. */
function widened(along: Along, size: Extent, part: Parts): Parts {
  const full =
    along === 'across'
      ? { width: part.width, height: size.height }
      : { width: size.width, height: part.height };
  if (full.width === part.width && full.height === part.height) return part;
  return cutInto(along === 'across' ? 'down' : 'across', full, [part]);
}

const alike = (along: Along, one: Parts, other: Parts): boolean =>
  one.kind === 'pieces' &&
  other.kind === 'pieces' &&
  one.item === other.item &&
  one.turned === other.turned &&
  (along === 'across' ? one.rows === other.rows : one.columns === other.columns);

function grown(
  along: Along,
  one: Extract<Parts, { kind: 'pieces' }>,
  other: Extract<Parts, { kind: 'pieces' }>,
): Parts {
  return along === 'across'
    ? { ...one, columns: one.columns + other.columns, width: one.width + other.width }
    : { ...one, rows: one.rows + other.rows, height: one.height + other.height };
}

/** Adds to `counts` how many of each item a rectangle gives. */
export function countInto(counts: number[], part: Parts): number[] {
  if (part.kind === 'pieces') {
    counts[part.item] = entryAt(counts, part.item) + part.columns * part.rows;
  } else if (part.kind === 'cut') {
    for (const each of part.parts) countInto(counts, each);
  }
  return counts;
}
