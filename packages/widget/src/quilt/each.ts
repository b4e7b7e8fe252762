import { type BlocksEach, EighthsError } from '@eighths/core';

/** What each person of a class makes: quilts, or blocks. */
export type Each = number | readonly BlocksEach[];

const BLOCKS = /^(\d{1,4})\s+of\s+([\w-]{1,60})$/i;

/**
 * `2` is two quilts, `4 of cabin; 2 of window` are blocks by their ids.
 *
 * @throws EighthsError `wrong-kind`
 */
export function readEach(text: string): Each {
  if (/^\d{1,4}$/.test(text.trim())) return Number(text);
  return text
    .trim()
    .split(/\s*;\s*/)
    .map((entry) => {
      const [, count, block] = BLOCKS.exec(entry) ?? [];
      if (count !== undefined && block !== undefined) return { block, count: Number(count) };
      throw new EighthsError(
        'wrong-kind',
        'each',
        { expected: '4 of cabin' },
        'A number of quilts is needed here, or blocks such as {expected}.',
      );
    });
}

/** One kind of what each makes, and how many; undefined where there are several kinds. */
export function onlyOneEach(
  text: string,
): { readonly block: string; readonly count: string } | undefined {
  const [, count, block] = BLOCKS.exec(text.trim()) ?? [];
  if (count !== undefined && block !== undefined) return { block, count };
  return text.includes(';') ? undefined : { block: '', count: text.trim() };
}

/** The same as text. */
export const eachText = (block: string, count: string): string =>
  block === '' ? count : `${count} of ${block}`;
