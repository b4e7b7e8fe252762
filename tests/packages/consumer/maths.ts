import { type LogCabin, length, logCabin, type QuiltRecipe } from '@eighths/core';
import { type ChangeDetail, EighthsLogCabin } from '@eighths/widget';

const block: LogCabin = logCabin({ rounds: 4, finished: 9, wide: '1 1/4', narrow: '1/2' });
export const edge: string = block.unfinished.width.plus(length('1/4')).toString();
export const version: ChangeDetail['version'] = 1;
export const tag: typeof EighthsLogCabin = EighthsLogCabin;
export type Recipe = QuiltRecipe;
