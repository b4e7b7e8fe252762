import type { Place } from '../block/places.js';
import { fail } from '../errors/error.js';
import { length } from '../length/length.js';
import { checkFields, countField, lengthField, missing } from '../plan/field.js';
import { inWords } from '../unit/say.js';
import type { BlockFace } from './blockFace.js';
import { bindingAreas, borderAreas } from './borderAreas.js';
import { blockLayer, polygon } from './cellAreas.js';
import type { Area, Drawing } from './drawing.js';
import type { QuiltDrawingSpec, QuiltFabrics } from './quiltDrawingSpec.js';
import { drawingSentences } from './sentences.js';
import { area, dimension } from './shapes.js';

const FIELDS: readonly (keyof QuiltDrawingSpec)[] = [
  'layout',
  'blocks',
  'places',
  'borders',
  'fabrics',
  'binding',
];

/** Which block stands in each place for one. */
function blockIn({ layout, blocks, places }: QuiltDrawingSpec): (index: number) => BlockFace {
  const needed = layout.blocks;
  if (places !== undefined && places.length !== needed) {
    fail(
      'list-length',
      'places',
      { entries: places.length, needed },
      'This layout has {needed} places for blocks: the list needs as many entries, not {entries}.',
    );
  }
  for (const [index, { size }] of blocks.entries()) {
    if (size.width.equals(layout.block.width) && size.height.equals(layout.block.height)) continue;
    fail(
      'block-size-differs',
      `blocks[${index}]`,
      { block: size, layout: layout.block },
      'This block finishes {block}, and the layout is one of blocks that finish {layout}.',
    );
  }
  const most = blocks.length - 1;
  return (index) => {
    const chosen = places?.[index];
    const at =
      chosen === undefined
        ? index % blocks.length
        : countField(chosen, `places[${index}]`, 0, most);
    return blocks[at] ?? missing('blocks');
  };
}

/** The cells with their fabrics, and the edge of each block. */
function cellAreas(spec: QuiltDrawingSpec, fabrics: QuiltFabrics): readonly Area[] {
  const lay = blockLayer();
  const block = blockIn(spec);
  let place = 0;
  return spec.layout.cells.flatMap((cell): readonly Area[] => {
    const { kind, corners } = cell;
    if (kind !== 'block') return [polygon(fabrics[kind] ?? kind, corners)];
    const areas = lay(block(place), cell);
    place += 1;
    return [...areas, { kind: 'area', role: 'outline', points: corners }];
  });
}

const nameOf = (index: number, count: number): string =>
  count === 1 ? 'border' : `border ${index + 1}`;

/**
 * A whole quilt: its blocks in their places, turned as the layout says and never mirrored, sashes,
 * cornerstones and triangles, borders, and the edge of the binding beyond the finished top. The origin
 * is the upper left corner of the top without borders. Measures are exact, and so is every cell; what lies
 * inside a block on point is drawn to a millionth of an inch.
 *
 * @throws EighthsError `missing-field`, `unknown-field`, `list-length`, `block-size-differs` or
 *   `not-a-count`
 * @example
 * const layout = quiltLayout({ block: 9, across: 2, down: 2, turns: 'circles' });
 * const block = logCabin({ rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' });
 * const quilt = drawQuilt({ layout, blocks: [logCabinFace(block)] });
 * quilt.title.text; // 'A quilt of 2 by 2 blocks, 18 finished'
 * quilt.fabrics; // ["center","wide","narrow","binding"]
 */
export function drawQuilt(spec: QuiltDrawingSpec): Drawing {
  checkFields(spec, '', FIELDS);
  const { layout = missing('layout'), borders, fabrics = {}, blocks = missing('blocks') } = spec;
  countField(blocks.length, 'blocks', 1, 1000);
  const binding = lengthField(spec.binding ?? '3/8', 'binding', 'zero or more');
  const none = length(0);
  const { width, height } = layout.finished;
  let edge: Place = { left: none, top: none, right: width, bottom: height };
  const areas: Area[] = [...cellAreas(spec, fabrics)];
  const all = borders?.borders ?? [];
  for (const [index, border] of all.entries()) {
    const name = fabrics.borders?.[index] ?? nameOf(index, all.length);
    const corner = fabrics.borderCorners?.[index] ?? name;
    const drawn = borderAreas(border, edge, { border: name, corner });
    areas.push(...drawn.areas);
    edge = drawn.outer;
  }
  const finished = edge;
  if (binding.sign() > 0) {
    const drawn = bindingAreas(edge, binding, fabrics.binding ?? 'binding');
    areas.push(...drawn.areas);
    edge = drawn.outer;
  }
  const { across, down, setting, block } = layout;
  const size = borders?.finished ?? layout.finished;
  const title = setting === 'straight' ? 'quilt-title' : 'quilt-on-point-title';
  return {
    title: inWords(drawingSentences, title, { across, down, finished: size }),
    description: inWords(drawingSentences, 'quilt-description', {
      blocks: layout.blocks,
      block,
      borders: all.length,
    }),
    fabrics: [...new Set(areas.flatMap(({ fabric }) => (fabric === undefined ? [] : [fabric])))],
    shapes: [
      ...areas,
      area('outline', edge),
      dimension(finished, 'bottom', 'finished'),
      dimension(finished, 'right', 'finished'),
    ],
  };
}
