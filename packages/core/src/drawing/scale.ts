import { outward, runsAcross, type Side } from '../plan/side.js';
import { type Dot, pathThrough } from './geometry.js';

/** What a ruled edge counts. */
export type ScaleUnit = 'inches' | 'centimeters';

interface Ruling {
  /** Inches in a unit. */
  readonly unit: number;
  /** Marks a unit, from coarse to fine, with their heights in heights of text. */
  readonly marks: readonly { readonly parts: number; readonly height: number }[];
}

const rulings: Readonly<Record<ScaleUnit, Ruling>> = {
  inches: {
    unit: 1,
    marks: [
      { parts: 1, height: 0.6 },
      { parts: 2, height: 0.4 },
      { parts: 4, height: 0.28 },
      { parts: 8, height: 0.18 },
    ],
  },
  centimeters: {
    unit: 1 / 2.54,
    marks: [
      { parts: 1, height: 0.6 },
      { parts: 2, height: 0.35 },
      { parts: 10, height: 0.18 },
    ],
  },
};

/** The first of 1, 2, 5, 10, 20, 50 and so on that is more than `least`. */
function roundCount(least: number): number {
  const power = 10 ** Math.max(0, Math.floor(Math.log10(least)));
  return [power, 2 * power, 5 * power].find((count) => count > least) ?? 10 * power;
}

/**
 * The marks and figures along a ruled edge. Marks closer than a sixth of the text's height are left
 * out: on a screen they would be a gray band. Figures stand at every unit, or at every second, fifth,
 * tenth where they would crowd, and so do the marks where even whole units crowd.
 */
export function scaleMarks(
  from: Dot,
  to: Dot,
  toward: Side,
  text: number,
  scaleUnit: ScaleUnit,
): { readonly ticks: string; readonly figures: readonly { at: Dot; count: number }[] } {
  const { unit, marks } = rulings[scaleUnit];
  const extent = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / extent, y: (to.y - from.y) / extent };
  const sign = outward(toward);
  const out = runsAcross(toward) ? { x: 0, y: sign } : { x: sign, y: 0 };
  const dot = (distance: number, height: number): Dot => ({
    x: from.x + along.x * distance + out.x * height,
    y: from.y + along.y * distance + out.y * height,
  });
  const shown = marks.filter(({ parts }) => unit / parts > text / 6);
  const every = roundCount((text * 1.6) / unit);
  const finest = shown.at(-1)?.parts ?? 1 / every;
  const ticks: string[] = [];
  for (let index = 0; index * (unit / finest) <= extent + 1e-9; index += 1) {
    const height = shown.find(({ parts }) => (index * parts) % finest === 0)?.height ?? 0.6;
    const distance = (index * unit) / finest;
    ticks.push(pathThrough([dot(distance, 0), dot(distance, height * text)]));
  }
  const figures: { at: Dot; count: number }[] = [];
  for (let count = every; count * unit < extent - text / 3; count += every) {
    figures.push({ at: dot(count * unit, text), count });
  }
  return { ticks: ticks.join(''), figures };
}
