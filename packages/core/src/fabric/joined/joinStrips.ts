import { fail } from '../../errors/error.js';
import { type Length, type LengthInput, length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import { checkFields, missing } from '../../plan/field.js';
import { notice, type Step, type Warning, warningsFrom } from '../../plan/notice.js';
import type { Piece, PieceInput } from '../../plan/piece.js';
import { fabricSide } from '../pack/readFabric.js';
import { readPieces } from '../readPieces.js';
import { MOST_OF_ONE_PIECE } from '../spec.js';
import { type Join, joinUses, readJoin, readSeam, stripsFor } from './join.js';
import { type JoinStepCode, type JoinWarningCode, joinSentences } from './sentences.js';

/** What is cut from strips that are joined. */
export interface JoinSpec {
  /** The usable width of the fabric: how long a strip is. */
  readonly width: LengthInput;
  /** Pieces of one fabric, of any length; `width` is the width of the strip. */
  readonly pieces: readonly PieceInput[];
  /** Default `diagonal`. */
  readonly join?: Join;
  /** The seam allowance, default 1/4. */
  readonly seam?: LengthInput;
}

/** Strips of one width, joined into one length. */
export interface JoinedRun {
  readonly width: Length;
  /** The places in the spec of the pieces that are cut from it, in this order. */
  readonly pieces: readonly number[];
  /** What all these pieces measure together. */
  readonly total: Length;
  /** What each join uses up of the strips' length. */
  readonly joinUses: Length;
  /** How many strips it takes, the last one included. */
  readonly count: number;
  /** How much of the last strip is used. */
  readonly last: Length;
  /** What is left over of the last strip. */
  readonly leftOver: Length;
  /** The strips, as pieces of a cutting plan. */
  readonly strips: readonly Piece[];
}

/** Where two strips are joined. */
export interface StripJoin {
  /** Which of the joined lengths it is in. */
  readonly run: number;
  /** How far along that length the middle of the seam lies. */
  readonly at: Length;
  /** The place in the spec of the piece that it falls in, and which of them, from 1. */
  readonly piece: number;
  readonly copy: number;
  /** How far along that piece. */
  readonly from: Length;
}

/** Strips that are joined, and what is cut from them. */
export interface JoinedLengths {
  readonly width: Length;
  readonly pieces: readonly Piece[];
  readonly join: Join;
  readonly seam: Length;
  /** One for each width of strips, in the order in which the widths come up. */
  readonly runs: readonly JoinedRun[];
  readonly joins: readonly StripJoin[];
  /** All strips, as pieces of a cutting plan. */
  readonly strips: readonly Piece[];
  /** Joining and cutting apart; the strips themselves are cut by the cutting plan. */
  readonly steps: readonly Step<JoinStepCode>[];
  readonly warnings: readonly Warning<JoinWarningCode>[];
}

const warning = warningsFrom(joinSentences);

/** So many strips are joined at most. */
const MOST_STRIPS = 10_000;

/**
 * Strips across the fabric that are joined: all pieces of one width are cut from one continuous
 * length, in the order of the spec, so that joins fall where they fall.
 *
 * Exact: n strips of length U give n·U less (n − 1) times what a join uses up. A straight join uses
 * two seam allowances; a diagonal one, the strips laid across each other at right angles, uses the
 * strip's width w: nU − (n − 1)w. The last strip is only as long as needed.
 *
 * @throws EighthsError `strip-too-short` where a join uses up a whole strip, `too-many-pieces` beyond
 *   10,000 strips, `no-pieces`, `not-positive` and others, with the path of the field.
 * @example
 * const binding = { label: 'binding', width: '2 1/2', length: 312, count: 1 };
 * const { runs, joins } = joinStrips({ width: 40, pieces: [binding] });
 * runs[0]?.count; // 9
 * runs[0]?.last.toString(); // '12'
 * joins[0]?.from.toString(); // '38 3/4'
 */
export function joinStrips(spec: JoinSpec): JoinedLengths {
  checkFields(spec, '', ['width', 'pieces', 'join', 'seam']);
  const usable = fabricSide(spec.width, 'width');
  const pieces = readPieces(spec.pieces ?? missing('pieces'), 'pieces', MOST_OF_ONE_PIECE);
  const join = readJoin(spec.join);
  const seam = readSeam(spec.seam);

  const widths = new Map<string, number[]>();
  pieces.forEach(({ width, count }, at) => {
    if (count > 0) widths.set(`${width}`, [...(widths.get(`${width}`) ?? []), at]);
  });
  const runs = [...widths.values()].map((places) => runOf(usable, pieces, places, join, seam));
  const joins = runs.flatMap((run, at) => joinsOf(usable, pieces, run, at));
  const atCuts = joins.filter(({ run, piece, from }) => {
    const half = entryAt(runs, run).joinUses.dividedBy(2);
    const rest = entryAt(pieces, piece).length.minus(from);
    return from.compareTo(half) < 0 || rest.compareTo(half) < 0;
  }).length;
  return {
    width: usable,
    pieces,
    join,
    seam,
    runs,
    joins,
    strips: runs.flatMap(({ strips }) => strips),
    steps: runs.flatMap((run) => stepsOf(run, pieces, join, seam)),
    warnings: atCuts === 0 ? [] : [warning('join-at-cut', 'pieces', { count: atCuts })],
  };
}

function runOf(
  usable: Length,
  pieces: readonly Piece[],
  places: readonly number[],
  join: Join,
  seam: Length,
): JoinedRun {
  const members = places.map((at) => entryAt(pieces, at));
  const width = entryAt(members, 0).width;
  const uses = joinUses(join, width, seam);
  const total = members.reduce((sum, each) => sum.plus(each.length.times(each.count)), length(0));
  const count = stripsFor(total, usable, uses);
  if (count > MOST_STRIPS) {
    fail(
      'too-many-pieces',
      'pieces',
      { total: count, most: MOST_STRIPS },
      'These pieces take {total} strips. One plan joins up to {most}: make several.',
    );
  }
  const last = total.minus(usable.minus(uses).times(count - 1));
  const fabric = members.find((each) => each.fabric !== undefined)?.fabric;
  const strip = { ...(fabric !== undefined && { fabric }), width };
  return {
    width,
    pieces: places,
    total,
    joinUses: uses,
    count,
    last,
    leftOver: usable.minus(last),
    strips: [
      ...(count > 1 ? [{ ...strip, length: usable, count: count - 1 }] : []),
      { ...strip, length: last, count: 1 },
    ],
  };
}

function joinsOf(
  usable: Length,
  pieces: readonly Piece[],
  { pieces: places, joinUses: uses, count }: JoinedRun,
  run: number,
): readonly StripJoin[] {
  const shows = usable.minus(uses);
  const joins: StripJoin[] = [];
  let begins = length(0);
  for (const piece of places) {
    const each = entryAt(pieces, piece);
    const ends = begins.plus(each.length.times(each.count));
    while (joins.length < count - 1) {
      const at = shows.times(joins.length + 1).plus(uses.dividedBy(2));
      if (at.compareTo(ends) >= 0) break;
      const before = at.minus(begins).dividedBy(each.length).toGrid(1, 'down').toNumber();
      const from = at.minus(begins).minus(each.length.times(before));
      joins.push({ run, at, piece, copy: before + 1, from });
    }
    begins = ends;
  }
  return joins;
}

function stepsOf(
  { width, count, total, pieces: places }: JoinedRun,
  pieces: readonly Piece[],
  join: Join,
  seam: Length,
): readonly Step<JoinStepCode>[] {
  const whole = places.length === 1 && entryAt(pieces, entryAt(places, 0)).count === 1;
  return [
    ...(count > 1
      ? [notice(joinSentences, `join-${join}` as const, { strips: count, width, seam, total })]
      : []),
    ...(whole ? [] : places).map((at): Step<JoinStepCode> => {
      const piece = entryAt(pieces, at);
      const code = piece.count === 1 ? 'cut-length-one' : 'cut-length-several';
      const { length: long, count: copies } = piece;
      return notice(joinSentences, code, { count: copies, length: long });
    }),
  ];
}
