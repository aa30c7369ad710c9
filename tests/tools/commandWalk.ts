import { derivation } from "../../src/app/session/derived";
import { nextOfFitting } from "../../src/command/nextOfText";
import { type Fitting, type WorkEntry, writeFitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import type { StepFile } from "../../src/document/stepFile";

export type JobStep = StepFile["step"];

export interface CommandWalk {
  readonly steps: readonly JobStep[];
  /** The fitting as it stood at each of the steps. */
  readonly at: readonly Fitting[];
  readonly last: Fitting;
}

/** What is done otherwise than the record of a step says. */
export interface WalkWishes {
  /** By how much more the tape reads than is expected (mm). */
  readonly over?: (step: JobStep, name: string) => number;
  /** Fields of the entry that are noted instead. */
  readonly noted?: (step: JobStep) => object;
  /** Where the walk stops; else where nothing is left. */
  readonly until?: JobStep["do"];
}

export function fittingOf(value: object): Fitting {
  const read = readFitting(value);
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return read.value;
}

/** A job walked by the command alone, in which the tape reads what is expected unless it is wished otherwise. */
export function commandWalk(
  start: Fitting,
  { over = () => 0, noted = () => ({}), until }: WalkWishes = {},
): CommandWalk {
  const derive = derivation();
  const [steps, at]: [JobStep[], Fitting[]] = [[], []];
  for (let fitting = start; ; ) {
    const next = nextOfFitting(fitting, derive);
    if (!next.ok) throw new Error(next.problem.join(" "));
    const { step } = next.value;
    steps.push(step);
    at.push(fitting);
    if (step.record === undefined || step.do === until) return { steps, at, last: fitting };
    if (steps.length > 200) throw new Error(`no end of steps: ${steps.slice(-9).map((one) => one.do)}`);
    const entry = { ...entryOf(step, over), ...noted(step) };
    // Written and read back, as a program outside keeps it.
    fitting = fittingOf(
      JSON.parse(JSON.stringify(writeFitting({ ...fitting, work: [...fitting.work, entry as WorkEntry] }))) as object,
    );
  }
}

/** The record of a step with what the tape reads, in centimeters; what stays open is left out. */
function entryOf(step: JobStep, over: NonNullable<WalkWishes["over"]>): object {
  const entry = JSON.parse(JSON.stringify(step.record)) as { readings?: Record<string, number | null> };
  for (const name of Object.keys(entry.readings ?? {})) {
    const expected = step.expectedMm[name];
    if (entry.readings === undefined) continue;
    if (expected === undefined) delete entry.readings[name];
    else entry.readings[name] = (expected + over(step, name)) / 10;
  }
  return Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== null));
}
