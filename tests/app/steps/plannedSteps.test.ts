import { readFileSync } from "node:fs";
import { describe, expect, test, vi } from "vitest";
import { derivation } from "../../../src/app/session/derived";
import { plannedSteps } from "../../../src/app/steps/plannedSteps";
import type { Step } from "../../../src/app/steps/step";
import { lineDepths, workFacts } from "../../../src/app/steps/workFacts";
import { nothingDone, workState } from "../../../src/app/steps/workState";
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
  const { plan } = planning;
  const state = workState(workFacts(fitting.work, lineDepths(plan)));
  return plannedSteps({ plan, state, isAtLines: false, hasArm: false, above: [] }).map(({ step }) => step);
}

/** The trial passed over and the plan made with care for that: what comes before the first piece is over. */
const untried: readonly WorkEntry[] = [
  { did: "prepared", what: "form" },
  { did: "marked" },
  { did: "measured", readings: {} },
  { did: "trial", batting: "batting", level: "waist" },
  { did: "replanned" },
];

/** The command's own walk, in which the tape reads what the plan expects. */
function commanded(bare: Fitting, expected: readonly Step[]): readonly StepFile["step"][] {
  let fitting = bare;
  const steps: StepFile["step"][] = [];
  for (const { expected: readings } of expected) {
    const next = nextOfFitting(fitting);
    if (!next.ok) throw new Error(next.problem.join(" "));
    steps.push(next.value.step);
    const entry = JSON.parse(JSON.stringify(next.value.step.record ?? { did: "looked" })) as WorkEntry & {
      readings?: Record<string, number | null>;
    };
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

describe("the steps of a plan are those that the command walks, before the first piece and until the structure is read", () => {
  test.each(["demo-fitting", "demo/first", "demo/two-sides", "demo/long-back", "demo/three-girths"])("%s", (name) => {
    const before = planned(sample(name)).slice(0, 4);
    expect(before.map((step) => step.do)).toEqual(["prepare-form", "mark-lines", "read-lines", "trial"]);
    const fitting = { ...sample(name), work: untried };
    const whole = planned(fitting);
    const structureRead = whole.findIndex((step) => step.do === "read");
    expect(structureRead).toBeGreaterThan(2);
    // What the tape tells of the structure decides what tunes, and no plan foresees that.
    const own = whole.slice(0, structureRead + 1);
    const walked = commanded(fitting, own);
    expect(own.map((step) => step.do)).toEqual(walked.map((step) => step.do));
    const ids = (steps: readonly (Step | StepFile["step"])[]) => steps.map(({ piece }) => piece?.id ?? "");
    expect(ids(own)).toEqual(ids(walked));
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
    const from = { plan: planning.plan, isAtLines: true, hasArm: true, above: [] };
    const whole = plannedSteps({ ...from, state: nothingDone });
    expect(whole.map(({ step }) => step.do)).not.toContain("mark-lines");
    expect(whole.at(-1)?.step.do).toBe("done");
    for (const [i, { before }] of whole.entries())
      expect(plannedSteps({ ...from, state: before }).map(({ step }) => step)).toEqual(
        whole.slice(i).map(({ step }) => step),
      );
  });
});
