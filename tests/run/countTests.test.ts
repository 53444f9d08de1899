import { describe, expect, it } from 'vitest';
import { closingLine, countReport } from './countTests.mjs';

const report = {
  numPassedTests: 7,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [],
};
const counts = { passed: 7, failed: 0, skipped: 0 };

describe('the closing line of npm test', () => {
  it('says that all passed and gives 0', () => {
    expect(closingLine(countReport(report, 0), 0)).toEqual({
      line: '7 passed, 0 failed',
      code: 0,
    });
  });

  it('counts a step that failed', () => {
    expect(closingLine(counts, 2)).toEqual({ line: '7 passed, 2 failed', code: 1 });
  });

  it('counts a skipped test as failed', () => {
    const skipped = countReport({ ...report, numPendingTests: 1, numTodoTests: 1 }, 0);
    expect(closingLine(skipped, 0)).toEqual({ line: '7 passed, 2 failed', code: 1 });
  });

  it('takes a run without tests for a failure', () => {
    expect(closingLine({ ...counts, passed: 0 }, 0).code).toBe(1);
  });
});

describe('counting tests', () => {
  it('counts a file that could not be loaded as one', () => {
    const testResults = [
      { status: 'failed', assertionResults: [] },
      { status: 'failed', assertionResults: [{ status: 'failed' }] },
    ];
    expect(countReport({ ...report, numFailedTests: 1, testResults }, 1).failed).toBe(2);
  });

  it('counts an error outside of any test', () => {
    expect(countReport(report, 1).failed).toBe(1);
  });

  it('fails where the runner left no report', () => {
    expect(countReport(undefined, 1)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});
