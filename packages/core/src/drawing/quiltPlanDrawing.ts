import { length } from '../length/length.js';
import type { QuiltBlock } from '../quilt/pattern/block.js';
import type { PatternPart } from '../quilt/pattern/cut.js';
import type { QuiltPlan } from '../quilt/pattern/plan.js';
import type { UnitPoint } from '../unit/point.js';
import { type BlockFace, logCabinFace, plainFace, unitFace } from './blockFace.js';
import type { Drawing } from './drawing.js';
import { drawQuilt } from './quiltDrawing.js';
import type { QuiltFabrics } from './quiltDrawingSpec.js';

const movedTo = (face: BlockFace, { x, y }: UnitPoint): BlockFace['areas'] =>
  face.areas.map(({ fabric, points }) => ({
    fabric,
    points: points.map((point) => ({ x: point.x.plus(x), y: point.y.plus(y) })),
  }));

/**
 * A block of a quilt as a picture. Of a block that is listed by hand, what has no place in it is not
 * seen: its first fabric lies there.
 *
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * quiltBlockFace(quilt(recipe).blocks[0].block).areas.length; // 1
 */
export function quiltBlockFace(block: QuiltBlock): BlockFace {
  const { finished: size } = block;
  switch (block.kind) {
    case 'log-cabin':
      return logCabinFace(block.plan);
    case 'unit':
      return unitFace(block.plan);
    case 'plain':
      return plainFace(size, block.fabric);
    case 'pieces': {
      const first = block.rectangles[0]?.fabric ?? block.units[0]?.plan.patches[0]?.fabric ?? '';
      return {
        size,
        areas: [
          ...plainFace(size, first).areas,
          ...block.rectangles.flatMap(({ finished, fabric, at }) =>
            at.flatMap((place) => movedTo(plainFace(finished, fabric), place)),
          ),
          ...block.units.flatMap(({ plan, at }) =>
            at.flatMap((place) => movedTo(unitFace(plan), place)),
          ),
        ],
      };
    }
  }
}

/** The fabric that a part is cut from. */
const fabricOf = ({ fabrics }: QuiltPlan, part: PatternPart, border?: number): string | undefined =>
  fabrics.find(({ cuts }) => cuts.some((cut) => cut.part === part && cut.border === border))?.id;

function fabricsOf(plan: QuiltPlan): QuiltFabrics {
  const numbers = (plan.borders?.borders ?? []).map((_, index) => index + 1);
  const borders = numbers.map((border) => fabricOf(plan, 'border', border) ?? `border ${border}`);
  const kinds = (['sash', 'cornerstone', 'side-triangle', 'corner-triangle'] as const).flatMap(
    (kind) => {
      const fabric = plan.cells.find((cell) => cell.kind === kind)?.fabric;
      return fabric === undefined ? [] : [[kind, fabric] as const];
    },
  );
  const binding = fabricOf(plan, 'binding');
  return {
    ...Object.fromEntries(kinds),
    borders,
    borderCorners: numbers.map(
      (border, index) => fabricOf(plan, 'border-corner', border) ?? borders[index] ?? '',
    ),
    ...(binding !== undefined && { binding }),
  };
}

/**
 * A recipe's quilt in one of its sizes, with its real blocks, each part in its fabric. Fabrics are called
 * by their ids; a pieced border is one area.
 *
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen' }, { id: 'night' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   binding: { fabric: 'night' },
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * drawQuiltPlan(quilt(recipe)).fabrics; // ["linen","night"]
 */
export function drawQuiltPlan(plan: QuiltPlan): Drawing {
  const { blocks, cells, layout, borders, binding } = plan;
  const inTop = blocks.filter(({ count, inBorders }) => count > inBorders);
  const places = cells
    .filter(({ kind }) => kind === 'block')
    .map((cell) => inTop.findIndex(({ block }) => block.id === cell.block));
  return drawQuilt({
    layout,
    blocks: inTop.map(({ block }) => quiltBlockFace(block)),
    places,
    ...(borders && { borders }),
    fabrics: fabricsOf(plan),
    ...(binding === undefined && { binding: length(0) }),
  });
}
