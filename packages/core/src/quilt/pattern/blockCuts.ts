import type { Piece } from '../../plan/piece.js';
import type { Size } from '../../plan/size.js';
import type { UnitPlan } from '../../unit/plan.js';
import type { ReadRecipe } from '../recipe/schema.js';
import type { Making, QuiltBlock } from './block.js';
import type { PatternCut } from './cut.js';
import { makeBlocks } from './readBlock.js';

type RecipeBlock = ReadRecipe['blocks'][number];

/** The cuts of units, each with what is done to it afterwards. */
const unitCuts = (plan: UnitPlan, block: string, field: string): readonly PatternCut[] =>
  plan.pieces.map((piece) => {
    const cut = plan.cuts.find(
      ({ label, fabric }) => label === piece.label && fabric === piece.fabric,
    );
    const diagonalCuts = cut?.diagonalCuts ?? 0;
    return {
      part: 'block',
      block,
      field,
      fabric: piece.fabric ?? plan.unit,
      label: piece.label ?? plan.unit,
      width: piece.width,
      length: piece.length,
      count: piece.count,
      ...(piece.turnable !== undefined && { turnable: piece.turnable }),
      ...(diagonalCuts > 0 && { diagonalCuts }),
    };
  });

/** A rectangle lies along its strip: the strip is as wide as the shorter side. */
const stripFor = ({ width, height }: Size): Pick<Piece, 'width' | 'length'> =>
  width.compareTo(height) < 0 ? { width, length: height } : { width: height, length: width };

/** What so many blocks take. */
export function blockCuts(
  source: RecipeBlock,
  one: QuiltBlock,
  blocks: number,
  making: Making,
  field: string,
): readonly PatternCut[] {
  const block = makeBlocks(source, one, blocks, making, field);
  const common = { part: 'block', block: block.id } as const;
  switch (block.kind) {
    case 'log-cabin':
      return block.plan.pieces.map(
        ({ fabric = block.id, label = block.id, width, length, count }) => ({
          ...common,
          field: `${field}.fabrics`,
          fabric,
          label,
          width,
          length,
          count: count * blocks,
        }),
      );
    case 'plain': {
      const { fabric, cut, name } = block;
      return [{ ...common, field, fabric, label: name, ...stripFor(cut), count: blocks }];
    }
    case 'unit':
      return unitCuts(block.plan, block.id, field);
    case 'pieces':
      return [
        ...block.rectangles.map(({ fabric, label, cut, count }, index) => ({
          ...common,
          field: `${field}.pieces[${index}]`,
          fabric,
          label: label ?? block.name,
          ...stripFor(cut),
          count: count * blocks,
        })),
        ...block.units.flatMap(({ plan }, index) =>
          unitCuts(plan, block.id, `${field}.units[${index}]`),
        ),
      ];
  }
}
