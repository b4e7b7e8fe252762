import type { PatternCut } from '../pattern/cut.js';
import type { QuiltFabric, QuiltPlan } from '../pattern/plan.js';
import { blockParts } from './blockParts.js';
import {
  type DocumentPart,
  type DocumentTable,
  heading,
  items,
  paragraph,
  type QuiltDocument,
  table,
} from './document.js';
import { borderParts, finishing } from './finishingParts.js';
import { cuttingTexts, inUnits } from './inUnits.js';
import { shoppingList } from './shoppingList.js';
import { topParts } from './topParts.js';
import type { Writing } from './writing.js';

const DIAGONALS = ['', ', cut once on the diagonal', ', cut twice on the diagonal'] as const;

function cutName({ block, label, diagonalCuts = 0 }: PatternCut, plan: QuiltPlan): string {
  const name = plan.blocks.find((each) => each.block.id === block)?.block.name;
  const of = name === undefined || name === label ? label : `${name}, ${label}`;
  return `${of}${DIAGONALS[diagonalCuts]}`;
}

const cutList = (fabric: QuiltFabric, plan: QuiltPlan, writing: Writing): DocumentTable =>
  table(
    `${fabric.name}: pieces`,
    ['Piece', 'Cut#', 'How many#'],
    fabric.cuts.map((cut) => [
      cutName(cut, plan),
      writing.size({ width: cut.width, height: cut.length }),
      String(cut.count),
    ]),
  );

function cutting(plan: QuiltPlan, writing: Writing): readonly DocumentPart[] {
  return plan.fabrics.flatMap((fabric): readonly DocumentPart[] => {
    if (fabric.yardage === undefined) return [];
    return [
      heading(fabric.name, 2),
      cutList(fabric, plan, writing),
      ...items(cuttingTexts(fabric.yardage.plan, writing), true),
    ];
  });
}

/** Everything about a quilt in the order of a printed pattern. */
export function quiltDocument(plan: QuiltPlan, writing: Writing): QuiltDocument {
  const { name, about, size, finished, blocks, warnings, fabrics } = plan;
  const names = new Map(fabrics.map((fabric) => [fabric.id, fabric.name]));
  return {
    title: `${name}, ${size}`,
    parts: [
      ...(about === undefined ? [] : [paragraph(about)]),
      paragraph(
        `${writing.size(finished)} finished; ${blocks.reduce((sum, { count }) => sum + count, 0)} blocks. Seam allowances are ${writing.length(plan.seam)}.`,
      ),
      ...items([...new Set(warnings.map((warning) => inUnits(warning, writing)))]),
      heading('What to buy'),
      shoppingList(plan, writing),
      heading('Cutting'),
      ...cutting(plan, writing),
      heading('Blocks'),
      ...blocks.flatMap((counted) => blockParts(counted, names, writing)),
      heading('The top'),
      ...topParts(plan, writing),
      ...borderParts(plan, writing),
      ...finishing(plan, writing),
    ],
  };
}
