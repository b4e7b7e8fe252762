import { fail } from '../../errors/error.js';
import { textOf } from '../../length/choice.js';

/**
 * The places after the point that a currency's amounts have: 2 for dollars, 0 for yen.
 *
 * @throws EighthsError `unknown-currency` where it is no code of three letters
 */
export function currencyDigits(currency: string, field: string): number {
  if (!/^[A-Z]{3}$/.test(currency)) {
    fail(
      'unknown-currency',
      field,
      { value: textOf(currency).slice(0, 100) },
      'A currency is named by its code of three capital letters, such as USD, not “{value}”.',
    );
  }
  const format = new Intl.NumberFormat('en-US', { style: 'currency', currency });
  return format.resolvedOptions().maximumFractionDigits ?? 2;
}
