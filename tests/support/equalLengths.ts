import { Length } from '@eighths/core';
import { expect } from 'vitest';

/** A length keeps its value to itself, so that two of them look alike to `toEqual`: it asks them. */
expect.addEqualityTesters([
  (one: unknown, other: unknown): boolean | undefined =>
    one instanceof Length && other instanceof Length ? one.equals(other) : undefined,
]);
