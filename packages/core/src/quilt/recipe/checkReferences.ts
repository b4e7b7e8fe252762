import { fail } from '../../errors/error.js';
import { missing } from '../../plan/field.js';
import type { ReadRecipe } from './schema.js';

/** What is referred to, and where. */
interface Reference {
  readonly to: string | undefined;
  readonly field: string;
}

/** @throws EighthsError `unknown-choice` */
function checkKnown(
  kind: 'fabric' | 'block',
  known: ReadonlySet<string>,
  references: readonly Reference[],
): void {
  for (const { to, field } of references) {
    if (to === undefined || known.has(to)) continue;
    const choices = [...known].join(', ');
    fail(
      'unknown-choice',
      field,
      { value: to, choices },
      kind === 'fabric'
        ? 'The recipe has no fabric “{value}”. Its fabrics are: {choices}.'
        : 'The recipe has no block “{value}”. Its blocks are: {choices}.',
    );
  }
}

/** @throws EighthsError `listed-twice` */
function checkOnce(names: readonly string[], fieldOf: (index: number) => string): void {
  names.forEach((value, index) => {
    if (names.indexOf(value) === index) return;
    fail(
      'listed-twice',
      fieldOf(index),
      { value },
      '“{value}” stands here a second time. Each needs a name of its own.',
    );
  });
}

type Names = string | readonly string[] | undefined;

const each = (names: Names, field: string): readonly Reference[] =>
  typeof names === 'string' || names === undefined
    ? [{ to: names, field }]
    : names.map((to, index) => ({ to, field: `${field}[${index}]` }));

const mapped = (
  fabrics: Readonly<Record<string, Names>> | undefined,
  field: string,
): readonly Reference[] =>
  Object.entries(fabrics ?? {}).flatMap(([part, names]) => each(names, `${field}.${part}`));

function fabricsOfBlock(block: ReadRecipe['blocks'][number], field: string): readonly Reference[] {
  switch (block.kind) {
    case 'plain':
      return each(block.fabric, `${field}.fabric`);
    case 'pieces':
      return [
        ...block.pieces.flatMap((piece, i) => each(piece.fabric, `${field}.pieces[${i}].fabric`)),
        ...block.units.flatMap((unit, i) => mapped(unit.fabrics, `${field}.units[${i}].fabrics`)),
      ];
    default:
      return mapped(block.fabrics, `${field}.fabrics`);
  }
}

const blocksOfPattern = (
  pattern: readonly (readonly string[])[] | undefined,
  field: string,
): readonly Reference[] =>
  (pattern ?? []).flatMap((row, index) => each(row, `${field}.pattern[${index}]`));

/** All lists of borders, the recipe's and those of its sizes, each with where it stands. */
const borderLists = ({ borders, sizes }: Pick<ReadRecipe, 'borders' | 'sizes'>) =>
  [
    { borders, field: 'borders' },
    ...sizes.map((size, i) => ({ borders: size.borders ?? [], field: `sizes[${i}].borders` })),
  ].flatMap((list) =>
    list.borders.map((border, index) => ({ border, field: `${list.field}[${index}]` })),
  );

/**
 * Checks that names are told apart, and that whatever a recipe refers to is in it.
 *
 * @throws EighthsError `listed-twice`, `unknown-choice`, `missing-field`
 */
export function checkReferences(recipe: ReadRecipe): void {
  const { fabrics, blocks, sizes, setting, sashing, binding, backing } = recipe;
  checkOnce(
    fabrics.map(({ id }) => id),
    (index) => `fabrics[${index}].id`,
  );
  checkOnce(
    blocks.map(({ id }) => id),
    (index) => `blocks[${index}].id`,
  );
  checkOnce(
    sizes.map(({ name }) => name),
    (index) => `sizes[${index}].name`,
  );
  const borders = borderLists(recipe);
  checkKnown('fabric', new Set(fabrics.map(({ id }) => id)), [
    ...blocks.flatMap((block, index) => fabricsOfBlock(block, `blocks[${index}]`)),
    { to: setting.triangles, field: 'setting.triangles' },
    { to: sashing?.fabric, field: 'sashing.fabric' },
    { to: sashing?.cornerstones, field: 'sashing.cornerstones' },
    { to: binding?.fabric, field: 'binding.fabric' },
    { to: backing?.fabric, field: 'backing.fabric' },
    ...borders.flatMap(({ border, field }) => [
      { to: border.style === 'pieced' ? undefined : border.fabric, field: `${field}.fabric` },
      { to: border.style === 'mitered' ? undefined : border.corners, field: `${field}.corners` },
    ]),
  ]);
  checkKnown('block', new Set(blocks.map(({ id }) => id)), [
    ...blocksOfPattern(setting.pattern, 'setting'),
    ...sizes.flatMap(({ pattern }, index) => blocksOfPattern(pattern, `sizes[${index}]`)),
    { to: setting.between, field: 'setting.between' },
    ...borders.map(({ border, field }) => ({
      to: border.style === 'pieced' ? border.block : undefined,
      field: `${field}.block`,
    })),
  ]);
  if (setting.arrangement === 'on-point') {
    if (setting.triangles === undefined) missing('setting.triangles');
    if (sashing !== undefined && sashing.cornerstones === undefined) {
      missing('sashing.cornerstones');
    }
  }
}
