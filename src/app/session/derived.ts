import type { Measurements } from "../../core/body/measurements";
import { checkMeasurements, isContradiction, type MeasurementProblem } from "../../core/body/plausibility";
import { type BattingProblem, checkBatting } from "../../core/checkBatting";
import { formAsRead } from "../../core/form/formLines";
import { chooseForm, type RankedSize } from "../../core/plan/chooseForm";
import type { PlanInput } from "../../core/plan/basis";
import type { Plan } from "../../core/plan/plan";
import { planFitting } from "../../core/plan/planFitting";
import type { SettledFitting } from "../../document/fitting";
import { type FittingMeasurements, fittingMeasurements } from "../../document/fittingMeasurements";
import type { FittingProblem } from "../../document/fittingProblem";
import { bareEntries, type MeasuredEntry } from "../../document/fittingLines";
import { formTables } from "../../document/formTables";
import { type Learning, learning, planInForce } from "../progress/learning";
import { type PadProgress, padProgress } from "../progress/padProgress";
import { onceAsked, remembered } from "./remembered";
import { type ImpossibleReading, possibleWork, replay } from "../progress/replay";
import { type CurrentStep, currentStep } from "../steps/currentStep";
import { type ThicknessHistory, thicknessHistories } from "../progress/thicknessHistory";

/**
 * What follows from a fitting, stage by stage: lengths, problems, the form, the plan, and how far the padding has come.
 * Each stage remembers its inputs, so that a letter typed somewhere does not plan the whole body anew.
 */
export interface Derived {
  readonly lengths: FittingMeasurements | null;
  readonly problems: FittingProblems;
  /** The sizes of the form's table for this body, best first; empty without a table or a body. */
  readonly ranking: readonly RankedSize[];
  readonly planning: Planning;
  /** What the plan is made from; null while there is none. */
  readonly input: PlanInput | null;
  /**
   * Readings over the padding that this form with these pieces on cannot give: kept in the log and left out of
   * everything else.
   */
  readonly impossible: readonly ImpossibleReading[];
  readonly progress: PadProgress | null;
  /**
   * What the tape has taught; null while nothing has been read over the form. It plans the rest of the padding, which takes a
   * tablet some time, so it is worked out when somebody asks.
   */
  readonly learning: () => Learning | null;
  /** How the estimate of what a layer adds came about, worked out when somebody asks. */
  readonly thicknessHistory: () => ThicknessHistory | null;
  /** The one next step of the padding. */
  readonly step: () => CurrentStep | null;
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
      /** The size of the table the plan is for, chosen by the person or by the tool. */
      readonly size: string | null;
    };

export function derivation(): (fitting: SettledFitting) => Derived {
  const bareOf = sameEntries();
  const lengthsOf = remembered(
    ({ unit, body, form, batting, finishingBatting, readingError, work }: SettledFitting) =>
      [unit, body, form, batting, finishingBatting, readingError, bareOf({ work })] as const,
    readLengths,
  );
  const problemsOf = remembered((read: ReadLengths) => [read], problemsOfLengths);
  const rankingOf = remembered(
    ({ read, fitting }: Ranked) => [read.lengths?.body, read.lengths?.form, read.lengths?.batting, fitting.form.table],
    rankSizes,
  );
  const firstPlanOf = remembered(({ read, ranking }: Checked) => [read, ranking], planOfLengths);
  const inputOf = remembered(
    ({ planning, read }: Pick<Underway, "planning" | "read">) => [formOf(planning), read],
    planInput,
  );
  const planOf = remembered(
    ({ planning, input, read, fitting }: Underway) => [planning, input, read, lastReplan(fitting)],
    planUnderway,
  );
  const histories = thicknessHistories();
  const askedOf = remembered(
    stepRestsOn,
    (asked): Pick<Derived, "learning" | "thicknessHistory" | "step"> => ({
      step: onceAsked(() => stepOfWork(asked)),
      learning: onceAsked(() => learningOfWork(asked)),
      thicknessHistory: onceAsked(() => thicknessHistoryOf(asked, histories)),
    }),
  );
  const impossibleOf = remembered(
    ({ input, read, fitting }: Underway) => [input, read, fitting.work, fitting.unit],
    impossibleReadings,
  );
  const progressOf = remembered(
    ({ planning, impossible, fitting }: Planned) => [planning, impossible, fitting.work, fitting.unit],
    progressOfPlan,
  );
  const together = remembered(
    (derived: Derived) => Object.values(derived),
    (derived) => derived,
  );
  return (fitting) => {
    const read = lengthsOf(fitting);
    const problems = problemsOf(read);
    const ranking = rankingOf({ read, problems, fitting });
    const first = firstPlanOf({ read, problems, ranking, size: fitting.form.size });
    const input = inputOf({ planning: first, read });
    const planning = planOf({ planning: first, input, read, fitting });
    const impossible = impossibleOf({ planning, input, read, fitting });
    const progress = progressOf({ planning, impossible, fitting });
    const asked = askedOf({ planning, input, read, fitting });
    return together({ lengths: read.lengths, problems, ranking, planning, input, impossible, progress, ...asked });
  };
}

/** The readings of the bare form as one list that stays the same list while they are the same: other work makes no new plan. */
function sameEntries(): (fitting: Pick<SettledFitting, "work">) => readonly MeasuredEntry[] {
  let last: readonly MeasuredEntry[] = [];
  return ({ work }) => {
    const entries = bareEntries(work);
    if (entries.length !== last.length || entries.some((entry, i) => entry !== last[i])) last = entries;
    return last;
  };
}

