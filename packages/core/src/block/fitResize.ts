import { fail } from '../errors/error.js';
import type { Length, LengthInput } from '../length/length.js';
import { greatestDivisor } from '../number/greatestDivisor.js';
import { checkFields, countField, lengthField, rationalField } from '../plan/field.js';
import { type LogCabinDesign, readDesign } from './design.js';
import type { LogCabinFit } from './fitAnswer.js';
import { findLogCabins, type LogCabinFindings } from './fitLogCabin.js';
import { MOST_STEPS } from './fitProblem.js';
import type { LogCabinSpec, LogKind } from './spec.js';

/** How a design is brought to another size. */
export interface ResizeOptions {
  /** Default the design's. */
  readonly grid?: LengthInput;
  /** How many blocks are wanted at most; default 10. */
  readonly most?: number;
}

const USUAL_MOST = 10;

/** The one width of a kind's logs, or undefined where the block has none of that kind. */
function widthOf({ rounds }: LogCabinDesign, kind: LogKind): Length | undefined {
  const widths = rounds.flat().flatMap((log) => (log.kind === kind ? [log.finished] : []));
  const [first] = widths;
  if (first !== undefined && widths.some((width) => !width.equals(first))) {
    fail(
      'widths-vary',
      kind,
      { kind },
      'The {kind} logs are not the same in every round. Give one width, or find an arc for the other size.',
    );
  }
  return first;
}

/** The side of a square block's center and of the block. */
function squareSides({ center, finished }: LogCabinDesign): {
  readonly center: Length;
  readonly finished: Length;
} {
  const { width, height } = center;
  if (!width.equals(height)) {
    fail(
      'not-square',
      'center',
      { width, height },
      'A square center is needed here, not {width} by {height}.',
    );
  }
  return { center: width, finished: finished.width };
}

/**
 * A design at another finished size, closest first: wide : narrow as near to the design's as the grid
 * allows, among blocks whose center is one of the two places of the grid next to its share of the
 * new size. (What a round adds lies on the grid, so the center moves by as many steps as rounds.)
 *
 * @throws EighthsError `widths-vary`, `not-square`, and as `logCabin` and `findLogCabins`
 * @example
 * const design = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' };
 * const { fits } = resizeLogCabin(design, 12);
 * [fits[0].center, fits[0].wide, fits[0].narrow]; // ["3","1 5/8","5/8"]
 */
export function resizeLogCabin(
  spec: LogCabinSpec,
  finishedInput: LengthInput,
  options: ResizeOptions = {},
): LogCabinFindings {
  checkFields(options, 'options', ['grid', 'most']);
  const design = readDesign(spec);
  const sides = squareSides(design);
  const finished = rationalField(finishedInput, 'finished');
  const { grid: gridInput = design.grid, most = USUAL_MOST } = options;
  const grid = rationalField(gridInput, 'grid');
  const [wide, narrow] = [widthOf(design, 'wide'), widthOf(design, 'narrow')];
  widthOf(design, 'log');
  const center = sides.center.times(finished).dividedBy(sides.finished);
  const play = grid.times(design.rounds.length);
  const least = center.minus(play).plus(grid);
  const shared = {
    rounds: design.rounds.length,
    layout: design.layout,
    finished,
    grid,
    seam: design.seam,
    most,
    center: { most: center.plus(play), ...(least.sign() > 0 && { least }) },
  };
  if (wide === undefined || narrow === undefined) {
    return findLogCabins({ ...shared, kind: 'plain', wish: { center } });
  }
  const first = spec.first === undefined ? {} : { first: spec.first };
  const ratio = wide.dividedBy(narrow);
  return findLogCabins({ ...shared, ...first, kind: 'curved', wish: { ratio, center } });
}

/** Which sizes are looked through, and how many blocks may stand in a row. */
export interface SideBySideOptions extends ResizeOptions {
  /** The smallest finished size looked for; default 3 inches. */
  readonly least?: LengthInput;
  /** The largest; default 24 inches. */
  readonly mostSize?: LengthInput;
  /** The most blocks of one size in a row before the edges meet again, from 1 to 12; default 4. */
  readonly mostBlocks?: number;
}

/** A size of a design that can stand beside the design's own. */
export interface SideBySide {
  readonly finished: Length;
  /** So many blocks of the design's own size are as long as `others` of this size. */
  readonly own: number;
  readonly others: number;
  /** How long that is. */
  readonly span: Length;
  /** The design at this size. */
  readonly fit: LogCabinFit;
}

/**
 * Which other sizes of a design can stand beside it in a quilt: sizes of which a few blocks in a row
 * are exactly as long as a few of the design's own, and that come out on the grid. Smallest first.
 *
 * @throws EighthsError as `resizeLogCabin`
 * @example
 * const design = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' };
 * const sizes = sizesSideBySide(design, { mostBlocks: 2 });
 * sizes.map(({ finished }) => finished); // ["4 1/2","18"]
 */
export function sizesSideBySide(
  spec: LogCabinSpec,
  options: SideBySideOptions = {},
): readonly SideBySide[] {
  checkFields(options, 'options', ['grid', 'most', 'least', 'mostSize', 'mostBlocks']);
  const { least: leastInput = 3, mostSize = 24, mostBlocks = 4, ...resize } = options;
  const least = lengthField(leastInput, 'least');
  const largest = lengthField(mostSize, 'mostSize');
  const blocks = countField(mostBlocks, 'mostBlocks', 1, 12);
  const design = readDesign(spec);
  const { finished: ownSize } = squareSides(design);
  const { grid = design.grid } = resize;
  const found: SideBySide[] = [];
  for (let own = 1; own <= blocks; own += 1) {
    for (let others = 1; others <= blocks; others += 1) {
      if (own === others || greatestDivisor(BigInt(own), BigInt(others)) > 1n) continue;
      const span = ownSize.times(own);
      const finished = span.dividedBy(others);
      const inRange = finished.compareTo(least) >= 0 && finished.compareTo(largest) <= 0;
      if (!inRange || !finished.isOnGrid(grid)) continue;
      if (finished.compareTo(lengthField(grid, 'grid').times(MOST_STEPS)) > 0) continue;
      const [fit] = resizeLogCabin(spec, finished, { ...resize, most: 1 }).fits;
      if (fit !== undefined) found.push({ finished, own, others, span, fit });
    }
  }
  return found.sort((one, other) => one.finished.compareTo(other.finished));
}
