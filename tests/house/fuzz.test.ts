import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as core from '@eighths/core';
import { describe, expect, test } from 'vitest';
import * as rendering from '../../packages/widget/src/render/index.js';
import { complaintAbout, fuzz } from '../../tools/fuzz/fuzz.mjs';
import { coreTargets, tagTargets } from '../../tools/fuzz/targets.mjs';

const recipe: unknown = JSON.parse(
  readFileSync(
    fileURLToPath(new URL('../../docs/pages/recipes/thaw-at-fernhollow.json', import.meta.url)),
    'utf8',
  ),
);
const targets = [...coreTargets(core, [recipe]), ...tagTargets(rendering, [recipe])];

describe('a few thousand strange inputs, of which `npm run fuzz` tries a million', () => {
  test.each(targets)('$name answers each, or refuses it with a sentence', async (target) => {
    const inputs = Math.ceil(1500 * target.share);
    const { findings, answered } = await fuzz(target, { inputs, seed: 20 });
    expect(findings).toEqual([]);
    // Not all of it is nonsense, so that what comes behind the door is tried too.
    if (inputs > 100) expect(answered).toBeGreaterThan(inputs / 20);
  });

  test('and what is refused in another way is found', async () => {
    const target = {
      name: 'one that breaks',
      share: 1,
      input: (by: { readonly whole: (least: number, greatest: number) => number }) =>
        by.whole(0, 9),
      call: (input: unknown) => {
        if (input === 7) throw new TypeError('seven');
      },
    };
    const { findings } = await fuzz(target, { inputs: 100, seed: 1 });
    expect(findings.length).toBeGreaterThan(0);
    expect(findings[0]?.complaint).toContain('TypeError: seven');
    const [first] = findings;
    const again = await fuzz(target, { inputs: 1, seed: 1, from: first?.number ?? 0 });
    expect(again.findings.map(({ number, input }) => [number, input])).toEqual([
      [first?.number, first?.input],
    ]);
  });

  test.each([
    ['is no sentence', 'Not so'],
    ['speaks of an object', 'There is no [object Object] here.'],
    ['leaves {most} open', 'At most {most} are wanted.'],
  ])('a message that %s is found', (complaint, template) => {
    const error = new core.EighthsError('wrong-kind', '', { expected: 'a word' }, template);
    expect(complaintAbout(error)).toContain(complaint);
    const good = new core.EighthsError(
      'wrong-kind',
      '',
      { expected: 'a word' },
      'Give {expected}.',
    );
    expect(complaintAbout(good)).toBe('');
  });
});