interface ReadLengths {
  readonly lengths: FittingMeasurements | null;
  readonly entries: readonly FittingProblem[];
}
interface Ranked {
  readonly read: ReadLengths;
  readonly problems: FittingProblems;
  readonly fitting: SettledFitting;
}
interface Checked {
  readonly read: ReadLengths;
  readonly problems: FittingProblems;
  readonly ranking: readonly RankedSize[];
  readonly size: string | number | undefined;
}
interface Underway {
  readonly planning: Planning;
  /** What the plan is made from; null while there is none. */
  readonly input: PlanInput | null;
  readonly read: ReadLengths;
  readonly fitting: SettledFitting;
}
interface Planned {
  readonly planning: Planning;
  readonly impossible: readonly ImpossibleReading[];
  readonly fitting: SettledFitting;
}

function readLengths(fitting: SettledFitting): ReadLengths {
  const read = fittingMeasurements(fitting);
  return read.ok ? { lengths: read.value, entries: [] } : { lengths: null, entries: read.problem };
}

function problemsOfLengths({ lengths, entries }: ReadLengths): FittingProblems {
  if (lengths === null) return { entries, measurements: [], batting: [] };
  const { body, form, batting, finishingBatting } = lengths;
  // Of a form whose size the tool chooses, what was measured of it is held against itself; its chart gives the rest.
  const ofForm =
    form.kind === "known"
      ? checkMeasurements(formAsRead(form.measurements, form.lines, null), "form")
      : checkMeasurements(form.measured, "form").filter(({ code }) => code !== "missing");
  return {
    entries,
    measurements: [...checkMeasurements(body, "body"), ...ofForm],
    batting: [batting, ...(finishingBatting ? [finishingBatting] : [])].flatMap(checkBatting),
  };
}

function rankSizes({ read: { lengths }, problems, fitting }: Ranked): readonly RankedSize[] {
  const table = formTables.find(({ id }) => id === fitting.form.table);
  const isBodySound = !problems.measurements.some((problem) => problem.whose === "body" && isContradiction(problem));
  if (lengths === null || table === undefined || !isBodySound || problems.batting.length > 0) return [];
  return chooseForm(lengths.body, lengths.form.kind === "choose" ? lengths.form.table : table, lengths.batting);
}

function planOfLengths({ read: { lengths }, problems, ranking, size }: Checked): Planning {
  const isBlocked = problems.measurements.some(isContradiction) || problems.batting.length > 0;
  if (lengths === null || isBlocked) return { kind: "waiting" };
  const { body, batting, finishingBatting, form } = lengths;
  const chosen =
    form.kind === "known"
      ? { measurements: form.measurements, size: size === undefined ? null : String(size) }
      : ranking[0];
  if (chosen === undefined) return { kind: "waiting" };
  return {
    kind: "planned",
    plan: planFitting({
      body,
      form: chosen.measurements,
      lines: form.lines,
      batting,
      ...(finishingBatting === null ? {} : { finishingBatting }),
    }),
    form: chosen.measurements,
    size: chosen.size,
  };
}

/** Everything that the next step and its facts are made from. */
const stepRestsOn = ({ planning, input, read, fitting: { work, unit, arm, supplies } }: Underway) =>
  [planning, input, read, work, unit, arm, supplies?.cover?.cloth] as const;

/** The last time the rest was planned anew: as long as it is the same, so is the plan in force. */
const lastReplan = ({ work }: SettledFitting) => work.findLast((entry) => entry.did === "replanned");

function planUnderway({ planning, input, read: { lengths }, fitting }: Underway): Planning {
  if (planning.kind === "waiting" || input === null || lengths === null) return planning;
  return { ...planning, plan: planInForce(planning.plan, input, fitting, lengths.readingError) };
}

function learningOfWork({ planning, input, read: { lengths }, fitting }: Underway): Learning | null {
  if (planning.kind === "waiting" || input === null || lengths === null) return null;
  return learning(planning.plan, input, fitting, lengths.readingError);
}

function stepOfWork({ planning, input, read: { lengths }, fitting }: Underway): CurrentStep | null {
  if (planning.kind === "waiting" || input === null || lengths === null) return null;
  return currentStep(planning.plan, input, fitting, lengths);
}

function thicknessHistoryOf(
  { input, read: { lengths }, fitting }: Underway,
  histories: ReturnType<typeof thicknessHistories>,
): ThicknessHistory | null {
  return input === null || lengths === null ? null : histories(input, fitting, lengths.readingError);
}

/** The form a plan is for; the same one however often the rest is planned anew. */
const formOf = (planning: Planning): Measurements | null => (planning.kind === "planned" ? planning.form : null);

function planInput({ planning, read: { lengths } }: Pick<Underway, "planning" | "read">): PlanInput | null {
  const form = formOf(planning);
  if (form === null || lengths === null) return null;
  const {
    body,
    batting,
    finishingBatting,
    form: { lines },
  } = lengths;
  return { body, form, lines, batting, ...(finishingBatting === null ? {} : { finishingBatting }) };
}

const impossibleReadings = ({ input, read: { lengths }, fitting }: Underway): readonly ImpossibleReading[] =>
  input === null || lengths === null ? [] : replay(input, fitting, lengths.readingError).impossible;

const progressOfPlan = ({ planning, impossible, fitting }: Planned): PadProgress | null =>
  planning.kind === "planned"
    ? padProgress(planning.plan, { work: possibleWork(fitting.work, impossible), unit: fitting.unit })
    : null;
