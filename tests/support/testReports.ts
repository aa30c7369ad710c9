/** What a step of the whole check came to. A step without anything to do counts as nothing, not as passed. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly note: string;
}

/**
 * Reads the JSON report of the unit tests. A file that could not be loaded holds no test and still counts as one
 * failure; so does a run that ended badly without naming a failed test.
 */
export function unitTally(report: unknown, exitCode: number): Tally {
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } = report as {
    numPassedTests: number;
    numFailedTests: number;
    numPendingTests: number;
    numTodoTests: number;
    testResults: readonly { status: string; assertionResults: readonly { status: string }[] }[];
  };
  const broken = testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
  const skipped = numPendingTests + numTodoTests;
  return tally(numPassedTests, numFailedTests + broken, exitCode, [
    `${testResults.length} files`,
    ...count(skipped, "skipped"),
  ]);
}

/** Reads the JSON report of the end-to-end tests. One that passed only when tried again passes and is named flaky. */
export function browserTally(report: unknown, exitCode: number): Tally {
  const { stats, errors } = report as {
    stats: { expected: number; unexpected: number; flaky: number; skipped: number };
    errors: readonly unknown[];
  };
  const notes = [...count(stats.flaky, "flaky"), ...count(stats.skipped, "skipped"), ...count(errors.length, "errors")];
  return tally(stats.expected + stats.flaky, stats.unexpected, exitCode, notes);
}

function tally(passed: number, failed: number, exitCode: number, notes: readonly string[]): Tally {
  const silent = exitCode !== 0 && failed === 0;
  return {
    passed,
    failed: silent ? 1 : failed,
    note: [...notes, ...(silent ? [`ended with code ${exitCode}`] : [])].join(", "),
  };
}

function count(amount: number, word: string): readonly string[] {
  return amount === 0 ? [] : [`${amount} ${word}`];
}
