import {
  type DocumentPart,
  heading,
  items,
  paragraph,
  type QuiltDocument,
  table,
} from '../output/document.js';
import { cuttingTexts, inUnits } from '../output/inUnits.js';
import type { Writing } from '../output/writing.js';
import { checklist, costTable, cutSheet, pooledTable } from './kitTables.js';
import type { KitFabric, Kits } from './plan.js';

function inTheKit(fabric: KitFabric, writing: Writing): readonly DocumentPart[] {
  const { name, cuts, kit } = fabric;
  if (kit === undefined) return [];
  return [
    heading(name, 2),
    table(
      `${name}: pieces of one kit`,
      ['Piece', 'Cut#', 'How many#'],
      cuts.map(({ label, width, length, count }) => [
        label,
        writing.size({ width, height: length }),
        String(count),
      ]),
    ),
    ...items(cuttingTexts(kit.plan, writing), true),
  ];
}

/** Everything about the kits of a class: what to cut at the counter, what goes in, what it costs. */
export function kitsDocument(plan: Kits, writing: Writing): QuiltDocument {
  const { name, size, people, spares, kits, makes, fabrics, warnings } = plan;
  const made = makes.map((each) => `${each.count} × ${each.name}`).join(', ');
  const forWhom = spares === 0 ? `${people} people` : `${people} people and ${spares} to spare`;
  return {
    title: `Kits for ${name}, ${size}`,
    parts: [
      paragraph(`${kits} kits: ${forWhom}. Each makes ${made}.`),
      ...items(warnings.map((warning) => inUnits(warning, writing))),
      heading('Cut sheet'),
      cutSheet(plan, writing),
      ...items(
        fabrics.map(
          (fabric) =>
            `Square up the end of ${fabric.name}. Cut ${kits} lengths, and mark each with the name of the fabric and of the kit.`,
        ),
        true,
      ),
      pooledTable(plan, writing),
      heading('In each kit'),
      ...items(checklist(plan, writing)),
      ...costTable(plan, writing),
      heading('To cut in class'),
      ...fabrics.flatMap((fabric) => inTheKit(fabric, writing)),
    ],
  };
}
