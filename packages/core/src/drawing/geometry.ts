import { entryAt } from '../plan/entryAt.js';
import type { Point } from './drawing.js';

/** Coordinates in inches, for the screen and the printer: from here on numbers are approximate. */
export interface Dot {
  readonly x: number;
  readonly y: number;
}

/** The one place where exact lengths become coordinates. */
export const dotAt = ({ x, y }: Point): Dot => ({ x: x.toNumber(), y: y.toNumber() });

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The smallest box around all dots; there must be at least one. */
export function boxAround(dots: readonly Dot[]): Box {
  const xs = dots.map(({ x }) => x);
  const ys = dots.map(({ y }) => y);
  return {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
}

/** The side of the larger square that a print is measured by. */
export const FIVE_CENTIMETERS = 5 / 2.54;

export const squareAt = ({ x, y }: Dot, side: number): readonly Dot[] => [
  { x, y },
  { x: x + side, y },
  { x: x + side, y: y + side },
  { x, y: y + side },
];

const numbers = (...values: readonly number[]): string =>
  values.map((value) => Math.round(value * 1000) / 1000).join(' ');

/** SVG path data of a line through dots. */
export const pathThrough = (dots: readonly Dot[], closed = false): string =>
  `M${dots.map(({ x, y }) => numbers(x, y)).join('L')}${closed ? 'Z' : ''}`;

/** SVG path data of a circle. */
export function circlePath({ x, y }: Dot, radius: number): string {
  const half = (across: number) => `a${numbers(radius, radius, 0, 1, 0, across, 0)}`;
  return `M${numbers(x - radius, y)}${half(2 * radius)}${half(-2 * radius)}Z`;
}

/**
 * Parallel lines across a convex polygon, so that fabrics can be told apart without color, in print
 * and on any page: patterns would need ids, which two drawings on one page could share.
 *
 * @param angle of the lines, in degrees clockwise from across
 */
export function hatch(polygon: readonly Dot[], angle: number, gap: number): string {
  const turn = (angle * Math.PI) / 180;
  const along = { x: Math.cos(turn), y: Math.sin(turn) };
  const across = ({ x, y }: Dot): number => y * along.x - x * along.y;
  const levels = polygon.map(across);
  const highest = Math.max(...levels);
  const lines: string[] = [];
  for (
    let level = (Math.floor(Math.min(...levels) / gap) + 1) * gap;
    level < highest;
    level += gap
  ) {
    const hits = polygon.flatMap((start, index) => {
      const end = entryAt(polygon, (index + 1) % polygon.length);
      const [from, to] = [across(start), across(end)];
      if (from < level === to < level) return [];
      const share = (level - from) / (to - from);
      return { x: start.x + share * (end.x - start.x), y: start.y + share * (end.y - start.y) };
    });
    lines.push(pathThrough(hits));
  }
  return lines.join('');
}
