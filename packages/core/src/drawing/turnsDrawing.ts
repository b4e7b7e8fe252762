import { finishedPlace, type Place } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import type { BlockTurns } from '../block/turns.js';
import { firstWideSide } from '../block/wideCorner.js';
import { fail } from '../errors/error.js';
import { type Length, length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import { notice } from '../plan/notice.js';
import { SIDES } from '../plan/side.js';
import { blockParts, fabricsOf } from './blockParts.js';
import type { Dimension, Drawing, Shape } from './drawing.js';
import { sideOf, turnPlace } from './points.js';
import { drawingSentences } from './sentences.js';
import { area, fabricArea } from './shapes.js';

const moved = ({ left, top, right, bottom }: Place, x: Length, y: Length): Place => ({
  left: left.plus(x),
  top: top.plus(y),
  right: right.plus(x),
  bottom: bottom.plus(y),
});

/** Quarter turns that bring a block's wide half right and below; a plain block stays as it is. */
function unturned(plan: LogCabin): number {
  const first = firstWideSide(plan);
  return first === undefined ? 0 : (1 - SIDES.indexOf(first)) & 3;
}

/** A block's parts with its top left corner in the origin, turned about its middle. */
function turnedParts(
  plan: LogCabin,
  quarterTurns: number,
): readonly { readonly fabric: string; readonly place: Place }[] {
  const { left, top } = finishedPlace(plan, plan.rounds.length);
  const [none, side] = [length(0), plan.finished.width];
  const turns = quarterTurns & 3;
  const x = turns === 1 || turns === 2 ? side : none;
  const y = turns === 2 || turns === 3 ? side : none;
  return blockParts(plan).map(({ fabric, place }) => {
    const atOrigin = moved(place, left.negated(), top.negated());
    return { fabric, place: moved(turnPlace(atOrigin, turns), x, y) };
  });
}

/** The quilt's width below and its height beside it. */
function dimensions(quilt: Place): readonly Dimension[] {
  return (['bottom', 'right'] as const).map((away) => {
    const [from, to] = sideOf(quilt, away);
    const measure = away === 'bottom' ? quilt.right : quilt.bottom;
    return { kind: 'dimension', from, to, away, row: 0, measure, word: 'finished' };
  });
}

/**
 * A quilt top of finished blocks, turned as `blockTurns` says. A curved block is first brought to its
 * wide half right and below, whatever its `wideSides`. The block is turned, never mirrored.
 *
 * @throws EighthsError `not-square` for a block that cannot be turned by a quarter
 * @example
 * const block = logCabin({ rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' });
 * const top = drawBlockTurns(block, blockTurns('circles', 4, 4));
 * top.title.text; // 'A quilt top of 4 by 4 blocks, 36 finished: circles'
 */
export function drawBlockTurns(plan: LogCabin, turns: BlockTurns): Drawing {
  const { width, height } = plan.finished;
  if (!width.equals(height)) {
    fail(
      'not-square',
      'plan',
      { width, height },
      'Only a square block can be turned by a quarter; this one finishes {width} by {height}.',
    );
  }
  const first = unturned(plan);
  const parts = [0, 1, 2, 3].map((turn) => turnedParts(plan, first + turn));
  const none = length(0);
  const quilt = {
    left: none,
    top: none,
    right: width.times(turns.across),
    bottom: width.times(turns.down),
  };
  const block = { left: none, top: none, right: width, bottom: width };
  const shapes: Shape[] = turns.rows.flatMap((row, down) =>
    row.flatMap((turn, across) => {
      const [x, y] = [width.times(across), width.times(down)];
      return [
        ...entryAt(parts, turn).map(({ fabric, place }) => fabricArea(fabric, moved(place, x, y))),
        area('outline', moved(block, x, y)),
      ];
    }),
  );
  const setting = turns.setting.replaceAll('-', ' ');
  const { across, down } = turns;
  return {
    title: notice(drawingSentences, 'turns-title', {
      across,
      down,
      setting,
      finished: { width: quilt.right, height: quilt.bottom },
    }),
    description: notice(drawingSentences, 'turns-description', { setting, finished: width }),
    fabrics: fabricsOf(plan),
    shapes: [...shapes, area('outline', quilt), ...dimensions(quilt)],
  };
}
