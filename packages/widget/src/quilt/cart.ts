import {
  fabricCost,
  formatLength,
  type Length,
  type Money,
  type QuiltFabric,
  type Yardage,
} from '@eighths/core';

/** The eighth of a yard: the step that people name yards in. */
const EIGHTH = '1/8 yd';
const YARD = '1 yd';
/** What has a larger denominator is not cut in yards. */
const FINEST_YARD = 64n;

/** One line for a shop's cart, as plain data: a length of one fabric. */
export interface CartLine {
  /** The fabric's id in the recipe. */
  readonly fabric: string;
  readonly name: string;
  readonly role?: string;
  /** As people write it: `1 3/8`; up to the next eighth where the shop cuts in meters. */
  readonly yards: string;
  /** In decimals, up to the next centimeter: `1.26`. */
  readonly meters: string;
  /** What the shop cuts in: `1/8 yd` or `0.1 m`. */
  readonly increment: string;
  /** How many of these that is: a whole number. */
  readonly increments: number;
  /** What a yard, or a meter, costs. */
  readonly price?: Money & { readonly per: 'yard' | 'meter' };
  /** What this length costs. */
  readonly cost?: Money;
}

function yardsOf(length: Length): string {
  const fraction = length.dividedBy(YARD).toFraction();
  const isCut = fraction !== undefined && fraction.d <= FINEST_YARD;
  const shown = isCut ? length : length.toGrid(EIGHTH, 'up');
  return formatLength(shown.dividedBy(YARD), { style: 'ascii' });
}

const metersOf = (length: Length): string =>
  formatLength(length, { unit: 'm', style: 'decimal', grid: '1 cm', mode: 'up' }).replace(
    /[^\d.]/g,
    '',
  );

const incrementText = (increment: Length): string =>
  increment.isOnGrid('1 cm')
    ? `${metersOf(increment)} m`
    : `${formatLength(increment.dividedBy(YARD), { style: 'ascii' })} yd`;

/** A fabric's lengths are one line where the shop cuts both in the same steps. */
function lengthsOf({
  yardage,
  backing,
  buy,
}: QuiltFabric): readonly Pick<Yardage, 'buy' | 'increment'>[] {
  if (yardage === undefined) return backing === undefined ? [] : [backing];
  if (backing === undefined) return [yardage];
  const alike = yardage.increment.equals(backing.increment);
  return alike ? [{ buy, increment: yardage.increment }] : [yardage, backing];
}

/** What a cart needs of one fabric. */
export function cartLines(fabric: QuiltFabric): readonly CartLine[] {
  const { id, name, role, price } = fabric;
  return lengthsOf(fabric).map(({ buy, increment }) => ({
    fabric: id,
    name,
    ...(role !== undefined && { role }),
    yards: yardsOf(buy),
    meters: metersOf(buy),
    increment: incrementText(increment),
    increments: buy.dividedBy(increment).toNumber(),
    ...(price && { price: { ...price.each, per: price.per }, cost: fabricCost(price, buy) }),
  }));
}
