import { readFileSync } from 'node:fs';

/**
 * @typedef {object} Counts
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped
 *
 * @typedef {object} Report what Vitest's JSON reporter writes, as far as it is read here
 * @property {number} numPassedTests
 * @property {number} numFailedTests
 * @property {number} numPendingTests
 * @property {number} numTodoTests
 * @property {readonly { status: string, assertionResults: readonly { status: string }[] }[]} testResults
 */

/**
 * Files that could not even be loaded: no test of theirs failed, so each is counted as one.
 * @param {Report} report
 */
function brokenFiles({ testResults }) {
  return testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((test) => test.status === 'failed'),
  ).length;
}

/**
 * @param {Report | undefined} report absent when the runner wrote none
 * @param {number} exitCode the runner's own
 * @returns {Counts}
 */
export function countReport(report, exitCode) {
  if (!report) return { passed: 0, failed: 1, skipped: 0 };
  const failed = report.numFailedTests + brokenFiles(report);
  return {
    passed: report.numPassedTests,
    // An error outside of any test fails the run and no test.
    failed: failed === 0 && exitCode !== 0 ? 1 : failed,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** @param {string} file @param {number} exitCode */
export function countTests(file, exitCode) {
  try {
    return countReport(JSON.parse(readFileSync(file, 'utf8')), exitCode);
  } catch {
    return countReport(undefined, exitCode);
  }
}

/**
 * The last line and the exit code. A step that failed and a test that was skipped count as
 * failed: a run that did not check everything must not look whole.
 * @param {Counts} counts
 * @param {number} failedSteps
 */
export function closingLine({ passed, failed, skipped }, failedSteps) {
  const all = failed + skipped + failedSteps;
  // No test at all is a broken set-up, not a success.
  const code = all > 0 || passed === 0 ? 1 : 0;
  return { line: `${passed} passed, ${all} failed`, code };
}
