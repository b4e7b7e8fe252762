import { drawTrim, logCabin, toSvg } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { pathLooks, TINTS, textColor } from '../../../packages/core/src/drawing/look.js';
import { readXml, withDescendants } from './xml.js';

type Color = readonly [red: number, green: number, blue: number];

function colorOf(hex: string): Color {
  const [, red, green, blue] =
    /^#(..)(..)(..)$/.exec(hex.replace(/^#(.)(.)(.)$/, '#$1$1$2$2$3$3')) ?? [];
  return [red, green, blue].map((part) => Number.parseInt(part ?? '', 16)) as unknown as Color;
}

/** A color laid over another one. */
const over = (top: Color, opacity: number, bottom: Color): Color =>
  top.map(
    (part, index) => part * opacity + (bottom[index] ?? Number.NaN) * (1 - opacity),
  ) as unknown as Color;

// Relative luminance and contrast ratio as WCAG 2.2 defines them (W3C Recommendation; from memory).
function luminance(color: Color): number {
  const [red = Number.NaN, green = Number.NaN, blue = Number.NaN] = color.map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
function contrast(one: Color, other: Color): number {
  const [dark = Number.NaN, light = Number.NaN] = [one, other].map(luminance).sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** `currentColor` where a page says nothing. */
const INK = '#000000';
const WHITE = colorOf('#fff');
const inkOf = (role: Parameters<typeof textColor>[0]): Color => {
  const color = textColor(role);
  return colorOf(color === 'currentColor' ? INK : color);
};

describe('contrast', () => {
  it('is reckoned as it should be: black on white 21 to 1, #767676 on white 4.54', () => {
    expect(contrast(colorOf(INK), WHITE)).toBeCloseTo(21, 5);
    expect(contrast(colorOf('#767676'), WHITE)).toBeCloseTo(4.54, 2);
  });

  const ruler = (tint: string): Color =>
    over(
      colorOf(String(pathLooks.ruler.fill)),
      Number(pathLooks.ruler['fill-opacity']),
      colorOf(tint),
    );

  it.each(TINTS)('of logs’ numbers on %s is at least 4.5 to 1', (tint) => {
    expect(contrast(inkOf('order'), colorOf(tint))).toBeGreaterThanOrEqual(4.5);
  });

  it.each(TINTS)('of text on the ruler over %s is at least 4.5 to 1', (tint) => {
    expect(contrast(inkOf('scale'), ruler(tint))).toBeGreaterThanOrEqual(4.5);
    const { fill } = pathLooks.hold;
    const behindHold = fill === undefined || fill === 'none' ? ruler(tint) : colorOf(String(fill));
    expect(contrast(inkOf('hold'), behindHold)).toBeGreaterThanOrEqual(4.5);
  });

  it('of the cuts’ numbers on their white is at least 4.5 to 1', () => {
    expect(pathLooks.cut.fill).toBe('#fff');
    expect(contrast(inkOf('cut'), WHITE)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(TINTS)('of trim and ruler lines over %s is at least 3 to 1', (tint) => {
    for (const role of ['trim-line', 'ruler-line'] as const) {
      const line = colorOf(String(pathLooks[role].stroke));
      expect(contrast(line, ruler(tint))).toBeGreaterThanOrEqual(3);
    }
  });
});

describe('fabrics', () => {
  it('are told apart by tint: no two alike', () => {
    expect(new Set(TINTS).size).toBe(TINTS.length);
  });

  it('are told apart by hatch too, so that nothing hangs on color: each but the first has its own', () => {
    const names = TINTS.map((_, index) => `fabric ${index}`);
    const plan = logCabin({
      rounds: 7,
      layout: 'quarter',
      center: 2,
      log: 1,
      strips: { log: 2 },
      fabrics: { center: names[0] ?? '', log: names.slice(1) },
    });
    const parts = withDescendants(readXml(toSvg(drawTrim(plan, { round: 7 }))));
    const slopes = new Map<string, Set<string>>();
    for (const [index, part] of parts.entries()) {
      if (part.attributes.get('class') !== 'fabric') continue;
      const next = parts[index + 1];
      const d = next?.attributes.get('class') === 'hatch' ? (next.attributes.get('d') ?? '') : '';
      const tint = part.attributes.get('fill') ?? '';
      const [, x0, y0, x1, y1] = /^M(\S+) (\S+?)L(\S+) (\S+?)(?:M|$)/.exec(d) ?? [];
      const angle = Math.atan2(Number(y1) - Number(y0), Number(x1) - Number(x0));
      const slope = Math.round((angle * 180) / Math.PI + 360) % 180;
      slopes.set(tint, (slopes.get(tint) ?? new Set()).add(d === '' ? 'plain' : String(slope)));
    }
    expect([...slopes.keys()].sort()).toEqual([...TINTS].sort());
    expect(new Set([...slopes.values()].map((own) => [...own].join())).size).toBe(TINTS.length);
  });
});
