import { Length, length } from '@eighths/core';
import { describe, expect, it, vi } from 'vitest';

describe('a length that another copy of the package made', () => {
  const secondCopy = async () => {
    vi.resetModules();
    return import('../../../packages/core/src/index.js');
  };

  it('is read exactly, roots included', async () => {
    const other = await secondCopy();
    const foreign = other.squareRoot(2).times(5).plus('1/2');
    expect(other.Length).not.toBe(Length);
    expect(length('1/2').plus(foreign).toString()).toBe('5√2 + 1');
  });

  it('stays what it is when bare numbers are read in another unit', async () => {
    const other = await secondCopy();
    expect(length(other.length('5 1/4'), { unit: 'cm', decimal: ',' }).toString()).toBe('5 1/4');
  });
});
