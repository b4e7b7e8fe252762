import type { QuiltFabric, QuiltPlan } from '../pattern/plan.js';
import { type DocumentTable, table } from './document.js';
import type { Writing } from './writing.js';

const purposes = ({ role, yardage, backing }: QuiltFabric): string =>
  [role ?? (yardage === undefined ? undefined : 'top'), backing && 'backing']
    .filter((purpose, index, all) => purpose !== undefined && all.indexOf(purpose) === index)
    .join('; ');

/** What stands in the place of a price that nobody gave. */
const NONE = '';

function battingRow({ batting }: QuiltPlan, writing: Writing): readonly (readonly string[])[] {
  if (batting === undefined) return [];
  const [packaged] = batting.packages;
  const [roll] = batting.roll;
  const amount =
    packaged === undefined
      ? `${writing.fabric(roll.buy)} of ${writing.length(batting.rollWidth)} roll`
      : `1 package ${writing.size(packaged.size)}`;
  return [['Batting', `at least ${writing.size(batting.target)}`, '', amount, NONE, NONE]];
}

/** What to buy for a quilt: a line for each fabric, and the batting. */
export function shoppingList(plan: QuiltPlan, writing: Writing): DocumentTable {
  const { fabrics, cost } = plan;
  return table(
    'Fabric and batting',
    ['Fabric', 'For', 'Usable width#', 'Buy#', 'Price#', 'Cost#'],
    [
      ...fabrics.map((fabric) => [
        fabric.name,
        purposes(fabric),
        writing.length(fabric.width),
        writing.fabric(fabric.buy),
        fabric.price ? `${writing.money(fabric.price.each)} a ${fabric.price.per}` : NONE,
        fabric.cost ? writing.money(fabric.cost) : NONE,
      ]),
      ...battingRow(plan, writing),
      ...(cost ? [['All fabrics', '', '', '', '', writing.money(cost)]] : []),
    ],
  );
}
