import { type DocumentTable, table } from '../output/document.js';
import type { Writing } from '../output/writing.js';
import type { KitFabric, Kits } from './plan.js';

/** What the cutting counter cuts off the bolts. */
export function cutSheet({ fabrics, kits }: Kits, writing: Writing): DocumentTable {
  const [first] = fabrics;
  const bolt = first ? `; bolts of ${writing.fabric(first.bolts.bolt)}` : '';
  return table(
    `For the cutting counter: each length in one piece${bolt}`,
    [
      'Fabric',
      'Length#',
      'Pieces#',
      'All together#',
      'Kits a bolt#',
      'Bolts#',
      'Left of a full bolt#',
      'Left of the last#',
    ],
    fabrics.flatMap((fabric) => {
      const { name, separate, bolts } = fabric;
      const { kitsPerBolt, bolts: count, remnant, lastRemnant } = bolts;
      const all = [
        writing.fabric(separate),
        String(kitsPerBolt),
        String(count),
        count > 1 ? writing.fabric(remnant) : '',
        writing.fabric(lastRemnant),
      ];
      return lengthsOf(fabric).map(({ what, length }, index) => [
        what === '' ? name : `${name}, ${what}`,
        writing.fabric(length),
        String(kits),
        ...(index === 0 ? all : all.map(() => '')),
      ]);
    }),
  );
}

/** The lengths of a fabric that a kit holds. */
const lengthsOf = ({ kit, backing, perKit }: KitFabric) =>
  kit !== undefined && backing !== undefined
    ? [
        { what: 'top', length: kit.buy },
        { what: 'backing', length: backing.buy },
      ]
    : [{ what: backing === undefined ? '' : 'backing', length: perKit }];

/** What goes into each kit. */
export const checklist = ({ fabrics, extras }: Kits, writing: Writing): readonly string[] => [
  ...fabrics.flatMap((fabric) =>
    lengthsOf(fabric).map(
      ({ what, length }) =>
        `${fabric.name}${what === '' ? '' : `, ${what}`}: ${writing.fabric(length)} in one piece`,
    ),
  ),
  ...extras.map(({ name }) => name),
];

/** Each kit's own piece against all kits from one length. */
export const pooledTable = ({ fabrics }: Kits, writing: Writing): DocumentTable =>
  table(
    'Each kit in one piece, against all kits cut from one length',
    ['Fabric', 'In one piece each#', 'From one length#', 'Difference#'],
    fabrics.map(({ name, separate, pooled, saves }) => [
      name,
      writing.fabric(separate),
      writing.fabric(pooled),
      writing.fabric(saves),
    ]),
  );

/** What one kit costs. */
export function costTable({ fabrics, extras, price }: Kits, writing: Writing): DocumentTable[] {
  if (price === undefined) return [];
  const rows = [...fabrics, ...extras].map(({ name, cost }) => [
    name,
    cost === undefined ? '' : writing.money(cost),
  ]);
  const { cost, total, price: sold, margin, gain } = price;
  return [
    table(
      'What a kit costs',
      ['Part', 'Amount#'],
      [
        ...rows,
        ['One kit', writing.money(cost)],
        ['All kits', writing.money(total)],
        ...(sold ? [['Price of a kit', writing.money(sold)]] : []),
        ...(margin
          ? [['Margin', `${writing.money(margin.gain)}, ${writing.percent(margin.share)}`]]
          : []),
        ...(gain ? [['Left when all are sold', writing.money(gain)]] : []),
      ],
    ),
  ];
}
