import type { Measurements } from "../core/body/measurements";
import { checkMeasurements, isContradiction, type MeasurementProblem } from "../core/body/plausibility";
import { type BattingProblem, checkBatting } from "../core/checkBatting";
import { chooseForm, type RankedSize } from "../core/form/chooseForm";
import type { Batting } from "../core/material";
import type { Plan } from "../core/plan/plan";
import { planFitting } from "../core/plan/planFitting";
import type { Fitting } from "../document/fitting";
import { type FittingMeasurements, type FormOfFitting, fittingMeasurements } from "../document/fittingMeasurements";
import type { FittingProblem } from "../document/fittingProblem";
import { type PadProgress, padProgress } from "./padProgress";
import { remembered } from "./remembered";

/**
 * What follows from a fitting, stage by stage: lengths, problems, the form, the plan, and how far the padding has come.
 * Each stage remembers its inputs, so that a letter typed somewhere does not plan the whole body anew.
 */
export interface Derived {
  readonly lengths: FittingMeasurements | null;
  readonly problems: FittingProblems;
  readonly planning: Planning;
  readonly progress: PadProgress | null;
}

export interface FittingProblems {
  /** Entries of a file that are no lengths, or a table nobody knows. */
  readonly entries: readonly FittingProblem[];
  readonly measurements: readonly MeasurementProblem[];
  readonly batting: readonly BattingProblem[];
}

export type Planning =
  | { readonly kind: "waiting" }
  | {
      readonly kind: "planned";
      readonly plan: Plan;
      /** The form the plan is for: typed readings over its table. */
      readonly form: Measurements;
      /** The sizes of the form's table for this body, best first, where the tool chose one. */
      readonly ranking: readonly RankedSize[];
      readonly chosenSize: string | null;
    };

export function derivation(): (fitting: Fitting) => Derived {
  const lengthsOf = remembered(
    ({ unit, body, form, batting, finishingBatting, readingError }: Fitting) => [unit, body, form, batting, finishingBatting, readingError],
    readLengths,
  );
  const problemsOf = remembered((read: ReadLengths) => [read], problemsOfLengths);
  const planOf = remembered(({ read }: Checked) => [read], planOfLengths);
  const progressOf = remembered(({ planning, fitting }: Planned) => [planning, fitting.work, fitting.unit], progressOfPlan);
  const together = remembered((derived: Derived) => Object.values(derived), (derived) => derived);
  return (fitting) => {
    const read = lengthsOf(fitting);
    const problems = problemsOf(read);
    const planning = planOf({ read, problems });
    const progress = progressOf({ planning, fitting });
    return together({ lengths: read.lengths, problems, planning, progress });
  };
}

interface ReadLengths {
  readonly lengths: FittingMeasurements | null;
  readonly entries: readonly FittingProblem[];
}
interface Checked {
  readonly read: ReadLengths;
  readonly problems: FittingProblems;
}
interface Planned {
  readonly planning: Planning;
  readonly fitting: Fitting;
}

function readLengths(fitting: Fitting): ReadLengths {
  const read = fittingMeasurements(fitting);
  return read.ok ? { lengths: read.value, entries: [] } : { lengths: null, entries: read.problem };
}

function problemsOfLengths({ lengths, entries }: ReadLengths): FittingProblems {
  if (lengths === null) return { entries, measurements: [], batting: [] };
  const { body, form, batting, finishingBatting } = lengths;
  const ofForm = form.kind === "known" ? checkMeasurements(form.measurements, "form") : [];
  return {
    entries,
    measurements: [...checkMeasurements(body, "body"), ...ofForm],
    batting: [batting, ...(finishingBatting ? [finishingBatting] : [])].flatMap(checkBatting),
  };
}

function planOfLengths({ read: { lengths }, problems }: Checked): Planning {
  const isBlocked = problems.measurements.some(isContradiction) || problems.batting.length > 0;
  if (lengths === null || isBlocked) return { kind: "waiting" };
  const { body, batting } = lengths;
  const { measurements, ranking, chosenSize } = formFor(lengths.form, body, batting);
  if (measurements === null) return { kind: "waiting" };
  return { kind: "planned", plan: planFitting({ body, form: measurements, batting }), form: measurements, ranking, chosenSize };
}

interface ChosenForm {
  readonly measurements: Measurements | null;
  readonly ranking: readonly RankedSize[];
  readonly chosenSize: string | null;
}

function formFor(form: FormOfFitting, body: Measurements, batting: Batting): ChosenForm {
  if (form.kind === "known") return { measurements: form.measurements, ranking: [], chosenSize: null };
  const ranking = chooseForm(body, form.table, batting);
  const best = ranking[0];
  return { measurements: best?.measurements ?? null, ranking, chosenSize: best?.size ?? null };
}

const progressOfPlan = ({ planning, fitting }: Planned): PadProgress | null =>
  planning.kind === "planned" ? padProgress(planning.plan, fitting) : null;
