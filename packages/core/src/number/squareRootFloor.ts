/** The whole part of √n, for n ≥ 0, by Newton's method from above. */
export function squareRootFloor(n: bigint): bigint {
  if (n < 2n) return n;
  // With one factor of 4 for each hexadecimal digit this is above √n, and the steps fall to it.
  let guess = 1n << BigInt(2 * n.toString(16).length);
  for (;;) {
    const next = (guess + n / guess) >> 1n;
    if (next >= guess) return guess;
    guess = next;
  }
}

/** √n where n is a perfect square, otherwise undefined. */
export function perfectSquareRoot(n: bigint): bigint | undefined {
  const root = squareRootFloor(n);
  return root * root === n ? root : undefined;
}
