import { fail } from '../../errors/error.js';
import { choiceField, textOf } from '../../length/choice.js';
import { length } from '../../length/length.js';
import { currencyDigits } from './currency.js';

/** An amount of money: whole cents, never a part of one. */
export interface Money {
  /** Whole cents, or whatever the currency's smallest unit is: 1250 is $12.50, and ¥1250. */
  readonly cents: number;
  /** Its code of three letters, such as `USD`. */
  readonly currency: string;
}

/** An amount as people write it: `12.5`, `"12.50"`. */
export type MoneyInput = number | string;

/** More than any quilt costs, and little enough that all sums stay exact. */
const MOST_CENTS = 1_000_000_000_000;

/**
 * An amount of money, read exactly: a number by its shortest decimal writing, a text as it stands.
 *
 * @throws EighthsError `not-money` where it is no amount, is less than 0, or has more places than the
 *   currency has; `unknown-currency`; `too-much-money`
 * @example
 * money('12.50', 'USD').cents; // 1250
 * money(1250, 'JPY').cents; // 1250
 */
export const money = (input: MoneyInput, currency: string, field = 'money'): Money =>
  moneyReader(currency, field)(input, field);

/** Reads amounts of one currency, whose places are looked up once. */
export function moneyReader(
  currency: string,
  currencyField: string,
): (input: MoneyInput, field: string) => Money {
  const digits = currencyDigits(currency, currencyField);
  return (input, field) => {
    const text = textOf(input).trim();
    const [, whole = '', part = ''] =
      /^(\d{1,16})(?:\.(\d{1,16}))?$/.exec(text) ?? notMoney(text, digits, field);
    if (part.replace(/0+$/, '').length > digits) notMoney(text, digits, field);
    return ofCents(Number(whole + part.padEnd(digits, '0').slice(0, digits)), currency, field);
  };
}

/** Throws. */
export function notMoney(value: string, digits: number, field: string): never {
  const places = '50'.padEnd(digits, '0').slice(0, digits);
  return fail(
    'not-money',
    field,
    { value: value.slice(0, 100), example: digits > 0 ? `12.${places}` : '12' },
    '“{value}” is not an amount of money. Write one of at least 0 with a point and no sign, such as {example}.',
  );
}

/** @throws EighthsError `too-much-money` */
export function ofCents(cents: number, currency: string, field = 'money'): Money {
  if (Number.isSafeInteger(cents) && Math.abs(cents) <= MOST_CENTS) return { cents, currency };
  const digits = currencyDigits(currency, field);
  return fail(
    'too-much-money',
    field,
    { most: length(MOST_CENTS).dividedBy(10 ** digits), currency },
    'This comes to more than {most} {currency}. Amounts up to that are reckoned with.',
  );
}

/**
 * An amount as it is written where that language is read.
 *
 * @param locale a BCP 47 tag; default `en-US`
 * @example
 * formatMoney(money('1234.5', 'USD')); // '$1,234.50'
 */
export function formatMoney({ cents, currency }: Money, locale = 'en-US'): string {
  const digits = currencyDigits(currency, 'currency');
  const all = String(Math.abs(cents)).padStart(digits + 1, '0');
  const part = digits > 0 ? `.${all.slice(all.length - digits)}` : '';
  const exact = `${cents < 0 ? '-' : ''}${all.slice(0, all.length - digits)}${part}`;
  const options = {
    style: 'currency',
    currency,
    numberingSystem: 'latn',
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  } as const;
  try {
    // A number of at most fifteen digits is written as it was read.
    return new Intl.NumberFormat(locale, options).format(Number(exact));
  } catch {
    return choiceField(locale, 'locale', ['language tags such as en or de-CH']);
  }
}
