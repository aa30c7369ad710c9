import { readFileSync } from "node:fs";
import { derivation } from "../../src/app/session/derived";
import type { StepName } from "../../src/app/steps/step";
import { workEntry } from "../../src/app/steps/workEntry";
import { type Fitting, fittingStep } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import { planWords } from "../../src/text/plan";

/** A fitting of a file as it stands when a step comes next for the first time, in a job whose tape reads what is expected. */
export function walkedFitting(path: string, until: StepName): Fitting {
  const read = readFitting(JSON.parse(readFileSync(path, "utf8")));
  if (!read.ok) throw new Error(`${path} cannot be read`);
  const derive = derivation();
  let fitting = read.value;
  for (let steps = 0; steps < 200; steps += 1) {
    const current = derive(fitting).step();
    if (current === null || current.step.do === until) return fitting;
    const { step, plan } = current;
    const readings = Object.fromEntries(
      step.names.flatMap((name) => {
        const expected = step.expected[name];
        return expected === undefined ? [] : [[name, `${String(Math.round(expected))} mm`]];
      }),
    );
    const taken = step.names.length === 0 ? {} : { readings };
    const from = { plan, fitting, words: planWords(fittingStep(fitting)) };
    const entry = workEntry(step, from, "2026-10-03T10:00:00.000Z", taken);
    if (entry === null) return fitting;
    fitting = { ...fitting, work: [...fitting.work, entry] };
  }
  throw new Error(`“${until}” never comes`);
}
