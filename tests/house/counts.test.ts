import { describe, expect, test } from 'vitest';
import { countTests } from '../../tools/counts.mjs';

const file = (status: string, ...tests: string[]) => ({
  name: 'a.test.ts',
  status,
  assertionResults: tests.map((one, at) => ({ fullName: `test ${at}`, status: one })),
});

describe('the count of a run', () => {
  test.each([
    ['all passed', 0, [file('passed', 'passed', 'passed')], 2, 0, []],
    ['one failed', 1, [file('failed', 'passed', 'failed')], 1, 1, []],
    ['one was skipped', 0, [file('passed', 'passed', 'skipped')], 1, 1, ['skipped: test 1']],
    ['one is to do', 0, [file('passed', 'todo')], 0, 1, ['todo: test 0']],
    [
      'a file failed to load',
      1,
      [file('failed'), file('passed', 'passed')],
      1,
      1,
      ['failed outside its tests: a.test.ts'],
    ],
    [
      'a file failed after its tests',
      1,
      [file('failed', 'passed')],
      1,
      1,
      ['failed outside its tests: a.test.ts'],
    ],
    ['nothing was run', 0, [], 0, 1, ['no test was run']],
    [
      'something else went wrong',
      1,
      [file('passed', 'passed')],
      1,
      1,
      ['the tests ended with code 1'],
    ],
  ])('where %s', (_, code, testResults, passed, failed, complaints) => {
    expect(countTests({ testResults }, code)).toEqual({ passed, failed, complaints });
  });

  test('where there is no report', () => {
    expect(countTests(undefined, 1)).toMatchObject({ passed: 0, failed: 1 });
  });
});
