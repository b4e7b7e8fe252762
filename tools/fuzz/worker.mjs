// Tries one target after the other, and tells the thread that started it what came of each.
import { parentPort, workerData } from 'node:worker_threads';
import { fuzz } from './fuzz.mjs';
import { coreTargets, tagTargets } from './targets.mjs';

const packages = new URL('../../packages/', import.meta.url);
const core = await import(`${packages}core/dist/index.js`);
const rendering = await import(`${packages}widget/dist/render/index.js`);

const { current, recipes, inputs, seed, only, from } = workerData;
for (const target of [...coreTargets(core, recipes), ...tagTargets(rendering, recipes)]) {
  if (only !== '' && target.name !== only) continue;
  const share = only === '' ? target.share : 1;
  const outcome = await fuzz(target, {
    inputs: Math.ceil(inputs * share),
    seed,
    from,
    begins: (number) => Atomics.store(current, 0, number),
  });
  parentPort?.postMessage(outcome);
}
