import { logCabinPlaces, type Place, placeWithin } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import { notice } from '../plan/notice.js';
import { perSide } from '../plan/side.js';
import type { Size } from '../plan/size.js';
import { blockParts, fabricsOf, reachOut } from './blockParts.js';
import type { Dimension, Drawing, DrawingWord, Shape } from './drawing.js';
import { cornersOf, middleOf, point, sideOf } from './points.js';
import { drawingSentences } from './sentences.js';

/**
 * The block as sewn and trimmed, with its seam allowance, its logs numbered in sewing order, and a
 * ruled edge to read sizes by.
 *
 * @example
 * const block = logCabin({ rounds: 4, finished: 9, wide: '1 1/4', narrow: '1/2' });
 * drawLogCabin(block).title.text; // 'The block as sewn: 9 finished, trim to 9 1/2'
 */
export function drawLogCabin(plan: LogCabin): Drawing {
  const places = logCabinPlaces(plan);
  const last = plan.rounds.length;
  const reach = plan.rounds[last - 1]?.centerSeamToEdge ?? perSide(() => plan.seam);
  const raw = placeWithin(plan, reach);
  const finished = placeWithin(
    plan,
    perSide((side) => reach[side].minus(plan.seam)),
  );

  const parts = blockParts(plan);
  const shapes: Shape[] = [];
  for (const { place, fabric } of parts) {
    const points = cornersOf(reachOut(place, finished, raw));
    shapes.push({ kind: 'area', role: 'fabric', fabric, points });
  }
  for (const { place, order } of parts) {
    if (order === undefined) continue;
    shapes.push({ kind: 'label', role: 'order', at: middleOf(place), text: { count: order } });
  }
  shapes.push(
    {
      kind: 'line',
      role: 'finished-edge',
      points: [...cornersOf(finished), point(finished.left, finished.top)],
    },
    { kind: 'area', role: 'outline', points: cornersOf(raw) },
  );
  const [topLeft, topRight] = sideOf(raw, 'top');
  const [, bottomLeft] = sideOf(raw, 'left');
  shapes.push(
    { kind: 'scale', from: topLeft, to: topRight, toward: 'top' },
    { kind: 'scale', from: topLeft, to: bottomLeft, toward: 'left' },
  );
  const square = plan.finished.width.equals(plan.finished.height);
  for (const away of square ? (['bottom'] as const) : (['bottom', 'right'] as const)) {
    const extent = away === 'bottom' ? 'width' : 'height';
    const measured = (place: Place, size: Size, word: DrawingWord, row: number): Dimension => {
      const [from, to] = sideOf(place, away);
      return { kind: 'dimension', from, to, away, row, measure: size[extent], word };
    };
    shapes.push(
      measured(places.center, plan.center.finished, 'center', 0),
      measured(finished, plan.finished, 'finished', 1),
      measured(raw, plan.unfinished, 'trim to', 2),
    );
  }
  return {
    title: notice(drawingSentences, 'block-title', {
      finished: plan.finished,
      unfinished: plan.unfinished,
    }),
    description: notice(drawingSentences, 'block-description', {
      center: plan.center.finished,
      logs: plan.logs.length,
      rounds: last,
    }),
    fabrics: fabricsOf(plan),
    shapes,
  };
}
