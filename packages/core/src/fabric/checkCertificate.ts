import { type Length, length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import type { Piece } from '../plan/piece.js';
import type { CertificateCheck, CertifiedPlan } from './certificate.js';
import { dearest } from './dearest.js';
import { readCutting } from './readCutting.js';
import type { CuttingSpec } from './spec.js';
import { checkThrifty } from './thrifty/checkThrifty.js';
import { fractionOf, inUnits } from './units.js';

/**
 * Checks a plan's lower bound again, with knapsacks of its own: for each width of strips one finds the
 * greatest price of a strip, and all pieces' prices divided by it, rounded up, are the strips that are
 * needed. In a thrifty plan those are rows, and the prices of `worths` are checked by the knapsacks of
 * rows, sections and strips, one for each height; that no lower choice of strips is worth enough, the
 * solver's search shows again. Takes time in proportion to pieces in a strip times sizes times units in
 * a strip.
 *
 * @param plan a cutting plan, or one that was JSON in between.
 * @throws EighthsError where the spec itself is refused.
 * @example
 * const spec = { width: 42, pieces: [{ width: 5, length: 5, count: 12 }] };
 * checkCertificate(spec, cuttingPlan(spec)).proven.toString(); // '10'
 */
export function checkCertificate(spec: CuttingSpec, plan: CertifiedPlan): CertificateCheck {
  const { width, pieces } = readCutting(spec);
  if (plan.method === 'thrifty') {
    return checkThrifty(pieces, width, plan, (rows, certificate) =>
      checkPlain(width, rows, { lowerBound: 0, certificate }),
    );
  }
  return checkPlain(width, pieces, plan);
}

function checkPlain(
  width: Length,
  pieces: readonly Piece[],
  plan: CertifiedPlan,
): CertificateCheck {
  const used = new Set<number>();
  let proven = length(0);
  let claimed = length(0);
  let searched = 0;
  for (const entry of plan.certificate) {
    const group = entry.pieces.map((index) => pieces[index]);
    const stripWidth = group[0]?.width;
    // A price is a whole number of at least 0, and counts once, for strips of one width.
    const sound =
      stripWidth !== undefined &&
      group.every((piece) => piece?.width.equals(stripWidth)) &&
      entry.pieces.every((index) => !used.has(index) && used.add(index)) &&
      entry.prices.length === group.length &&
      entry.prices.every((price) => Number.isSafeInteger(price) && price >= 0);
    if (!sound) return { holds: false, proven, searched };

    const priced = group.flatMap((piece, i) =>
      piece === undefined || piece.count === 0 ? [] : [{ piece, price: entry.prices[i] ?? 0 }],
    );
    const strips = stripsNeeded(width, priced);
    proven = proven.plus(stripWidth.times(strips));
    claimed = claimed.plus(stripWidth.times(strips + (entry.searched ? 1 : 0)));
    if (entry.searched) searched += 1;
  }
  return { holds: claimed.compareTo(plan.lowerBound) >= 0, proven, searched };
}

function stripsNeeded(
  width: Length,
  priced: readonly { readonly piece: Piece; readonly price: number }[],
): number {
  const { capacity, sizes } = inUnits(
    fractionOf(width, 'width'),
    priced.map(({ piece }) => fractionOf(piece.length, 'pieces')),
    priced.map(({ piece }) => piece.count),
  );
  const inStrips = dearest(
    capacity,
    priced.map(({ piece: { count }, price }, i) => ({ size: entryAt(sizes, i), count, price })),
  );
  const most = entryAt(inStrips, capacity);
  const total = priced.reduce((sum, { piece, price }) => sum + piece.count * price, 0);
  return most === 0 ? 0 : Math.ceil(total / most);
}
