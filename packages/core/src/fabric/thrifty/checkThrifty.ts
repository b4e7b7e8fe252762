import { type Length, length } from '../../length/length.js';
import { entryAt } from '../../plan/entryAt.js';
import type { Piece } from '../../plan/piece.js';
import type { BoundCertificate, CertificateCheck, CertifiedPlan } from '../certificate.js';
import { Effort } from '../stock/effort.js';
import { dot } from '../stock/stock.js';
import { boundOf, choose } from './choose.js';
import { tallPieces, thriftyTask } from './sheetOf.js';
import { stripWorths } from './stripWorths.js';
import { STEPS_TO_CHOOSE } from './thriftyCutting.js';
import { tallWorths } from './worths.js';

const REFUSED: CertificateCheck = { holds: false, proven: length(0), searched: 0 };

/**
 * Checks a thrifty plan's lower bound again: how many rows the wide pieces need, what strips are worth
 * at the prices, and that no lower choice of strips is worth enough.
 *
 * @param checkRows checks what the plain certificates say of pieces in rows of one width
 */
export function checkThrifty(
  pieces: readonly Piece[],
  fabric: Length,
  plan: CertifiedPlan,
  checkRows: (
    pieces: readonly Piece[],
    certificate: readonly BoundCertificate[],
  ) => CertificateCheck,
): CertificateCheck {
  const { sheet, sizes, tall, unit } = thriftyTask(pieces, fabric);
  const heights = sheet.levels.map(({ height }) => height);
  let searched = 0;
  const rows = tall.map(({ width }, i) => {
    const check = checkRows(tallPieces(pieces, fabric, width), plan.certificate.slice(i, i + 1));
    searched += check.searched;
    return check.holds ? check.proven.dividedBy(width).toNumber() + check.searched : 0;
  });
  const tallOnes = tallWorths(sheet, rows);
  const ways = [...tallOnes];
  for (const worth of plan.worths ?? []) {
    const prices = sizes.map(({ pieces: own }) => worth.prices[own[0] ?? -1] ?? 0);
    const all = [...prices, ...worth.rows];
    if (!all.every((price) => Number.isSafeInteger(price) && price >= 0)) return REFUSED;
    const inTall = (level: number): readonly number[] =>
      tallOnes.map(({ worths }) => entryAt(worths, level));
    ways.push({
      worths: stripWorths(sheet, prices).map((most, i) => most + dot(worth.rows, inTall(i))),
      total: dot(prices, sheet.demands) + dot(worth.rows, rows),
    });
  }
  const byPrices = unit.times(boundOf(heights, ways));
  const claimed = length(plan.lowerBound);
  const below = Math.ceil(claimed.dividedBy(unit).toNumber()) - 1;
  const holds =
    claimed.compareTo(byPrices) <= 0 ||
    choose(heights, ways, below, new Effort(STEPS_TO_CHOOSE)) === 'none';
  return { holds, proven: holds && searched === 0 ? claimed : byPrices, searched };
}
