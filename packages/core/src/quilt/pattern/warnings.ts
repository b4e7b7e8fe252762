import { entryAt } from '../../plan/entryAt.js';
import { type Warning, warningsFrom } from '../../plan/notice.js';
import { runsAcross } from '../../plan/side.js';
import type { QuiltBlock } from './block.js';
import type { QuiltFabric, QuiltWarningCode } from './plan.js';
import { patternSentences } from './sentences.js';
import type { PatternTask } from './task.js';

type QuiltWarning = Warning<QuiltWarningCode>;

const warn = warningsFrom(patternSentences);

/** Whether a fabric lies along upright sides of a log cabin and along level ones. */
const liesBothWays = (block: QuiltBlock, fabric: string): boolean => {
  if (block.kind !== 'log-cabin') return false;
  const ways = block.plan.logs
    .filter((log) => log.fabric === fabric)
    .map(({ side }) => runsAcross(side));
  return new Set(ways).size > 1;
};

/** What a print that has an up and a down does in this quilt. */
function directional(task: PatternTask, fabric: QuiltFabric, field: string): QuiltWarning[] {
  if (!fabric.directional) return [];
  const { layout, blocks } = task;
  const turned = new Set(
    layout.cells.flatMap(({ turn }, index) =>
      turn === 0 ? [] : [entryAt(task.blockOfCell, index)],
    ),
  );
  const borders = new Set(
    fabric.cuts.flatMap(({ part, border }) => (part === 'border' ? (border ?? []) : [])),
  );
  const named = { fabric: fabric.name };
  return [
    ...(fabric.cuts.some(({ block }) => block !== undefined && turned.has(block))
      ? [warn('directional-turned', field, named)]
      : []),
    ...blocks
      .filter(({ block }) => liesBothWays(block, fabric.id))
      .map(({ block }) => warn('directional-sides', field, { ...named, block: block.name })),
    ...[...borders].map((border) => warn('directional-borders', field, { ...named, border })),
  ];
}

const within = (parent: string, warnings: readonly QuiltWarning[]): readonly QuiltWarning[] =>
  warnings.map((warning) => ({ ...warning, field: `${parent}.${warning.field}` }));

function blockWarnings({ blocks, recipe }: PatternTask): readonly QuiltWarning[] {
  return blocks.flatMap(({ block }) => {
    const field = `blocks[${recipe.blocks.findIndex(({ id }) => id === block.id)}]`;
    switch (block.kind) {
      case 'log-cabin':
      case 'unit':
        return within(field, block.plan.warnings);
      case 'pieces':
        return block.units.flatMap(({ plan }, index) =>
          within(`${field}.units[${index}]`, plan.warnings),
        );
      default:
        return [];
    }
  });
}

/** What a person should know before buying for a quilt that can be sewn. */
export function quiltWarnings(
  task: PatternTask,
  fabrics: readonly QuiltFabric[],
): readonly QuiltWarning[] {
  const { recipe, layout, borders, binding } = task;
  const fieldOf = (id: string): string =>
    `fabrics[${recipe.fabrics.findIndex((fabric) => fabric.id === id)}]`;
  const inBlocks = fabrics.some(
    (fabric) => fabric.directional && fabric.cuts.some(({ block }) => block !== undefined),
  );
  const used = new Set(fabrics.map(({ id }) => id));
  return [
    ...blockWarnings(task),
    // That blocks are turned is said of each print that it concerns, by its name.
    ...layout.warnings
      .filter(({ code }) => code !== 'prints-turn' && (inBlocks || code !== 'prints-lean'))
      .map((warning) =>
        warning.field === 'block' ? { ...warning, field: task.chosen.field } : warning,
      ),
    ...(borders?.warnings ?? []),
    ...within('binding', binding?.warnings ?? []),
    ...fabrics.flatMap((fabric) => directional(task, fabric, fieldOf(fabric.id))),
    ...fabrics.flatMap(({ id, yardage }) => within(fieldOf(id), yardage?.plan.warnings ?? [])),
    ...recipe.fabrics
      .filter(({ id }) => !used.has(id))
      .map(({ id, name = id }) => warn('fabric-unused', fieldOf(id), { fabric: name })),
  ];
}
