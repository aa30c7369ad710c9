import first from "../../../shared/demo/first.json";
import longBack from "../../../shared/demo/long-back.json";
import threeGirths from "../../../shared/demo/three-girths.json";
import twoSides from "../../../shared/demo/two-sides.json";
import { demoFitting } from "../session/demoFitting";
import { type Derived, derivation } from "../session/derived";
import type { PadProgress } from "../progress/padProgress";
import { type JobSteps, jobSteps, plannedStep } from "../steps/plannedSteps";
import type { CurrentStep } from "../steps/currentStep";
import { plannedAbove } from "../above/fittingBuilds";
import { type StepFacts, stepFacts } from "../steps/stepFacts";
import { asPlanned, coverOfStep } from "../patterns/coverOfStep";
import { chosenCloth } from "../steps/chosenCloth";
import { isReadAtLines } from "../steps/isReadAtLines";
import { lineDepths, workFacts } from "../steps/workFacts";
import { nothingDone } from "../steps/workState";
import { assert } from "../../core/result";
import type { FittedCover } from "../../core/cover/fittedCover";
import type { Plan } from "../../core/plan/plan";
import { type Fitting, readLengths, type SettledFitting } from "../../document/fitting";
import type { StepNotes } from "../../document/stepNotesSchema";
import { readFitting } from "../../document/readFitting";

/** The made-up people who can stand in the class view in place of anyone in the room. Nobody was measured for them. */
const madeUpFiles: readonly { readonly title: string }[] = [first, twoSides, longBack, threeGirths];

export const madeUpPeople = madeUpFiles.length;

export interface ClassPerson {
  /** The label of the fitting; empty where it has none. */
  readonly name: string;
  /** Nobody was measured for this fitting. */
  readonly isMadeUp: boolean;
  readonly plan: Plan;
  readonly progress: PadProgress;
  /** Every step of the job, and which is the next one. */
  readonly job: JobSteps;
  /** What the steps over the padding speak of. */
  readonly facts: StepFacts;
  /** The cover for the finished padding; null where nothing of it is known. */
  readonly cover: () => FittedCover | null;
  /** The teacher's notes, by the keys of the steps. */
  readonly notes: StepNotes;
  /** What a class may take home; null for the person's own fitting, which goes nowhere from the class view. */
  readonly takeHome: Fitting | null;
}

/** A made-up person with her plan, worked out apart from any store. */
export function madeUpPerson(place: number): ClassPerson {
  const file = madeUpFiles[place % madeUpPeople] ?? first;
  const fitting = readFitting(file);
  assert(fitting.ok, "a sample fitting can be read");
  const person = classPerson(derivation()(fitting.value), fitting.value, null);
  assert(person !== null, "a sample person has a plan");
  return { ...person, takeHome: fitting.value };
}

/**
 * A fitting as it stands in the class view; null while it has no plan. What is next once work has begun rests on all readings so far and is
 * `current`; before that it rests on the plan alone.
 */
export function classPerson(
  derived: Derived,
  fitting: SettledFitting,
  current: CurrentStep | null,
): ClassPerson | null {
  const { planning, progress } = derived;
  if (planning.kind !== "planned" || progress === null) return null;
  const { plan } = planning;
  const facts = stepFacts(plan, derived.lengths?.body ?? {}, fitting);
  const known = {
    isAtLines: isReadAtLines(plan, fitting),
    hasArm: facts.arm !== null,
    above: plannedAbove(plan, derived, fitting),
  };
  const done = workFacts(fitting.work, lineDepths(plan));
  const step = (done.length === 0 ? null : current?.step) ?? plannedStep(plan, nothingDone, known);
  return {
    name: fitting.title.trim(),
    isMadeUp: isSample(fitting),
    plan,
    progress,
    job: jobSteps({ plan, ...known }, done, step),
    facts,
    cover: () =>
      derived.input === null
        ? null
        : coverOfStep(current ?? asPlanned(plan), derived.input, chosenCloth(fitting).cloth, fitting),
    notes: fitting.stepNotes ?? {},
    takeHome: null,
  };
}

/**
 * Whether the body is that of a sample person, length by length: a label alone says nothing, for it stays when other measurements
 * are typed over.
 */
export function isSample({ body, unit }: Pick<Fitting, "body" | "unit">): boolean {
  const lengths = lengthsText(body, unit);
  return samples().some((sample) => sample === lengths);
}

const lengthsText = (body: Fitting["body"], unit: Fitting["unit"]): string =>
  Object.entries(readLengths(body, unit))
    .map(([name, length]) => `${name} ${(length as number).toFixed(2)}`)
    .toSorted()
    .join();

let sampleTexts: readonly string[] | null = null;

/** Read once: the files do not change. */
function samples(): readonly string[] {
  sampleTexts ??= [
    lengthsText(demoFitting.body, demoFitting.unit),
    ...madeUpFiles.map((file) => {
      const fitting = readFitting(file);
      assert(fitting.ok, "a sample fitting can be read");
      return lengthsText(fitting.value.body, fitting.value.unit);
    }),
  ];
  return sampleTexts;
}
