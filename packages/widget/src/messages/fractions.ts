/** A form for one and one for several, as `Intl.PluralRules` tells them apart. */
export interface Forms {
  readonly one: string;
  readonly other: string;
}

/** How lengths of one unit are said: `{whole}` in figures, `{part}` a fraction in words. */
export interface SpokenUnit {
  readonly whole: Forms;
  readonly half: string;
  readonly wholeAndHalf: Forms;
  readonly part: string;
  readonly wholeAndPart: Forms;
}

/** The words that fractions are said with: speech engines misread their glyphs. */
export interface FractionWords {
  readonly inches: SpokenUnit;
  readonly yards: SpokenUnit;
  /** By what stands below the line: `{above} eighths`. */
  readonly parts: Readonly<Record<string, Forms>>;
  /** What has no word of its own: `{above} over {below}`. */
  readonly over: string;
}

/** A fraction that is not negative. */
export interface Fraction {
  readonly n: bigint;
  readonly d: bigint;
}

export type SpokenFractions = (fraction: Fraction, unit: 'inches' | 'yards') => string;

/**
 * Says a fraction of inches or yards as a person does, exactly: `10 und 7 Achtel Zoll`.
 *
 * @param language whose rules tell one from several: one and a half pouce, but two pouces.
 * @example
 * const forms = { one: '{whole} Zoll', other: '{whole} Zoll' };
 * const withPart = { one: '{whole} und {part} Zoll', other: '{whole} und {part} Zoll' };
 * const inches = { whole: forms, half: '½ Zoll', wholeAndHalf: forms, part: { one: '{part} Zoll', other: '{part} Zoll' }, wholeAndPart: withPart };
 * const parts = { 8: { one: '{above} Achtel', other: '{above} Achtel' } };
 * const say = spokenFractions('de', { inches, yards: inches, parts, over: '{above} durch {below}' });
 * say({ n: 87n, d: 8n }, 'inches'); // '10 und 7 Achtel Zoll'
 */
export function spokenFractions(language: string, words: FractionWords): SpokenFractions {
  const { parts, over } = words;
  const rules = new Intl.PluralRules(language);
  const form = (forms: Forms, value: number): string =>
    rules.select(value) === 'one' ? forms.one : forms.other;
  return ({ n, d }, unit) => {
    const forms = words[unit];
    const [whole, above] = [n / d, n % d];
    // The noun follows the whole number: `1 pulgada y media`, though 1½ is several to Spanish.
    const value = Number(whole);
    const fill = (template: string, part = ''): string =>
      template
        .replace('{whole}', String(whole))
        .replace('{above}', String(above))
        .replace('{below}', String(d))
        .replace('{part}', part);
    if (above === 0n) return fill(form(forms.whole, value));
    if (d === 2n) return fill(whole === 0n ? forms.half : form(forms.wholeAndHalf, value));
    const named = parts[String(d)];
    const part = fill(named === undefined ? over : form(named, Number(above)));
    return fill(whole === 0n ? forms.part : form(forms.wholeAndPart, value), part);
  };
}
