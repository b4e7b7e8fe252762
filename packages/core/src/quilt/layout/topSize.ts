import { type Length, squareRoot } from '../../length/length.js';
import type { Size } from '../../plan/size.js';
import type { QuiltSetting } from './spec.js';

/** So many blocks a top takes each way. */
export const MOST_BLOCKS: Readonly<Record<QuiltSetting, number>> = {
  straight: 100,
  'on-point': 50,
};

/** What the size of a top depends on. */
export interface TopMeasures {
  readonly block: Size;
  readonly setting: QuiltSetting;
  readonly across: number;
  readonly down: number;
  readonly sashing: { readonly width: Length; readonly outer: boolean } | undefined;
}

/** One extent of a top, with so many blocks of that side. Exact. */
export function topExtent(
  side: Length,
  count: number,
  { setting, sashing }: Pick<TopMeasures, 'setting' | 'sashing'>,
): Length {
  const blocks = side.times(count);
  if (setting === 'on-point') {
    const sashes = sashing?.width.times(count) ?? 0;
    return blocks.plus(sashes).times(squareRoot(2));
  }
  return sashing ? blocks.plus(sashing.width.times(sashing.outer ? count + 1 : count - 1)) : blocks;
}

/** The finished size of a top without borders. Exact. */
export const topSize = (top: TopMeasures): Size => ({
  width: topExtent(top.block.width, top.across, top),
  height: topExtent(top.block.height, top.down, top),
});
