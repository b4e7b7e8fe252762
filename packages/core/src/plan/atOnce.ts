/** What a plan in the making comes to, without its pauses. */
export function atOnce<Result>(making: Generator<unknown, Result, undefined>): Result {
  let state = making.next();
  while (!state.done) state = making.next();
  return state.value;
}
