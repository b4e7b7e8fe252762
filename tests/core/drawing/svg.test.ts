import {
  type Drawing,
  drawLogCabin,
  drawTrim,
  formatLength,
  type LogCabinSpec,
  logCabin,
  paint,
  toSvg,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulations } from '../block/designs.js';
import { specOf } from '../block/simulation.js';
import { readXml, withDescendants, type XmlElement } from './xml.js';

const spec = {
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
} as const satisfies LogCabinSpec;
const nine = logCabin(spec);

const drawings: fc.Arbitrary<Drawing> = simulations.map((simulation) => {
  const plan = logCabin(specOf(simulation));
  const round = plan.rounds.length;
  return simulation.trim === 'never'
    ? drawLogCabin(plan)
    : drawTrim(plan, { round, hand: simulation.first === 'wide' ? 'left' : 'right' });
});

const named = (root: XmlElement, name: string): readonly XmlElement[] =>
  withDescendants(root).filter((element) => element.name === name);

describe('the reader of XML', () => {
  it.each([
    '<a>',
    '<a></b>',
    '<a/><b/>',
    '<a b="1" b="2"/>',
    "<a b='1'/>",
    '<a b=1/>',
    '<a b="<"/>',
    '<a>&nbsp;</a>',
    '<a>&</a>',
    '<a><b></a></b>',
    '<a>\u0001</a>',
    '<a>\ud800</a>',
    'a',
    '',
  ])('refuses %j', (xml) => {
    expect(() => readXml(xml)).toThrow();
  });

  it('reads what is well-formed', () => {
    const root = readXml('<a b="1 &lt; 2"><c/>x&#39;&amp;<d>y</d></a>');
    expect(root.attributes.get('b')).toBe('1 < 2');
    expect(root.text).toBe("x'&");
    expect(withDescendants(root).map(({ name }) => name)).toEqual(['a', 'c', 'd']);
  });
});

describe('a drawing as SVG', () => {
  it('is well-formed, whatever the block', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const root = readXml(toSvg(drawing));
        expect(root.name).toBe('svg');
        expect(named(root, 'path').length).toBeGreaterThan(0);
      }),
    );
  });

  it('is an image with a title and a description, before anything else', () => {
    const drawing = drawTrim(nine, { round: 2 });
    const root = readXml(toSvg(drawing));
    expect(root.attributes.get('role')).toBe('img');
    expect(root.attributes.get('xmlns')).toBe('http://www.w3.org/2000/svg');
    expect(root.children.slice(0, 2).map(({ name, text }) => [name, text])).toEqual([
      ['title', drawing.title.text],
      ['desc', drawing.description.text],
    ]);
  });

  it('holds paths and texts only: no script, no style, no id, and no reference to anything', () => {
    const allowed: Readonly<Record<string, readonly string[]>> = {
      svg: ['xmlns', 'role', 'viewBox', 'font-family'],
      title: [],
      desc: [],
      path: [
        ...['class', 'd', 'fill', 'fill-opacity', 'stroke', 'stroke-width', 'stroke-dasharray'],
        ...['vector-effect', 'opacity'],
      ],
      text: [
        ...['class', 'x', 'y', 'font-size', 'text-anchor', 'fill', 'dominant-baseline'],
        'transform',
      ],
    };
    fc.assert(
      fc.property(drawings, (drawing) => {
        const foreign = withDescendants(readXml(toSvg(drawing))).flatMap(({ name, attributes }) => {
          const own = allowed[name];
          if (own === undefined) return [name];
          return [...attributes]
            .filter(([attribute, value]) => {
              if (attribute === 'xmlns') return false;
              return !own.includes(attribute) || /url\(|:|\/\//.test(value);
            })
            .map(([attribute, value]) => `${name} ${attribute}="${value}"`);
        });
        expect(foreign).toEqual([]);
      }),
    );
  });

  it('has only finite coordinates', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const numbers = withDescendants(readXml(toSvg(drawing))).flatMap(({ attributes }) =>
          ['d', 'x', 'y', 'viewBox', 'font-size'].flatMap(
            (name) => attributes.get(name)?.match(/[^\sMLaZ(),]+/g) ?? [],
          ),
        );
        expect(numbers.filter((number) => !/^-?\d+(\.\d+)?$/.test(number))).toEqual([]);
      }),
    );
  });

  it('is the same each time it is drawn', () => {
    const draw = () => toSvg(drawTrim(logCabin({ ...spec }), { round: 3, hand: 'left' }));
    expect(draw()).toBe(draw());
  });

  it('is sized by the page, or in true inches for print', () => {
    const drawing = drawLogCabin(nine);
    const { width, height } = paint(drawing);
    const short = (value: number): number => Math.round(value * 1000) / 1000;
    const onScreen = readXml(toSvg(drawing)).attributes;
    expect([onScreen.has('width'), onScreen.has('height')]).toEqual([false, false]);
    const inPrint = readXml(toSvg(drawing, { size: 'true' })).attributes;
    expect(inPrint.get('width')).toBe(`${short(width)}in`);
    expect(inPrint.get('height')).toBe(`${short(height)}in`);
    expect(inPrint.get('viewBox')?.split(' ').slice(2).map(Number)).toEqual([
      short(width),
      short(height),
    ]);
  });

  it('writes measures and words as the page says', () => {
    const texts = (options: Parameters<typeof toSvg>[1]) =>
      named(readXml(toSvg(drawLogCabin(nine), options)), 'text').map(({ text }) => text);
    expect(texts({})).toContain('trim to 9½');
    const inMillimeters = texts({
      write: (measure) => formatLength(measure, { unit: 'mm', style: 'decimal' }),
      words: { 'trim to': 'auf', finished: 'fertig' },
      scale: 'centimeters',
    });
    expect(inMillimeters.find((text) => text.startsWith('auf'))).toContain('241.3');
    expect(inMillimeters.some((text) => text.startsWith('fertig 228.6'))).toBe(true);
    // The ruled edge of 9 1/2 inches, which are 24.13 cm, has a figure at every second centimeter.
    expect(inMillimeters).toContain('22');
    expect(texts({})).not.toContain('22');
  });
});

