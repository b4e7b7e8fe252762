import { EighthsError, length, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { amountOf } from '../../packages/widget/src/base/amount.js';
import { addCatalog, languageFor } from '../../packages/widget/src/base/languages.js';
import { measuresFor, type Units } from '../../packages/widget/src/base/measures.js';
import { withDecimalSign } from '../../packages/widget/src/base/numbers.js';
import { translated } from '../../packages/widget/src/base/translated.js';
import { voiceOf } from '../../packages/widget/src/base/voice.js';
import type { Catalog } from '../../packages/widget/src/messages/catalog.js';
import { de } from '../../packages/widget/src/messages/de.js';
import { es } from '../../packages/widget/src/messages/es.js';
import { fr } from '../../packages/widget/src/messages/fr.js';
import { ja } from '../../packages/widget/src/messages/ja.js';
import { messages } from '../../packages/widget/src/messages/messages.js';

const catalogs: Readonly<Record<string, Catalog>> = { de, fr, es, ja };

const measuresIn = (language: string, units: Units = 'inches') =>
  measuresFor(units, language, '', { language, catalog: catalogs[language] });

const german = translated(messages, de, {
  texts: ['common', 'logCabin'],
  rooms: ['logCabin', 'drawing'],
});
const voice = voiceOf(german, measuresIn('de'), de);

describe('a length is said', () => {
  test.each([
    ['de', '10', '10 Zoll'],
    ['de', '10 7/8', '10 und 7 Achtel Zoll'],
    ['de', '10 1/2', '10 einhalb Zoll'],
    ['de', '1/2', 'ein halber Zoll'],
    ['de', '3/4', '3 Viertel Zoll'],
    ['de', '1/8', 'ein Achtel Zoll'],
    ['de', '2 1/16', '2 und ein Sechzehntel Zoll'],
    ['de', '5/32', '5 Zweiunddreißigstel Zoll'],
    ['de', '63/64', '63 Vierundsechzigstel Zoll'],
    ['de', '3/7', '3 durch 7 Zoll'],
    ['de', '-1/4', 'minus ein Viertel Zoll'],
    ['fr', '1', '1 pouce'],
    ['fr', '1 1/2', '1 pouce et demi'],
    ['fr', '2 1/2', '2 pouces et demi'],
    ['fr', '1/2', 'un demi-pouce'],
    ['fr', '7/8', '7 huitièmes de pouce'],
    ['fr', '10 7/8', '10 pouces et 7 huitièmes'],
    ['es', '1', '1 pulgada'],
    ['es', '1/2', 'media pulgada'],
    ['es', '1 1/2', '1 pulgada y media'],
    ['es', '1 3/8', '1 pulgada y 3 octavos'],
    ['es', '10 1/2', '10 pulgadas y media'],
    ['es', '1/8', 'un octavo de pulgada'],
    ['es', '10 3/16', '10 pulgadas y 3 dieciseisavos'],
    ['ja', '10', '10インチ'],
    ['ja', '10 7/8', '10と8分の7インチ'],
    ['ja', '1/2', '2分の1インチ'],
    ['ja', '5/64', '64分の5インチ'],
  ])('in %s, %s as %s', (language, text, spoken) => {
    expect(measuresIn(language).spoken(length(text))).toBe(spoken);
  });

  test.each([
    ['de', 'etwa 7 und 5 Vierundsechzigstel Zoll'],
    ['fr', 'environ 7 pouces et 5 soixante-quatrièmes'],
    ['es', 'aproximadamente 7 pulgadas y 5 sesentaicuatroavos'],
    ['ja', '約7と64分の5インチ'],
    ['en', 'about 7 and 5 sixty-fourths inches'],
  ])('in %s as about that where it holds a root', (language, spoken) => {
    expect(measuresIn(language).spoken(squareRoot(50))).toBe(spoken);
  });

  test.each([
    ['de', '2,54 Zentimeter'],
    ['fr', '2,54 centimètres'],
    ['es', '2,54 centímetros'],
    ['ja', '2.54 センチメートル'],
    ['en', '2.54 centimeters'],
  ])('in %s in centimeters as %s', (language, spoken) => {
    expect(measuresIn(language, 'metric').spoken(1)).toBe(spoken);
  });

  // Halves are said without figures, so they are left to the table above.
  test('exactly: the figures in the Japanese words make the length again', () => {
    const fractions = fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 63 }));
    fc.assert(
      fc.property(fractions, ([whole, above]) => {
        const value = length(above).dividedBy(64).plus(whole);
        const said = measuresIn('ja').spoken(value);
        const [, units = '0', below = '1', part = '0'] =
          /^(?:(\d+)と)?(\d+)分の(\d+)インチ$/.exec(said) ?? [];
        expect(length(part).dividedBy(below).plus(units).equals(value)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });
});

describe('decimals', () => {
  test.each(['de', 'fr', 'es'])('are written with a comma in %s', (language) => {
    const { figures, typed } = measuresIn(language, 'metric');
    expect(figures(length('2.5 cm'))).toBe('2,5\u00a0cm');
    expect(typed(length('2.5 cm'))).toBe('2,5');
  });

  test.each(['de', 'fr', 'es', 'ja', 'en'])('may have a comma or a point in %s', (language) => {
    const { read } = measuresIn(language);
    expect(read('10,5').equals('10 1/2')).toBe(true);
    expect(read('10.5').equals('10 1/2')).toBe(true);
  });

  test.each([
    ['de', '1,125', '1 1/8'],
    ['ja', '1.125', '1 1/8'],
  ])('in %s, %s is %s', (language, text, value) => {
    expect(measuresIn(language).read(text).equals(value)).toBe(true);
  });

  test.each([
    ['de', '1.125'],
    ['en', '1,125'],
  ])('in %s, %s is asked back: it may be a thousand and more', (language, text) => {
    expect(() => measuresIn(language).read(text)).toThrow(EighthsError);
  });

  test.each([
    ['0.75', '0,75'],
    ['24 of 6.5 by 21.5; 12 of 11 by 3', '24 of 6,5 by 21,5; 12 of 11 by 3'],
    ['1 1/4', '1 1/4'],
    ['10,5', '10,5'],
  ])('change their signs with the language: %s is %s', (english, text) => {
    expect(withDecimalSign(english, '.', ',')).toBe(text);
  });

  test('are what both signs stand for, wherever the language changes to and back', () => {
    const texts = ['0.75', '3.175', '6.5 by 21.5', '1; 2.5; 3'];
    for (const text of texts) {
      expect(withDecimalSign(withDecimalSign(text, '.', ','), ',', '.')).toBe(text);
    }
  });
});

describe('an amount of fabric', () => {
  test.each([
    ['en', '1 3/8 yd', 'yd', '1⅜\u00a0yd', '1 and 3 eighths yards'],
    ['de', '1 3/8 yd', 'yd', '1⅜\u00a0yd', '1 und 3 Achtel Yards'],
    ['de', '1.2 m', 'm', '1,2\u00a0m', '1,2 Meter'],
    ['en', '1.2 m', 'm', '1.2\u00a0m', '1.2 meters'],
    // Never less than it is.
    ['en', '1 yd', 'm', '≈ 0.92\u00a0m', 'about 0.92 meters'],
    ['de', '1 yd', 'm', '≈ 0,92\u00a0m', 'etwa 0,92 Meter'],
    ['en', '1.2 m', 'yd', '≈ 1⅜\u00a0yd', '1 and 3 eighths yards'],
  ] as const)('in %s, %s in %s is %s', (language, text, unit, figures, spoken) => {
    expect(amountOf(length(text), unit, measuresIn(language))).toEqual({ figures, spoken });
  });
});

describe('a page’s language', () => {
  addCatalog('de', de);

  test.each([
    ['de', 'de', 'de'],
    ['de-CH', 'de', 'de-CH'],
    ['DE_at', 'de', 'de-AT'],
    ['en-GB', 'en', 'en-GB'],
    // No catalog is there: English words, its own numbers.
    ['nl', 'en', 'nl'],
    ['', 'en', 'en'],
    ['german', 'en', 'en'],
    ['x', 'en', 'en'],
    ['<b>', 'en', 'en'],
  ])('%j has the words of %s and the numbers of %s', (lang, words, locale) => {
    expect(languageFor(lang)).toMatchObject({ words, locale });
  });
});

describe('a German voice', () => {
  test('says and speaks a message', () => {
    const values = { finished: length(9), unfinished: length('9 1/2') };
    expect(voice.say('headline', values)).toBe('9 fertig, auf 9½ zurückschneiden');
    expect(voice.speak('headline', values)).toBe(
      '9 Zoll fertig, auf 9 einhalb Zoll zurückschneiden',
    );
  });

  test('says what a plan says, by its code', () => {
    const notice = { code: 'narrow-center', values: { finished: length('1/4') }, text: 'English' };
    expect(voice.notice(notice)).toMatch(/^Eine Mitte mit Fertigmaß ¼ ist schmaler/);
  });

  test('calls sides and numbered fabrics by their words, and leaves names alone', () => {
    expect(voice.list(['top', 'left'])).toBe('oben, links');
    expect(voice.word('rail 3')).toBe('Latte 3');
    expect(voice.word('night sky')).toBe('night sky');
  });

  test('says an error by its very case, by its reason, and by its code', () => {
    const fault = (action: () => unknown): string => {
      try {
        action();
      } catch (error) {
        if (error instanceof EighthsError) return voice.error(error);
      }
      return 'no error';
    };
    expect(fault(() => length('zehn'))).toMatch(/^„zehn“ ist keine Länge: Ab dem Zeichen 1/);
    expect(fault(() => length('1.000', { decimal: ',' }))).toMatch(/auf zwei Arten lesen/);
    expect(fault(() => measuresIn('de').read('20000'))).toBe(
      'Hier wird eine Länge von höchstens 10000 gebraucht.',
    );
  });

  test('repeats what a page may write as it has to be written', () => {
    const values = { value: 'zigzag', choices: 'top, right' };
    const error = new EighthsError('unknown-choice', 'start', values, 'Use one of: {choices}.');
    expect(voice.error(error)).toBe('„zigzag“ ist hier nicht bekannt. Möglich sind: top, right.');
  });

  test('says in English what its catalog lacks', () => {
    const { headline: _, ...common } = de.texts.common ?? {};
    const poorer: Catalog = { ...de, texts: { common }, sentences: {}, errors: {}, words: {} };
    const said = voiceOf(
      translated(messages, poorer, { texts: ['common', 'unit'], rooms: ['drawing'] }),
      measuresIn('de'),
      poorer,
    );
    expect(said.template('headline')).toBe('{finished} finished, trim to {unfinished}');
    expect(said.say('center')).toBe('Mitte');
    expect(said.word('top')).toBe('top');
  });
});
