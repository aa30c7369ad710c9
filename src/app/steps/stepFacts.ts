import { armReading } from "../../core/arm/armReadings";
import { type ArmWish, type SoftArm, softArm } from "../../core/arm/softArm";
import type { Measurements } from "../../core/body/measurements";
import { linesBetween } from "../../core/cover/coverGround";
import type { BetweenLine } from "../../core/cover/betweenLines";
import type { Cloth } from "../../core/cover/cloth";
import { frontLossMatters } from "../../core/cover/coverMatters";
import type { Plan } from "../../core/plan/plan";
import { type WaistTape, waistTape } from "../../core/plan/waistTape";
import { type Millimetres, mm } from "../../core/units";
import type { CoverCloth, Fitting, Making, WorkEntry } from "../../document/fitting";
import { armWish } from "../arm/fittingArm";
import { isCutFromPanels } from "./makingSteps";
import { chosenCloth } from "./chosenCloth";
import { type FormFacts, formFactsOfPlan } from "./formFacts";

/** What the steps speak of besides the plan: the form, the cloth, lengths to cut, the arm, and when to measure again. */
export interface StepFacts {
  readonly form: FormFacts;
  readonly cloth: CoverCloth;
  /** Whether the padding was changed under a cover that was closed, so that it is closed once more. */
  readonly isReopened: boolean;
  /** Whether elastic is tied at the underbust line, so that the cover follows the hollow there. */
  readonly isTied: boolean;
  /** Where the padding is best read between the lines before a cover is cut. */
  readonly between: readonly BetweenLine[];
  readonly waistTape: WaistTape | null;
  /** Whether the waist tape was sewn through the cover into the padding, which has to come undone before the cover is opened. */
  readonly isSewnIn: boolean;
  /** What a tape along each line that is offered has to be cut to, level lines first (mm). */
  readonly tapes: readonly { readonly line: "bust" | "fullHip"; readonly length: Millimetres }[];
  /** Whether the person's nape or waist was read above the floor, by which a hem is measured. */
  readonly isFloorKnown: boolean;
  readonly arm: SoftArm | null;
  /** The day to measure again, as an ISO date; null while nothing is dated. */
  readonly measureAgain: string | null;
}

export function stepFacts(
  plan: Plan,
  body: Measurements,
  fitting: Pick<Fitting, "work" | "unit" | "form" | "supplies" | "arm">,
): StepFacts {
  const { kind, cloth } = chosenCloth(fitting);
  const frontAt = (name: "bust" | "underbust") => plan.levels.find((level) => level.name === name)?.body.frontArc.value;
  const loss = (frontAt("bust") ?? 0) - (frontAt("underbust") ?? 0);
  return {
    form: formFactsOfPlan(plan, fitting.form),
    cloth: kind,
    isReopened: isReopened(fitting.work),
    isTied: frontLossMatters(cloth.kind, loss).some((matter) => matter.kind === "tieUnderbust"),
    between: isCutFromPanels(kind) ? linesBetween(plan.levels) : [],
    waistTape: waistTape(plan, body),
    isSewnIn: fitting.work.findLast((entry) => isMade(entry, "waistTape"))?.sewnIn === true,
    tapes: (["bust", "fullHip"] as const).flatMap((line) => {
      const girth = plan.levels.find(({ name }) => name === line)?.body.girth.value;
      return girth === undefined ? [] : [{ line, length: mm(girth + tapeOverlap) }];
    }),
    isFloorKnown: body.napeHeight !== undefined || body.waistToFloorFront !== undefined,
    arm: armOf(body, cloth, armWish(fitting)),
    measureAgain: measureAgain(fitting),
  };
}

/** A closed cover was opened by a piece that was pinned or taken off since, unless another was begun. */
function isReopened(work: Fitting["work"]): boolean {
  const sewn = work.findLastIndex((entry) => isMade(entry, "coverFitted"));
  const closed = work.findLastIndex((entry) => isMade(entry, "coverClosed"));
  return (
    closed >= 0 && closed >= sewn && work.some(({ did }, at) => at > closed && (did === "pinned" || did === "unpinned"))
  );
}

type Made = Extract<WorkEntry, { readonly did: "made" }>;
const isMade = (entry: WorkEntry, what: Making): entry is Made =>
  entry.did === "made" && entry.what === what && entry.passedOver !== true;

/** A sewn line's ends lie one over the other by this much (mm). Common practice, no source. */
const tapeOverlap = 25;

/** The arm that its measurements give; none where one is missing or they contradict one another. */
function armOf(body: Measurements, cloth: Cloth, wish: ArmWish): SoftArm | null {
  const read = armReading(body);
  return read.kind === "whole" ? softArm(read.readings, cloth, wish) : null;
}

/** A body is measured again after this many months, or when a garment disagrees. Common practice, no source. */
const monthsBetween = 3;

function measureAgain({ work }: Pick<Fitting, "work">): string | null {
  const last = work.findLast(({ did, at }) => did === "measured" && at !== undefined)?.at;
  const day = last === undefined ? Number.NaN : Date.parse(last);
  if (Number.isNaN(day)) return null;
  const then = new Date(day);
  const month = then.getUTCMonth() + monthsBetween;
  const lastDay = new Date(Date.UTC(then.getUTCFullYear(), month + 1, 0)).getUTCDate();
  const date = Math.min(then.getUTCDate(), lastDay);
  return new Date(Date.UTC(then.getUTCFullYear(), month, date)).toISOString().slice(0, 10);
}
