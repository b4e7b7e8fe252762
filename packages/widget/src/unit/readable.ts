import { type LengthInput, length } from '@eighths/core';
import type { Measures } from '../base/measures.js';

/** Finer fractions than this, and roots, are decimals: nobody reads `5√2` or a fifteen-place fraction. */
const FINEST = 1000n;

/** Measures that write every length so that it can be read: units hold roots, sines and pi. */
export function readableMeasures(measures: Measures): Measures {
  if (measures.units === 'metric') return measures;
  const isPlain = (value: LengthInput): boolean => {
    const fraction = length(value).toFraction();
    return fraction !== undefined && fraction.d <= FINEST;
  };
  const decimal = (value: LengthInput): string =>
    measures.decimal(length(value).toGrid('1/10000', 'nearest'));
  const figures = (value: LengthInput): string =>
    isPlain(value) ? measures.figures(value) : `≈ ${decimal(value)}`;
  return { ...measures, figures, bare: figures };
}
