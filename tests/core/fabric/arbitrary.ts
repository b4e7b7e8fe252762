import fc from 'fast-check';

/** Pieces of a quilt's sizes on the eighth inch, some of them of one width or one size. */
export const pieces = fc.array(
  fc.record({
    width: fc.constantFrom('1 1/2', '2', '2 1/2', '4 7/8'),
    length: fc.integer({ min: 12, max: 300 }).map((eighths) => `${eighths}/8`),
    count: fc.integer({ min: 1, max: 60 }),
  }),
  { minLength: 1, maxLength: 9 },
);

/** Fabric that is wide enough for all of them. */
export const fabricWidth = fc
  .integer({ min: 38 * 8, max: 44 * 8 })
  .map((eighths) => `${eighths}/8`);
