// What a page holds in memory, by kind.
import { setTimeout as after } from 'node:timers/promises';

/**
 * @typedef {object} Held
 * @property {number} values bytes of objects, closures, lists and texts: what elements can keep
 * @property {number} code bytes of what V8 has compiled, and has noted in order to compile it better
 * @property {number} nodes of documents, in the page or apart from it
 * @property {number} listeners
 */

/** What scripts make, by V8's names; all else in a snapshot is V8's own or the browser's. */
const VALUES = new Set([
  'array',
  'bigint',
  'closure',
  'concatenated string',
  'number',
  'object',
  'regexp',
  'sliced string',
  'string',
  'symbol',
]);
const CODE = new Set(['code', 'object shape']);

/** Longer than any pause an element waits for, in milliseconds. */
const PAUSE = 1000;

/**
 * The bytes in a heap snapshot by kind.
 *
 * @param {string} text
 */
export function bytesIn(text) {
  const { snapshot, nodes } = JSON.parse(text);
  /** @type {readonly string[]} */
  const fields = snapshot.meta.node_fields;
  /** @type {readonly string[]} */
  const [types] = snapshot.meta.node_types;
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  const sum = { values: 0, code: 0 };
  for (let at = 0; at < nodes.length; at += fields.length) {
    const kind = types?.[nodes[at + type]] ?? '';
    if (VALUES.has(kind)) sum.values += nodes[at + size];
    else if (CODE.has(kind)) sum.code += nodes[at + size];
  }
  return sum;
}

/**
 * What a page holds when all that can be given back has been.
 *
 * @param {import('playwright-core').CDPSession} devtools
 * @returns {Promise<Held>}
 */
export async function held(devtools) {
  await after(PAUSE);
  // What a first collection frees may free more.
  for (let times = 0; times < 3; times += 1) await devtools.send('HeapProfiler.collectGarbage');
  /** @type {string[]} */
  const chunks = [];
  const take = (/** @type {{ chunk: string }} */ { chunk }) => chunks.push(chunk);
  devtools.on('HeapProfiler.addHeapSnapshotChunk', take);
  await devtools.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  devtools.off('HeapProfiler.addHeapSnapshotChunk', take);
  const { nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
  return { ...bytesIn(chunks.join('')), nodes, listeners: jsEventListeners };
}