describe('hostile texts', () => {
  const hostile = [
    '</svg><script>alert(1)</script>',
    '"><path onload="alert(1)"/>',
    "' onclick='alert(1)",
    ']]><!--&amp;<![CDATA[',
    '&lt;b&gt;',
    'a\u0000b\u0008\u001fc\ufffed',
    'half \ud83e of a character',
    '🧵 fern',
  ];

  it.each(hostile)('of a fabric leave the drawing as it is: %j', (fabric) => {
    const own = drawLogCabin(logCabin({ ...spec, fabrics: { wide: fabric, center: 'rust' } }));
    const plain = drawLogCabin(logCabin({ ...spec, fabrics: { wide: 'fern', center: 'rust' } }));
    expect(own.fabrics).toContain(fabric);
    readXml(toSvg(own));
    expect(toSvg(own)).toBe(toSvg(plain));
  });

  it.each(hostile)('are written as they are where they are words: %j', (word) => {
    const svg = toSvg(drawLogCabin(nine), { words: { finished: word }, write: () => word });
    const root = readXml(svg);
    // Control characters and halves of characters have no place in XML: a space stands for each.
    const shown = [...word]
      .map((sign) =>
        /[\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u.test(sign) ? sign : ' ',
      )
      .join('');
    expect(named(root, 'text').map(({ text }) => text)).toContain(`${shown} ${shown}`);
    expect(named(root, 'script')).toEqual([]);
    expect(named(root, 'path')).toHaveLength(
      named(readXml(toSvg(drawLogCabin(nine))), 'path').length,
    );
  });

  it('in the title and description are written as they are', () => {
    const text = hostile.slice(0, 5).join(' ');
    const drawing = drawLogCabin(nine);
    const renamed = { ...drawing, title: { ...drawing.title, text } };
    expect(readXml(toSvg(renamed)).children[0]).toMatchObject({ name: 'title', text });
  });
});

describe('a ruled edge', () => {
  const SIZES = [1, 10, 40, 100, 200, 5000, 1e6, 1e12, 1e100];

  it.each(SIZES)(
    'of a block round a center of %d in has marks and figures that can be told apart',
    (center) => {
      const drawing = drawLogCabin(logCabin({ rounds: 1, center, log: 1 }));
      for (const scale of ['inches', 'centimeters'] as const) {
        const marks = paint(drawing, { scale }).marks.filter(({ role }) => role === 'scale');
        const figures = marks.filter(({ kind }) => kind === 'text').length;
        const ticks = marks.flatMap((mark) =>
          mark.kind === 'path' ? [mark.d.split('M').length - 1] : [],
        );
        // Text is a 26th of the drawing; marks keep a sixth of its height apart, figures 1.6 heights.
        expect(Math.max(...ticks)).toBeLessThanOrEqual(6 * 26 + 1);
        expect(Math.min(...ticks)).toBeGreaterThan(2);
        expect(figures).toBeLessThanOrEqual((2 * 26) / 1.6);
        expect(figures).toBeGreaterThanOrEqual(2);
      }
    },
  );

  it('counts whole units, and in quilts’ sizes each of them', () => {
    const drawing = drawLogCabin(logCabin({ rounds: 1, center: 7, log: 1 }));
    const figures = paint(drawing).marks.flatMap((mark) =>
      mark.kind === 'text' && mark.role === 'scale' ? [mark.text] : [],
    );
    expect(figures).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 1, 2, 3, 4, 5, 6, 7, 8, 9].map(String));
  });
});

describe('a painting', () => {
  it('holds every text and every line within its rectangle', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const { x, y, width, height, marks } = paint(drawing);
        const slack = 0.002;
        const inside = (px: number, py: number): boolean =>
          px >= x - slack && px <= x + width + slack && py >= y - slack && py <= y + height + slack;
        const outside = marks.filter((mark) =>
          mark.kind === 'text'
            ? !inside(mark.x, mark.y)
            : [...mark.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].some(
                ([, px, py]) => !inside(Number(px), Number(py)),
              ),
        );
        expect(outside).toEqual([]);
      }),
    );
  });
});
