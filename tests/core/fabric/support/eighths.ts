import type { Length } from '@eighths/core';
import { expect } from 'vitest';
import type { Box } from './guillotine.js';

/** A placement in whole eighths of an inch. */
export function inEighths(placed: {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
}): Box {
  const whole = (value: Length): number => {
    expect(value.isOnGrid('1/8'), `${value} is on the eighth`).toBe(true);
    return value.times(8).toNumber();
  };
  return {
    x: whole(placed.x),
    y: whole(placed.y),
    width: whole(placed.width),
    height: whole(placed.height),
  };
}

export const areaOf = (boxes: readonly Box[]): number =>
  boxes.reduce((sum, { width, height }) => sum + width * height, 0);
