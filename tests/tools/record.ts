import { createHash } from "node:crypto";
import { derivation } from "../../src/app/session/derived";
import { nextOfFitting } from "../../src/command/nextOfText";
import { planOfText } from "../../src/command/planOfText";
import type { Batting } from "../../src/core/material";
import { mm, ratio } from "../../src/core/units";
import type { Fitting } from "../../src/document/fitting";
import type { StepFile } from "../../src/document/stepFile";
import { drawRoom, type Shortcuts, walkJob } from "./jobWalk";
import { fittingFileOf, person } from "./people";
import { chance } from "./peopleChance";

/** Whose plans and whose jobs are on record: of each way to measure and each kind of form some. */
export const recordedPlans: readonly number[] = Array.from({ length: 24 }, (_, i) => 5000 + i);

interface RecordedJob {
  readonly seed: number;
  readonly shortcuts: Shortcuts;
  readonly finishing?: Batting;
}

const thin: Batting = { name: "thin batting", layerThickness: mm(2.5), relativeDeviation: ratio(0.3) };

export const recordedJobs: { readonly [title: string]: RecordedJob } = {
  "with the trial passed over": { seed: 31, shortcuts: { trial: false } },
  "with the form never read bare": { seed: 39, shortcuts: { lines: false } },
  "with left and right apart": { seed: 18, shortcuts: {} },
  "with two battings": { seed: 59, shortcuts: {}, finishing: thin },
  "from three girths and no more": { seed: 42, shortcuts: {} },
};

/** What the plan file says of a made-up person: its sentences and figures by level in lines, and of the whole file a digest. */
export function planOnRecord(seed: number): readonly string[] {
  const made = planOfText(JSON.stringify(fittingFileOf(person(seed))));
  if (!made.ok) return made.problem;
  const { levels, shortfalls, seamShifts, matters, pieces } = made.value;
  return [
    createHash("sha256").update(JSON.stringify(made.value)).digest("hex"),
    ...[...levels, ...shortfalls, ...seamShifts, ...matters].map((one) => JSON.stringify(one)),
    ...pieces.map(({ name, place, layers }) => `${name}: ${layers.length}, ${place}`),
  ];
}

/** What every step of a whole job said, with what was then still foretold; `see` gets each line as soon as it is said. */
export function jobOnRecord(job: RecordedJob, see: (line: string) => void = () => {}): readonly string[] {
  const derive = derivation();
  const { seed, shortcuts, finishing } = job;
  const said: string[] = [];
  walkJob(person(seed), drawRoom(chance(70_000 + seed)), shortcuts, (fitting: Fitting) => {
    const next = nextOfFitting(finishing === undefined ? fitting : { ...fitting, finishingBatting: finishing }, derive);
    const line = next.ok ? stepLine(next.value) : next.problem.join(" ");
    said.push(line);
    see(line);
    return next;
  });
  return said;
}

const stepLine = ({ step, layers, rest }: StepFile): string =>
  JSON.stringify([
    step.do,
    step.say,
    step.expectedMm,
    layers.map(({ thicknessMm, lowMm, highMm }) => [thicknessMm, lowMm, highMm]),
    rest.pieces.map(({ id }) => id),
    rest.shortfalls.map(({ level, what, amountMm }) => [level, what, amountMm]),
    Object.values(rest.predicted)
      .flatMap(Object.values)
      .map(({ valueMm, lowMm, highMm }) => [valueMm, lowMm, highMm]),
  ]);
