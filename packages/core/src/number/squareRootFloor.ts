/** The whole part of √n, for n ≥ 0, by Newton's method from above. */
export function squareRootFloor(n: bigint): bigint {
  if (n < 2n) return n;
  // 2^⌈bits/2⌉ ≥ √n, and from above the steps fall until they meet the root.
  const bits = n.toString(16).length * 4;
  let guess = 1n << BigInt((bits + 1) >> 1);
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
