import { expect, test } from "vitest";
import { browserTally, unitTally } from "./testReports";

const file = (status: string, ...tests: readonly string[]) => ({
  status,
  assertionResults: tests.map((state) => ({ status: state })),
});

const unit = (passed: number, failed: number, ...testResults: readonly ReturnType<typeof file>[]) => ({
  numPassedTests: passed,
  numFailedTests: failed,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults,
});

test("counts unit tests", () => {
  const report = unit(2, 1, file("passed", "passed"), file("failed", "passed", "failed"));
  expect(unitTally(report, 1)).toEqual({ passed: 2, failed: 1, note: "2 files" });
});

test("a file that could not be loaded is a failure", () => {
  expect(unitTally(unit(1, 0, file("passed", "passed"), file("failed")), 1)).toMatchObject({ passed: 1, failed: 1 });
});

test("a run that ends badly without a failed test is a failure", () => {
  const tally = unitTally(unit(1, 0, file("passed", "passed")), 1);
  expect(tally).toEqual({ passed: 1, failed: 1, note: "1 files, ended with code 1" });
});

test("skipped unit tests are named, not counted", () => {
  const report = { ...unit(1, 0, file("passed", "passed", "pending")), numPendingTests: 1 };
  expect(unitTally(report, 0)).toEqual({ passed: 1, failed: 0, note: "1 files, 1 skipped" });
});

const browser = (expected: number, unexpected: number, flaky = 0, skipped = 0, errors: readonly unknown[] = []) => ({
  stats: { expected, unexpected, flaky, skipped },
  errors,
});

test("counts end-to-end tests, and names the flaky and the skipped", () => {
  expect(browserTally(browser(3, 1, 1, 2), 1)).toEqual({ passed: 4, failed: 1, note: "1 flaky, 2 skipped" });
});

test("a browser run that broke off is a failure", () => {
  expect(browserTally(browser(0, 0, 0, 0, [{}]), 1)).toMatchObject({ passed: 0, failed: 1 });
});
