import { derivation } from "../../src/app/session/derived";
import { nextOfFitting } from "../../src/command/nextOfText";
import type { Fitting, WorkEntry } from "../../src/document/fitting";
import type { StepFile } from "../../src/document/stepFile";

/** Step after step of a fitting, each done by its own record with nothing read and the trial passed over. */
export function* unreadSteps(start: Fitting): Generator<{ readonly fitting: Fitting; readonly next: StepFile }> {
  const derive = derivation();
  for (let fitting = start; ; ) {
    const next = nextOfFitting(fitting, derive);
    if (!next.ok) throw new Error(next.problem.join(" "));
    yield { fitting, next: next.value };
    const {
      before: _,
      after: __,
      ...record
    } = JSON.parse(JSON.stringify(next.value.step.record ?? null)) as WorkEntry & {
      readonly before?: unknown;
      readonly after?: unknown;
    };
    const entry = ("readings" in record ? { ...record, readings: {} } : record) as WorkEntry;
    fitting = { ...fitting, work: [...fitting.work, entry] };
  }
}
