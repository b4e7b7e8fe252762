import type { SentenceValue } from '../../errors/sentence.js';
import { formatLength } from '../../length/format.js';
import { type Length, length } from '../../length/length.js';
import { checkFields, choiceField } from '../../plan/field.js';
import type { Size } from '../../plan/size.js';
import { formatMoney, type Money } from '../money/money.js';

/** How documents are written. */
export interface WritingOptions {
  /** Sizes in inches and fabric in yards, or in centimeters and meters; default `in`. */
  readonly units?: 'in' | 'cm';
  /** A BCP 47 tag for decimals and money; default `en-US`. The words are English. */
  readonly locale?: string;
}

/** How values are written. */
export interface Writing {
  readonly units: 'in' | 'cm';
  length(value: Length): string;
  size(value: Size): string;
  /** A length of fabric, never less than it is. */
  fabric(value: Length): string;
  money(value: Money): string;
  /** A part of a whole, to a tenth of a percent. */
  percent(share: Length): string;
  value(value: SentenceValue): string;
}

/** @throws EighthsError `unknown-field`, `unknown-choice` */
export function writingOf(options: WritingOptions): Writing {
  checkFields(options, '', ['units', 'locale']);
  const { locale = 'en-US' } = options;
  const units = choiceField(options.units ?? 'in', 'units', ['in', 'cm']);
  const write = (value: Length): string =>
    units === 'in'
      ? `${formatLength(value, { locale })}″`
      : formatLength(value, { unit: 'cm', locale });
  const size = ({ width, height }: Size): string => `${write(width)} × ${write(height)}`;
  return {
    units,
    length: write,
    size,
    fabric: (value) =>
      units === 'in'
        ? formatLength(value, { unit: 'yd', locale })
        : formatLength(value, { unit: 'm', grid: '1 cm', mode: 'up', locale }),
    money: (value) => formatMoney(value, locale),
    percent: (share) =>
      `${formatLength(share.times(100).toGrid('1/10', 'nearest'), { style: 'decimal', locale })} %`,
    value: (value) => {
      if (typeof value !== 'object') return String(value);
      if ('width' in value) {
        const [width, height] = [length(value.width.toJSON()), length(value.height.toJSON())];
        return width.equals(height) ? write(width) : size({ width, height });
      }
      return write(length(value.toJSON()));
    },
  };
}
