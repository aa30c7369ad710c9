import type { BuildAbove } from "../../core/above/buildAbove";
import { usualPressing } from "../../core/calibration/coverPressing";
import { mapLevels } from "../../core/body/vocabulary";
import { mm } from "../../core/units";
import type { TapePart } from "../progress/padProgress";
import { coversLines, isStructure } from "../../core/padding/piece";
import type { Plan } from "../../core/plan/plan";
import type { CoverCloth } from "../../document/fittingLimits";
import { expectedReadings } from "./expectedReadings";
import { nextStep } from "./nextStep";
import type { Outlook } from "./stepOutlook";
import type { Step } from "./step";
import { makingOfStep } from "./makingSteps";
import { usualCover } from "./stepRecord";
import { tunePlaces } from "./workFacts";
import { nothingDone, type WorkFact, workAfter, type WorkState } from "./workState";

/** A step with the state of the work before it. */
export interface PlannedStep {
  readonly step: Step;
  readonly before: WorkState;
}

/** What a walk through a plan starts from. */
export interface PlannedFrom {
  readonly plan: Plan;
  readonly state: WorkState;
  /** Whether the bare form was read on the person's lines, so that they are not asked for. */
  readonly isAtLines: boolean;
  /** Whether everything was read that an arm is made from. */
  readonly hasArm: boolean;
  /** What is built or marked above the bust line. */
  readonly above: readonly BuildAbove[];
  /** What the cover is made of where the state does not tell; usually cut from panels of knit. */
  readonly cloth?: CoverCloth;
}

/**
 * Every step that is left of a job in which the tape reads what the plan expects, up to `done`: what is optional is passed over
 * once it was offered. Paper and the class view show these; nothing is planned anew for them.
 */
export function plannedSteps({ plan, state, cloth = usualCover, ...known }: PlannedFrom): readonly PlannedStep[] {
  const steps: PlannedStep[] = [];
  let now = state;
  for (let i = 0; i < mostSteps; i++) {
    const step = plannedStep(plan, now, known);
    steps.push({ step, before: now });
    const fact = factOf(step, cloth);
    if (fact === null) break;
    now = workAfter(now, fact);
  }
  return steps;
}

/** A whole job: what was done, where it stands now and what is left. `now` is the place of the step at hand. */
export interface JobSteps {
  readonly steps: readonly PlannedStep[];
  readonly now: number;
}

/** The steps of a job under way: those that the log tells of, the one next step, and from there what the plan expects. */
export function jobSteps(
  { plan, ...known }: Omit<PlannedFrom, "state" | "cloth">,
  facts: readonly WorkFact[],
  current: Step,
): JobSteps {
  const past: PlannedStep[] = [];
  let state = nothingDone;
  for (const fact of facts) {
    const step = plannedStep(plan, state, known);
    if (!isSame(past.at(-1)?.step, step)) past.push({ step, before: state });
    state = workAfter(state, fact);
  }
  while (isSame(past.at(-1)?.step, current)) past.pop();
  const fact = factOf(current, usualCover);
  const left = fact === null ? [] : plannedSteps({ plan, state: workAfter(state, fact), ...known });
  return { steps: [...past, { step: current, before: state }, ...left], now: past.length };
}

const isSame = (one: Step | undefined, other: Step): boolean =>
  one?.do === other.do &&
  one.piece?.id === other.piece?.id &&
  one.pieceIds.join() === other.pieceIds.join() &&
  one.build?.id === other.build?.id;

/** Beyond every job: a plan has at most some dozens of pieces, each with four steps. */
const mostSteps = 1000;

/** The step that follows in a state of the work if the tape has read what the plan expects so far. */
export const plannedStep = (plan: Plan, state: WorkState, known: Known): Step =>
  nextStep(state, expectedOutlook(plan, state, known));

/** What no plan tells of the form and the person. */
type Known = Pick<PlannedFrom, "isAtLines" | "hasArm" | "above">;

function expectedOutlook(plan: Plan, { pinned }: WorkState, known: Known): Outlook {
  const left = plan.pieces.filter(({ id }) => !pinned.has(id));
  const on = plan.pieces.filter(({ id }) => pinned.has(id));
  return {
    structure: left.filter(isStructure),
    tuning: left.filter((piece) => !isStructure(piece)),
    coversLines: new Set(on.filter(coversLines).map(({ id }) => id)),
    expectedNow: expectedReadings(on.at(-1)?.readingsAfter ?? plan.bareForm),
    isTrialNews: false,
    isLayerMissing: false,
    tunes: [],
    doubtful: [],
    twice: [],
    expectedOverCover: expectedReadings(underCover(on.at(-1)?.readingsAfter ?? plan.bareForm, plan.bareForm)),
    coverOff: [],
    turnsAbove: [],
    ...known,
  };
}

/** A cover that nobody has read over presses the batting in by a usual share of what it adds. */
const underCover = (padded: Plan["bareForm"], bare: Plan["bareForm"]): Plan["bareForm"] =>
  mapLevels((level) => {
    const pressed = (part: TapePart) =>
      mm(padded[level][part] - usualPressing.share * (padded[level][part] - bare[level][part]));
    return { girth: pressed("girth"), frontArc: pressed("frontArc"), backArc: pressed("backArc") };
  });

/** What the log holds once a step is done; null once nothing is left. */
function factOf(step: Step, cloth: CoverCloth): WorkFact | null {
  const pieceId = step.piece?.id ?? "";
  switch (step.do) {
    case "done":
      return null;
    case "prepare-form":
      return { did: "prepared" };
    case "mark-lines":
      return { did: "marked" };
    case "trial":
      return { did: "trial" };
    case "cut":
      return { did: "cut", pieceId };
    case "stack":
      return { did: "stacked", pieceId };
    case "pin":
      return { did: "pinned", pieceId, tunes: step.piece === null ? null : tunePlaces(step.piece) };
    case "carry-lines":
      return { did: "linesCarried" };
    case "plan-anew":
      return { did: "replanned" };
    case "tune":
      return tuned(step);
    case "baste":
      return { did: "basted", pieceIds: step.pieceIds };
    case "look":
      return { did: "looked" };
    case "build-above":
    case "correct-above":
    case "mark-armhole":
      return { did: "builtAbove", build: step.build?.id ?? "" };
    case "read-between":
      return { did: "measuredBetween" };
    case "choose-cover":
      return { did: "coverChosen", cloth };
    case "read-cover":
      return { did: "measuredOverCover", names: step.names };
    case "read-lines":
    case "read":
    case "read-all":
    case "check":
      return { did: "measured", names: step.names };
    default:
      return { did: "made", what: makingOfStep[step.do] };
  }
}

function tuned({ act }: Step): WorkFact {
  if (act === null) return { did: "replanned" };
  return act.kind === "takeOut"
    ? { did: "unpinned", pieceId: act.piece.id }
    : { did: "pinned", pieceId: act.piece.id, tunes: tunePlaces(act.piece) };
}
