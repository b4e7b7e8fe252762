import { logCabin } from '../../block/logCabin.js';
import type { LogCabin } from '../../block/plan.js';
import { fail } from '../../errors/error.js';
import { missing } from '../../plan/field.js';
import { grownBy, type Size, type SizeInput, sizeField } from '../../plan/size.js';
import type { UnitPlan } from '../../unit/plan.js';
import { planUnit } from '../../unit/planUnit.js';
import { polygonArea } from '../../unit/point.js';
import { UNITS } from '../../unit/units.js';
import { below, inField } from '../recipe/inField.js';
import type { ReadRecipe } from '../recipe/schema.js';
import { sizeToGrid } from '../whole.js';
import type { BlockUnit, Making, QuiltBlock } from './block.js';
import { checkFilled } from './checkFilled.js';
import { placed, readRectangle } from './readRectangle.js';

type RecipeBlock = ReadRecipe['blocks'][number];
type Of<Kind extends RecipeBlock['kind']> = Extract<RecipeBlock, { kind: Kind }>;
type UnitOfBlock = Of<'pieces'>['units'][number];

/** So many units: some methods make several at a time. */
function planUnits(
  source: UnitOfBlock | Of<'unit'>,
  count: number,
  { seam, grid, usable }: Making,
  field: string,
): UnitPlan {
  const { unit, ...spec } = 'kind' in source ? withoutName(source) : withoutPlace(source);
  const takesUsable = UNITS[unit].inputs.some(({ name }) => name === 'usable');
  const full = { ...(takesUsable && { usable }), ...spec, seam, grid, count };
  return inField(below(field), () => planUnit(unit, full));
}

const withoutName = ({ id, name, kind, ...rest }: Of<'unit'>) => rest;
const withoutPlace = ({ count, at, ...rest }: UnitOfBlock) => rest;

/** The block with its units planned for so many of it. */
export function makeBlocks(
  source: RecipeBlock,
  block: QuiltBlock,
  blocks: number,
  making: Making,
  field: string,
): QuiltBlock {
  if (block.kind === 'unit' && source.kind === 'unit') {
    return { ...block, plan: planUnits(source, blocks, making, field) };
  }
  if (block.kind !== 'pieces' || source.kind !== 'pieces') return block;
  const units = block.units.map((unit, index) => {
    const made = source.units[index];
    if (made === undefined) return unit;
    const path = `${field}.units[${index}]`;
    return { ...unit, plan: planUnits(made, unit.count * blocks, making, path) };
  });
  return { ...block, units };
}

/** @throws EighthsError `block-not-rectangular` */
function checkRectangular(plan: UnitPlan, field: string): void {
  const { width, height } = plan.finished;
  if (plan.outline.length === 4 && polygonArea(plan.outline).equals(width.times(height))) return;
  fail(
    'block-not-rectangular',
    field,
    { unit: plan.unit },
    'Blocks and their parts are rectangles, and {unit} are not. Use a unit that finishes square or rectangular.',
  );
}

function readCabin(
  block: Of<'log-cabin'> | Of<'curved-log-cabin'>,
  { seam, grid }: Making,
  field: string,
): LogCabin {
  return inField(below(field), () => {
    const { id, name, kind, ...spec } = block;
    return logCabin({ ...spec, seam, grid });
  });
}

function readPieces(block: Of<'pieces'>, making: Making, field: string): QuiltBlock {
  const finished = sizeField(block.finished, `${field}.finished`);
  const rectangles = block.pieces.map((piece, index) =>
    readRectangle(piece, making, `${field}.pieces[${index}]`),
  );
  const units = block.units.map((unit, index): BlockUnit => {
    const path = `${field}.units[${index}]`;
    const plan = planUnits(unit, 1, making, path);
    checkRectangular(plan, `${path}.unit`);
    return { plan, ...placed(unit.count, unit.at, path) };
  });
  checkFilled(finished, rectangles, units, field);
  return { kind: 'pieces', ...named(block, finished, making), rectangles, units };
}

const named = ({ id, name }: RecipeBlock, finished: Size, { seam }: Making) => ({
  id,
  name: name ?? id,
  finished,
  unfinished: grownBy(finished, seam),
});

/**
 * A block of a recipe in numbers to cut by.
 *
 * @param size what a plain block finishes to where it does not say so itself.
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readBlock(
  block: RecipeBlock,
  making: Making,
  size: SizeInput | undefined,
  field: string,
): QuiltBlock {
  switch (block.kind) {
    case 'pieces':
      return readPieces(block, making, field);
    case 'plain': {
      const input = block.finished ?? size ?? missing(`${field}.finished`);
      const finished = sizeField(input, `${field}.finished`);
      const cut = sizeToGrid(grownBy(finished, making.seam), making.grid, 'up');
      return { kind: 'plain', ...named(block, finished, making), fabric: block.fabric, cut };
    }
    case 'unit': {
      const plan = planUnits(block, 1, making, field);
      checkRectangular(plan, `${field}.unit`);
      return { kind: 'unit', ...named(block, plan.finished, making), plan };
    }
    default: {
      const plan = readCabin(block, making, field);
      return { kind: 'log-cabin', ...named(block, plan.finished, making), plan };
    }
  }
}
