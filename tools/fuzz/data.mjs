// Data that a program could hand over in place of a spec: a good one with a few things wrong in it.
import { anyText } from './texts.mjs';

/** @typedef {import('./random.mjs').Chance} Chance */

const NUMBERS = [
  0,
  -0,
  1,
  2,
  3.5,
  -1,
  1e-9,
  0.1,
  50,
  51,
  1e5,
  1e6,
  1e21,
  1e308,
  5e-324,
  NaN,
  Infinity,
];

/**
 * @param {Chance} by
 * @returns {unknown}
 */
function anyValue(by, depth = 0) {
  const kind = by.unit();
  if (kind < 0.3) return by.one(NUMBERS);
  if (kind < 0.65) return anyText(by);
  if (kind < 0.72) return by.often(0.5);
  if (kind < 0.77) return null;
  if (kind < 0.8) return undefined;
  if (kind < 0.82) return BigInt(by.whole(-9, 9)) ** 40n;
  if (depth > 3) return [];
  if (kind < 0.92) return Array.from({ length: by.whole(0, 4) }, () => anyValue(by, depth + 1));
  return Object.fromEntries(
    Array.from({ length: by.whole(0, 4) }, () => [
      by.one(['width', 'length', 'n', 'd', 'count', 'toString', '__proto__', anyText(by)]),
      anyValue(by, depth + 1),
    ]),
  );
}

/**
 * Everything that stands in data: whose it is, and under which key.
 *
 * @param {unknown} data
 * @returns {readonly { holder: object, key: string }[]}
 */
function places(data) {
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) => [{ holder: data, key }, ...places(value)]);
}

/** @param {Chance} by @param {unknown} data */
function spoilOnce(by, data) {
  const all = places(data);
  if (all.length === 0) return;
  const { holder, key } = by.one(all);
  const kind = by.unit();
  /** @type {unknown} */
  const value = Reflect.get(holder, key);
  if (kind < 0.15) Reflect.deleteProperty(holder, key);
  else if (kind < 0.25) Reflect.set(holder, anyText(by), value);
  else if (kind < 0.35 && Array.isArray(holder)) holder.push(structuredClone(value));
  else if (kind < 0.45) Reflect.set(holder, key, structuredClone(by.one(all).holder));
  else Reflect.set(holder, key, anyValue(by));
}

/**
 * One of the examples with up to six things changed in it; now and then something else altogether.
 *
 * @param {Chance} by
 * @param {readonly unknown[]} examples
 * @returns {unknown}
 */
export function anyData(by, examples) {
  if (by.often(0.05)) return anyValue(by);
  const data = structuredClone(by.one(examples));
  for (let times = by.whole(0, by.often(0.5) ? 1 : 6); times > 0; times -= 1) spoilOnce(by, data);
  return data;
}
