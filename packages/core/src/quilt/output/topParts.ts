import type { QuiltPlan } from '../pattern/plan.js';
import { type DocumentPart, paragraph, table } from './document.js';
import type { Writing } from './writing.js';

const PART_NAMES = {
  alternate: 'Plain square',
  sash: 'Sash',
  cornerstone: 'Cornerstone',
  'side-triangle': 'Side triangle',
  'corner-triangle': 'Corner triangle',
} as const;

/** The blocks of each row by their names, or where they are all one, by their turns. */
function rowsOf({ blocks, cells }: QuiltPlan): readonly (readonly string[])[] {
  const rows = new Map<number, string[]>();
  for (const { kind, row, block, turn } of cells) {
    if (kind !== 'block') continue;
    const name = blocks.find((each) => each.block.id === block)?.block.name ?? '';
    const turned = turn === 0 ? name : `${name}, turned ${turn}`;
    const told = blocks.length === 1 ? String(turn) : turned;
    rows.set(row, [...(rows.get(row) ?? []), told]);
  }
  return [...rows.values()];
}

function rowTable(plan: QuiltPlan): readonly DocumentPart[] {
  const { blocks, cells } = plan;
  const alone = blocks.length === 1;
  if (alone && cells.every(({ turn }) => turn === 0)) return [];
  return [
    table(
      'Row by row from the top, each from the left; turns are quarter turns clockwise',
      ['Row', alone ? 'Turns' : 'Blocks'],
      rowsOf(plan).map((told, index) => [
        String(index + 1),
        alone ? told.join(' ') : runs(told).join('; '),
      ]),
    ),
  ];
}

/** How the blocks are set, and what is sewn between and round them. */
export function topParts(plan: QuiltPlan, writing: Writing): readonly DocumentPart[] {
  const { across, down, setting, finished, parts } = plan.layout;
  const how = setting === 'straight' ? 'in rows' : 'on point';
  return [
    paragraph(`${across} by ${down} blocks ${how}: ${writing.size(finished)} finished.`),
    ...rowTable(plan),
    ...(parts.length === 0
      ? []
      : [
          table(
            'Between and round the blocks',
            ['Part', 'Finished#', 'How many#'],
            parts.map(({ part, finished: size, needed }) => [
              PART_NAMES[part],
              writing.size(size),
              String(needed),
            ]),
          ),
        ]),
  ];
}

/** Neighbors that are the same are told together. */
function runs(names: readonly string[]): readonly string[] {
  const told: { readonly name: string; readonly count: number }[] = [];
  for (const name of names) {
    const last = told.at(-1);
    if (last?.name === name) told.splice(-1, 1, { name, count: last.count + 1 });
    else told.push({ name, count: 1 });
  }
  return told.map(({ name, count }) => (count === 1 ? name : `${count} × ${name}`));
}
