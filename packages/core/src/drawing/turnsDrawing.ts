import type { LogCabin } from '../block/plan.js';
import type { BlockTurns } from '../block/turns.js';
import { fail } from '../errors/error.js';
import { length } from '../length/length.js';
import { notice } from '../plan/notice.js';
import { logCabinFace } from './blockFace.js';
import { fabricsOf } from './blockParts.js';
import { blockLayer } from './cellAreas.js';
import type { Drawing } from './drawing.js';
import { cornersOf } from './points.js';
import { drawingSentences } from './sentences.js';
import { area, dimension } from './shapes.js';

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
  const { across, down, rows } = turns;
  const [face, lay] = [logCabinFace(plan), blockLayer()];
  const none = length(0);
  const quilt = { left: none, top: none, right: width.times(across), bottom: width.times(down) };
  const shapes = rows.flatMap((row, y) =>
    row.flatMap((turn, x) => {
      const [left, top] = [width.times(x), width.times(y)];
      const place = { left, top, right: left.plus(width), bottom: top.plus(width) };
      return [...lay(face, { turn, corners: cornersOf(place) }), area('outline', place)];
    }),
  );
  const setting = turns.setting.replaceAll('-', ' ');
  return {
    title: notice(drawingSentences, 'turns-title', {
      across,
      down,
      setting,
      finished: { width: quilt.right, height: quilt.bottom },
    }),
    description: notice(drawingSentences, 'turns-description', { setting, finished: width }),
    fabrics: fabricsOf(plan),
    shapes: [
      ...shapes,
      area('outline', quilt),
      dimension(quilt, 'bottom', 'finished'),
      dimension(quilt, 'right', 'finished'),
    ],
  };
}
