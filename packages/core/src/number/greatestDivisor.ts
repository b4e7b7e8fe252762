/** The greatest number that both are multiples of; neither is below zero. */
export function greatestDivisor(one: bigint, other: bigint): bigint {
  let [divisor, rest] = [one, other];
  while (rest > 0n) [divisor, rest] = [rest, divisor % rest];
  return divisor;
}
