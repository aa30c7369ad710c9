import { readFileSync } from "node:fs";
import { describe, expect, test, vi } from "vitest";
import { derivation } from "../../../src/app/session/derived";
import { plannedSteps } from "../../../src/app/steps/plannedSteps";
import type { Step } from "../../../src/app/steps/step";
import { nothingDone } from "../../../src/app/steps/workState";
import { nextOfFitting } from "../../../src/command/nextOfText";
import type { Fitting, WorkEntry } from "../../../src/document/fitting";
import { readFitting } from "../../../src/document/readFitting";
import type { StepFile } from "../../../src/document/stepFile";

vi.setConfig({ testTimeout: 240_000 });

const perUnit = { in: 25.4, cm: 10, mm: 1 } as const;

function sample(name: string): Fitting {
  const read = readFitting(JSON.parse(readFileSync(`shared/${name}.json`, "utf8")));
  if (!read.ok) throw new Error(name);
  return read.value;
}

function planned(fitting: Fitting): readonly Step[] {
  const { planning } = derivation()(fitting);
  if (planning.kind !== "planned") throw new Error("no plan");
  return plannedSteps({ plan: planning.plan, state: nothingDone, isAtLines: false }).map(({ step }) => step);
}

/** The command's own walk, in which the tape reads over the padding what the plan expects, and what is optional is passed over. */
function commanded(bare: Fitting, expected: readonly Step[]): readonly StepFile["step"][] {
  let fitting = bare;
  const steps: StepFile["step"][] = [];
  for (const { expected: readings } of expected) {
    const next = nextOfFitting(fitting);
    if (!next.ok) throw new Error(next.problem.join(" "));
    steps.push(next.value.step);
    const entry = JSON.parse(JSON.stringify(next.value.step.record ?? { did: "looked" })) as WorkEntry & {
      before?: unknown;
      after?: unknown;
      readings?: Record<string, number | null>;
    };
    if (entry.did === "trial") {
      delete entry.before;
      delete entry.after;
    }
    const { readings: asked } = entry as { readings?: Record<string, number | null> };
    if (asked !== undefined) {
      const taken = Object.keys(asked).flatMap((name) => {
        const value = readings[name as keyof typeof readings];
        return value === undefined ? [] : [[name, value / perUnit[fitting.unit]] as const];
      });
      Object.assign(entry, { readings: Object.fromEntries(taken) });
    }
    fitting = { ...fitting, work: [...fitting.work, entry] };
  }
  return steps;
}

describe("the steps of a plan are those that the command walks when the tape reads what the plan expects", () => {
  test.each(["demo-fitting", "demo/first", "demo/two-sides", "demo/long-back", "demo/three-girths"])("%s", (name) => {
    const fitting = sample(name);
    const own = planned(fitting);
    const walked = commanded(fitting, own);
    expect(own.map((step) => step.do)).toEqual(walked.map((step) => step.do));
    const structureRead = own.findIndex((step) => step.do === "read");
    expect(structureRead).toBeGreaterThan(5);
    const ids = (steps: readonly (Step | StepFile["step"])[]) => steps.map(({ piece }) => piece?.id ?? "");
    expect(ids(own).slice(0, structureRead)).toEqual(ids(walked).slice(0, structureRead));
    // What tunes is cut to what was read: its place is the plan's, its name may go by the line that turned out widest.
    const places = (steps: readonly (Step | StepFile["step"])[]) =>
      steps.map(({ piece }) => (piece == null ? "" : `${piece.kind} ${piece.zone}`));
    expect(places(own)).toEqual(places(walked));
    for (const [i, { expected }] of own.entries()) {
      const told: Readonly<Record<string, number>> = walked[i]?.expectedMm ?? {};
      expect(Object.keys(expected)).toEqual(Object.keys(told));
      for (const [reading, value] of Object.entries(expected))
        expect(Math.abs(value - (told[reading] ?? 0)), reading).toBeLessThan(6);
    }
  });

  test("from the middle of a job only what is left, and every step brings the work on", () => {
    const fitting = sample("demo-fitting");
    const { planning } = derivation()(fitting);
    if (planning.kind !== "planned") throw new Error("no plan");
    const from = { plan: planning.plan, isAtLines: true };
    const whole = plannedSteps({ ...from, state: nothingDone });
    expect(whole.map(({ step }) => step.do)).not.toContain("mark-lines");
    expect(whole.at(-1)?.step.do).toBe("done");
    for (const [i, { before }] of whole.entries())
      expect(plannedSteps({ ...from, state: before }).map(({ step }) => step)).toEqual(
        whole.slice(i).map(({ step }) => step),
      );
  });
});
