import { EighthsError } from '@eighths/core';
import type { Measures } from './measures.js';

/** Between the lengths of a list or a size, kept as it was typed. */
const BETWEEN = /(\s*;\s*|,\s+|\s*×\s*|\s+(?:x|by|mal|sur|par|por)\s+)/i;

function rewriteOne(typed: string, before: Measures, after: Measures): string {
  try {
    return after.typed(before.read(typed));
  } catch (error) {
    if (error instanceof EighthsError) return typed;
    throw error;
  }
}

/** The same lengths typed in other units; what cannot be read stays as it was typed. */
export const rewritten = (typed: string, before: Measures, after: Measures): string =>
  typed.trim() === ''
    ? typed
    : typed
        .split(BETWEEN)
        .map((part, index) => (index % 2 === 1 ? part : rewriteOne(part, before, after)))
        .join('');
