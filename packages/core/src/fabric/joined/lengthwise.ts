import { fail } from '../../errors/error.js';
import { type Length, type LengthInput, length } from '../../length/length.js';
import { longerOf } from '../../length/longer.js';
import { checkFields, missing } from '../../plan/field.js';
import { notice, type Step } from '../../plan/notice.js';
import { areaOf, type Piece, type PieceInput } from '../../plan/piece.js';
import { type CutRectangle, packFabric, unitsOf } from '../pack/packFabric.js';
import { fabricSide } from '../pack/readFabric.js';
import type { PackStepCode } from '../pack/sentences.js';
import type { Placement } from '../placements.js';
import { readPieces } from '../readPieces.js';
import { type JoinStepCode, joinSentences } from './sentences.js';

/** Pieces that are cut along the length of the fabric. */
export interface LengthwiseSpec {
  /** The usable width of the fabric. */
  readonly width: LengthInput;
  /** Pieces of one fabric: `width` lies along the width of the fabric, `length` down its length. */
  readonly pieces: readonly PieceInput[];
}

/** The block of fabric that pieces cut along the length take. */
export interface Lengthwise {
  readonly width: Length;
  readonly pieces: readonly Piece[];
  /** How long the block is. */
  readonly length: Length;
  /** No block is shorter than this. */
  readonly lowerBound: Length;
  /** Whether that is proven to be the least: the length is the lower bound. */
  readonly optimal: boolean;
  readonly placements: readonly Placement[];
  /** What stays beside and below the pieces for others. */
  readonly leftOver: readonly Omit<Placement, 'piece'>[];
  readonly steps: readonly Step<JoinStepCode | PackStepCode>[];
}

/** So many pieces lie in one block. */
const MOST_ALONG = 1_000;
/** Work for each length that is tried, in elementary steps. */
const EFFORT = 400_000;

/**
 * The block of fabric for pieces that are cut along its length, side by side across the width, such
 * as borders that must not be joined; and what stays beside them. Exact: lengths are never rounded.
 *
 * The bound is the longest piece, or what the area takes, or what the pieces wider than half the
 * fabric take one below the other.
 *
 * @throws EighthsError `piece-too-long` where a piece is wider than the fabric, `too-many-pieces`
 *   beyond 1,000, `no-pieces`, `not-positive` and others, with the path of the field.
 * @example
 * const borders = [
 *   { label: 'side', width: '5 1/2', length: 70, count: 2 },
 *   { label: 'top', width: '5 1/2', length: 64, count: 2 },
 * ];
 * const { length, leftOver } = lengthwise({ width: 40, pieces: borders });
 * length.toString(); // '70'
 * leftOver.map(({ width, height }) => `${width} by ${height}`); // ['11 by 6','18 by 70']
 */
export function lengthwise(spec: LengthwiseSpec): Lengthwise {
  checkFields(spec, '', ['width', 'pieces']);
  const width = fabricSide(spec.width, 'width');
  const pieces = readPieces(spec.pieces ?? missing('pieces'), 'pieces', MOST_ALONG);
  pieces.forEach((piece, at) => {
    if (piece.count > 0 && piece.width.compareTo(width) > 0) tooWide(piece, at, width);
  });
  const { unit } = unitsOf([], pieces);
  // As they lie: what they measure across is their length to the packer.
  const lying = pieces.map((piece) => ({
    ...piece,
    width: piece.length,
    length: piece.width,
    turnable: false,
  }));
  const needed = pieces.filter(({ count }) => count > 0);
  const longest = needed.reduce((most, each) => longerOf(most, each.length), length(0));
  const stacked = needed
    .filter((piece) => piece.width.times(2).compareTo(width) > 0)
    .reduce((sum, piece) => sum.plus(piece.length.times(piece.count)), length(0));
  const area = areaOf(pieces).dividedBy(width).toGrid(unit, 'up');
  const lowerBound = longerOf(longerOf(longest, stacked), area);

  const tried = (long: Length): CutRectangle | undefined => {
    const from = { from: 0, x: length(0), y: length(0), width, length: long, count: 1 };
    const { rectangles, left } = packFabric([from], lying, EFFORT);
    return left.every((count) => count === 0) ? rectangles[0] : undefined;
  };
  let tooShort = lowerBound.minus(unit);
  let block = tried(lowerBound);
  for (let long = lowerBound; block === undefined; ) {
    tooShort = long;
    long = long.times(2);
    block = tried(long);
  }
  for (;;) {
    const middle = tooShort.plus(block.length).dividedBy(2).toGrid(unit, 'down');
    if (middle.compareTo(tooShort) <= 0 || middle.compareTo(block.length) >= 0) break;
    const shorter = tried(middle);
    if (shorter === undefined) tooShort = middle;
    else block = shorter;
  }
  const total = block.length;
  return {
    width,
    pieces,
    length: total,
    lowerBound,
    optimal: total.equals(lowerBound),
    placements: block.placements,
    leftOver: block.leftOver,
    steps: [notice(joinSentences, 'cut-block', { length: total }), ...block.steps],
  };
}

/** @throws EighthsError `piece-too-long` */
const tooWide = (piece: Piece, at: number, width: Length): never =>
  fail(
    'piece-too-long',
    `pieces[${at}].width`,
    { length: piece.width, width },
    'A piece {length} wide and longer than that does not fit on fabric {width} wide, neither across nor along. Make it at most {width} wide, or piece it from narrower ones.',
  );
