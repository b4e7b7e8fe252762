import { exactOptional, type InferInput, type InferOutput, union } from 'valibot';
import { BLOCK_SETTINGS } from '../../block/turns.js';
import { accepts } from './accepts.js';
import { blockSchema } from './blockSchemas.js';
import { bordersSchema } from './borderSchema.js';
import {
  amount,
  choice,
  count,
  fabricId,
  fields,
  finishedWidth,
  id,
  list,
  measure,
  perRound,
  share,
  text,
  yesOrNo,
} from './fields.js';
import { backingSchema, battingSchema, bindingSchema } from './finishingSchemas.js';

const priceSchema = union(
  [
    amount('The price of a yard.'),
    fields(
      {
        amount: amount('The price.'),
        per: exactOptional(choice(['yard', 'meter'], 'What it is the price of.'), 'yard'),
      },
      'A price, and what it is the price of.',
    ),
  ],
  accepts({ kind: 'money' }),
);

const fabricSchema = fields(
  {
    id: id('What blocks, borders and the rest call it.'),
    name: exactOptional(text(100, 'What people call it; left out, its id.')),
    role: exactOptional(text(100, 'What it is for, such as “background”.')),
    directional: exactOptional(yesOrNo('Whether its print has an up and a down.'), false),
    width: exactOptional(
      measure('positive', 'Its usable width: selvages off, and shrunk if it is washed.'),
      40,
    ),
    shrinkage: exactOptional(share('The part of its length that washing takes.'), 0),
    price: exactOptional(priceSchema),
  },
  'A fabric.',
);

const sashingSchema = fields(
  {
    width: finishedWidth,
    fabric: fabricId,
    outer: exactOptional(
      yesOrNo('Whether sashes go round the outside as well; on point they always do.'),
    ),
    cornerstones: exactOptional(
      id('The fabric of squares where sashes meet; left out, none. On point it is needed.'),
    ),
  },
  'Strips between the blocks.',
);

const patternSchema = list(
  list(id('The id of a block.'), 1, 100, 'A row of blocks.'),
  1,
  100,
  'Rows of block ids, repeated across and down; a checkerboard is [["a", "b"], ["b", "a"]].',
);

const turnsSchema = choice(['none', ...BLOCK_SETTINGS], 'How blocks are turned by quarters.');

const settingSchema = fields(
  {
    arrangement: exactOptional(
      choice(['straight', 'on-point'], 'Whether blocks stand in rows or on their corners.'),
      'straight',
    ),
    turns: exactOptional(turnsSchema, 'none'),
    pattern: exactOptional(patternSchema),
    between: exactOptional(
      id('On point: the block of the rows in between; left out, as the pattern goes on.'),
    ),
    triangles: exactOptional(id('On point: the fabric of side and corner triangles.')),
    oversize: exactOptional(
      measure('zero or more', 'What squares for setting triangles are cut beyond the exact size.'),
      '1/2',
    ),
  },
  'How the blocks are set.',
);

const buyingSchema = fields(
  {
    increment: exactOptional(
      perRound(measure('positive', 'A length.'), 'Whichever of these buys least.'),
      '1/8 yd',
    ),
    straightening: exactOptional(measure('zero or more', 'What squaring up the end takes.'), 1),
    spare: exactOptional(
      measure('zero or more', 'Bought in case of a wrong cut; left out, one strip of each fabric.'),
    ),
  },
  'How fabric is bought.',
);

/** A size that the pattern is offered in, with what is different in it. */
export const sizeSchema = fields(
  {
    name: text(60, 'What it is called, such as “Throw”.'),
    across: count(1, 100, 'Blocks in a row.'),
    down: count(1, 100, 'Rows of blocks.'),
    turns: exactOptional(turnsSchema),
    pattern: exactOptional(patternSchema),
    borders: exactOptional(bordersSchema),
  },
  'A size of the quilt.',
);

/** What a recipe is: its types, its checks and the published JSON Schema are made from this. */
export const recipeSchema = fields(
  {
    $schema: exactOptional(text(500, 'Where an editor finds this schema.')),
    name: text(100, 'The name of the pattern.'),
    about: exactOptional(text(2000, 'A sentence or two about it.')),
    currency: exactOptional(text(3, 'The code of the currency that prices are in.'), 'USD'),
    seam: exactOptional(measure('positive', 'The seam allowance.'), '1/4'),
    grid: exactOptional(measure('positive', 'The finest line people cut to.'), '1/8'),
    fabrics: list(fabricSchema, 1, 60, 'The fabrics.'),
    blocks: list(blockSchema, 1, 40, 'The blocks.'),
    setting: exactOptional(settingSchema, {}),
    sashing: exactOptional(sashingSchema),
    borders: exactOptional(bordersSchema, []),
    binding: exactOptional(bindingSchema),
    backing: exactOptional(backingSchema),
    batting: exactOptional(battingSchema),
    buying: exactOptional(buyingSchema, {}),
    sizes: list(sizeSchema, 1, 20, 'The sizes that it is offered in.'),
  },
  'A quilt pattern.',
);

/** A type all of whose fields and entries can only be read. */
type Deep<Value> = Value extends object
  ? { readonly [Key in keyof Value]: Deep<Value[Key]> }
  : Value;

/** A quilt pattern as people write it: plain JSON, lengths in inches unless they say otherwise. */
export type QuiltRecipe = Deep<InferInput<typeof recipeSchema>>;
/** A fabric of a recipe. */
export type RecipeFabric = QuiltRecipe['fabrics'][number];
/** A block of a recipe. */
export type RecipeBlock = QuiltRecipe['blocks'][number];
/** A border of a recipe. */
export type RecipeBorder = NonNullable<QuiltRecipe['borders']>[number];
/** A size that a recipe is offered in. */
export type QuiltSize = QuiltRecipe['sizes'][number];

/** A recipe that was read, with what was left out filled in. */
export type ReadRecipe = Deep<InferOutput<typeof recipeSchema>>;
