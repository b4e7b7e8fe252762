// What a run of vitest came to, read from the file of its JSON reporter.

/**
 * @typedef {{ fullName: string, status: string }} TestResult
 * @typedef {{ name: string, status: string, message?: string, assertionResults: TestResult[] }} FileResult
 * @typedef {{ testResults: FileResult[] }} Report
 */

/**
 * Counts strictly: a test that was skipped checked nothing and counts as failed, and so does each
 * file that failed to load, a run of no tests, and a run that ended badly for another reason.
 *
 * @param {Report | undefined} report undefined if the run left none
 * @param {number} exitCode
 * @returns {{ passed: number, failed: number, complaints: string[] }} `complaints` names what the
 *   run's own summary may not show
 */
export function countTests(report, exitCode) {
  const files = report?.testResults ?? [];
  const complaints = [];
  let passed = 0;
  let failed = 0;
  for (const file of files) {
    let failedHere = 0;
    for (const test of file.assertionResults) {
      if (test.status === 'passed') {
        passed += 1;
        continue;
      }
      failedHere += 1;
      if (test.status !== 'failed') complaints.push(`${test.status}: ${test.fullName}`);
    }
    if (file.status === 'failed' && failedHere === 0) {
      failedHere = 1;
      complaints.push(`failed outside its tests: ${file.name}`);
    }
    failed += failedHere;
  }
  if (report === undefined) {
    failed += 1;
    complaints.push('the tests left no report');
  } else if (passed + failed === 0) {
    failed += 1;
    complaints.push('no test was run');
  } else if (exitCode !== 0 && failed === 0) {
    failed += 1;
    complaints.push(`the tests ended with code ${exitCode}`);
  }
  return { passed, failed, complaints };
}
