import { logCabinSteps } from '../../block/tableSteps.js';
import type { Notice } from '../../plan/notice.js';
import type { QuiltBlock } from '../pattern/block.js';
import type { QuiltBlockCount } from '../pattern/plan.js';
import { type DocumentPart, heading, items, paragraph } from './document.js';
import { inUnits } from './inUnits.js';
import type { Writing } from './writing.js';

const blockSteps = (block: QuiltBlock): readonly Notice<string>[] => {
  switch (block.kind) {
    case 'log-cabin':
      return logCabinSteps(block.plan);
    case 'unit':
      return block.plan.steps;
    case 'pieces':
      return block.units.flatMap(({ plan }) => plan.steps);
    default:
      return [];
  }
};

const KINDS: Readonly<Record<QuiltBlock['kind'], string>> = {
  'log-cabin': 'log cabin',
  unit: 'pieced unit',
  plain: 'plain',
  pieces: 'pieced',
};

/** How many of a block there are, and how it is sewn. */
export function blockParts(
  { block, count, inBorders }: QuiltBlockCount,
  names: ReadonlyMap<string, string>,
  writing: Writing,
): readonly DocumentPart[] {
  const steps = blockSteps(block).map((step) => inUnits(step, writing, names));
  const make = `Make ${count}, ${writing.size(block.finished)} finished, ${writing.size(block.unfinished)} unfinished (${KINDS[block.kind]}).`;
  return [
    heading(block.name, 2),
    paragraph(inBorders > 0 ? `${make} ${inBorders} of them are for borders.` : make),
    ...items(steps, true),
  ];
}
