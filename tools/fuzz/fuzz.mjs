// Tries what is thrown at the packages: everything must be answered, or refused with a sentence.
import { chance } from './random.mjs';

/**
 * @typedef {object} Outcome
 * @property {string} name of the target
 * @property {number} tried
 * @property {number} answered the others were refused with a sentence
 * @property {readonly Finding[]} findings
 * @property {number} worst the longest call, in milliseconds, where it is as long every time
 * @property {number} worstAt its input's number
 *
 * @typedef {{ readonly number: number, readonly input: string, readonly complaint: string }} Finding
 */

/** More of the same need not be told. */
const MOST_FINDINGS = 10;

/** @param {unknown} error @returns {string} what is wrong with an error, or nothing */
export function complaintAbout(error) {
  if (!(error instanceof Error)) return `threw what is no error: ${String(error)}`;
  if (error.name !== 'EighthsError') return error.stack ?? error.message;
  const { message } = error;
  const template = String(Reflect.get(error, 'template'));
  const values = Object(Reflect.get(error, 'values'));
  if (!/[.?!)]$/.test(message.trim())) return `is no sentence: ${message}`;
  if (message.length > 2000) return `speaks for ${message.length} characters`;
  if (/\[object /.test(message)) return `speaks of an object: ${message}`;
  for (const [, name = ''] of template.matchAll(/\{(\w+)\}/g)) {
    if (!Object.hasOwn(values, name)) return `leaves {${name}} open: ${message}`;
  }
  return '';
}

/** An input as a person can read it. @param {unknown} input */
function shown(input) {
  const text = JSON.stringify(input, (_, value) => {
    const plain = typeof value === 'number' ? Number.isFinite(value) : typeof value !== 'bigint';
    return plain && value !== undefined ? value : `(${value})`;
  });
  return text.length > 1500 ? `${text.slice(0, 1500)}…` : text;
}

/** So many of the slowest calls are made again: once is slow for many reasons. */
const TRIED_AGAIN = 50;

/**
 * Calls a target with so many inputs.
 *
 * @param {import('./targets.mjs').Target} target
 * @param {{ inputs: number, seed: number, from?: number, begins?: (number: number) => void }} options
 *   `from` is the first input's number; `begins` hears of each call before it
 * @returns {Promise<Outcome>}
 */
export async function fuzz({ name, input, call }, { inputs, seed, from = 0, begins }) {
  /** @type {Finding[]} */
  const findings = [];
  /** @type {{ number: number, took: number }[]} */
  let slowest = [];
  let answered = 0;
  /** @param {number} number */
  const tried = async (number) => {
    const made = input(chance(seed, number));
    begins?.(number);
    const began = performance.now();
    let complaint = '';
    try {
      const result = call(made);
      // Only what takes time is waited for: a million waits are long.
      if (result instanceof Promise) await result;
    } catch (error) {
      complaint = complaintAbout(error);
      return { made, complaint, refused: true, took: performance.now() - began };
    }
    return { made, complaint, refused: false, took: performance.now() - began };
  };
  for (let number = from; number < from + inputs; number += 1) {
    const { made, complaint, refused, took } = await tried(number);
    if (!refused) answered += 1;
    if (slowest.length < TRIED_AGAIN || took > (slowest.at(-1)?.took ?? 0)) {
      slowest = [...slowest, { number, took }]
        .sort((a, b) => b.took - a.took)
        .slice(0, TRIED_AGAIN);
    }
    if (complaint !== '' && findings.length < MOST_FINDINGS) {
      findings.push({ number, input: shown(made), complaint });
    }
  }
  let worst = { number: from, took: 0 };
  for (const { number, took } of slowest) {
    const again = Math.min(took, (await tried(number)).took, (await tried(number)).took);
    if (again > worst.took) worst = { number, took: again };
  }
  return { name, tried: inputs, answered, findings, worst: worst.took, worstAt: worst.number };
}
