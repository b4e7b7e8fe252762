/** A piece in whole units: `width` down the fabric, `length` across it. */
export interface ModelPiece {
  readonly width: number;
  readonly length: number;
  readonly count: number;
  readonly turnable: boolean;
}

/**
 * A thrifty plan as an integer program of single cuts (E. Silva, F. Alvelos and J. M. Valério de
 * Carvalho, European Journal of Operational Research 205, 2010, from memory): what is cut is a strip
 * still so long, a section still so high or a row still so long; each cut takes one section, row or
 * piece off it and leaves the rest. No more can be cut of anything than other cuts made. In CPLEX LP
 * format.
 */
export function oneCut(fabric: number, pieces: readonly ModelPiece[]): string {
  const ways = pieces.flatMap((piece, item) => {
    const given = { item, width: piece.width, length: piece.length };
    return piece.turnable && piece.width !== piece.length && piece.width <= fabric
      ? [given, { item, width: piece.length, length: piece.width }]
      : [given];
  });
  const heights = [...new Set(ways.map(({ width }) => width))];
  const balances = new Map<string, string[]>();
  const variables: string[] = [];
  const costs: string[] = [];
  let number = 0;
  const cut = (from: string | undefined, makes: readonly string[]): string => {
    const name = `c${number}`;
    number += 1;
    variables.push(name);
    const add = (node: string, term: string) =>
      balances.set(node, [...(balances.get(node) ?? []), term]);
    if (from !== undefined) add(from, `- ${name}`);
    for (const node of makes) add(node, `+ ${name}`);
    return name;
  };
  for (const height of heights) {
    costs.push(`${height} ${cut(undefined, [`strip_${height}_${fabric}`])}`);
    for (let long = 1; long <= fabric; long += 1) {
      for (let section = 1; section <= long; section += 1) {
        cut(`strip_${height}_${long}`, [
          `strip_${height}_${long - section}`,
          `section_${section}_${height}`,
        ]);
      }
    }
  }
  for (let long = 1; long <= fabric; long += 1) {
    for (let high = 1; high <= Math.max(...heights); high += 1) {
      for (const row of heights) {
        if (row > high) continue;
        cut(`section_${long}_${high}`, [`section_${long}_${high - row}`, `row_${row}_${long}`]);
      }
    }
    for (const { item, width, length } of ways) {
      if (length <= long) {
        cut(`row_${width}_${long}`, [`row_${width}_${long - length}`, `piece_${item}`]);
      }
    }
  }
  return [
    'Minimize',
    ` length: ${costs.join(' + ')}`,
    'Subject To',
    ...[...balances].map(([node, terms]) => {
      const item = /^piece_(\d+)$/.exec(node)?.[1];
      const needed = item === undefined ? 0 : (pieces[Number(item)]?.count ?? 0);
      return ` ${node}: ${terms.join(' ')} >= ${needed}`;
    }),
    'General',
    ` ${variables.join(' ')}`,
    'End',
  ].join('\n');
}
