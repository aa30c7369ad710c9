import gains from "../../../shared/measuring-gains.json";
import { belowNape } from "../../core/body/linePlace";
import type { Measurements } from "../../core/body/measurements";
import { levelNames, type MeasurementName } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import type { Fitting } from "../../document/fitting";
import { linesAtForm } from "./linesAtForm";
import { isBare } from "./isBare";

/**
 * What can still be asked of body and form, and how much nearer each answer brings nine in ten measurements of the padded
 * form to the body's. Both the order and the figures come from a study of plans on true shapes.
 */
export const questionIds = [
  "bodyFronts",
  "bodyGirths",
  "bodyHeights",
  "bodyLengths",
  "bodyApexes",
  "bodyBreadths",
  "formGirths",
  "formHeights",
  "formLines",
  "formBreadths",
  "formDepths",
] as const;
export type QuestionId = (typeof questionIds)[number];

export interface Question {
  readonly id: QuestionId;
  /** How much nearer (mm). */
  readonly gain: Millimetres;
  /** The first measurement that answers it and is not there yet; null for what is done at the form, on the lines. */
  readonly first: { readonly whose: "body" | "form"; readonly name: MeasurementName } | null;
}

/** Every question of the study, the one that gains most first. */
export const questionOrder: readonly { readonly id: QuestionId; readonly gain: Millimetres }[] = gains.order.flatMap(
  ({ question, gainMm }: { readonly question: string; readonly gainMm: number }) => {
    const id = questionIds.find((known) => known === question);
    return id === undefined ? [] : [{ id, gain: mm(gainMm) }];
  },
);

/** What asks a person or a form by one measurement after another; what is asked on the lines is not among them. */
const names: { readonly [id in QuestionId]: readonly MeasurementName[] } = {
  bodyFronts: ["waistFrontArc", "fullHipFrontArc", "highHipFrontArc", "bustFrontArc", "underbustFrontArc"],
  bodyGirths: ["underbustGirth", "highHipGirth"],
  bodyHeights: ["napeHeight", ...levelNames.map((level) => `${level}Height` as const)],
  bodyLengths: ["napeToWaist", "shoulderToApex", "waistToHighHip", "waistToFullHip"],
  bodyApexes: ["apexToApex"],
  bodyBreadths: levelNames.map((level) => `${level}Breadth` as const),
  formGirths: ["underbustGirth", "highHipGirth", ...levelNames.map((level) => `${level}FrontArc` as const)],
  formHeights: ["napeHeight", ...levelNames.map((level) => `${level}Height` as const)],
  formLines: [],
  formBreadths: [],
  formDepths: [],
};

export interface Known {
  readonly body: Measurements;
  /** What was read of the form itself. */
  readonly form: Measurements;
}

/** The questions that are still open, the one that gains most first. */
export function openQuestions(
  plan: Plan,
  known: Known,
  fitting: Pick<Fitting, "work" | "unit" | "form">,
  order = questionOrder,
): readonly Question[] {
  const { lines } = linesAtForm(plan, fitting);
  const isMeasuredOn = (part: "breadth" | "depth") => lines.every(({ read }) => read[part] !== undefined);
  const areLinesRead = plan.basis === "lines";
  const bare = isBare(fitting.work);
  const isOpen: { readonly [id in QuestionId]: boolean } = {
    bodyFronts: levelNames.some((level) => !has(known.body, `${level}FrontArc`, `${level}BackArc`)),
    bodyGirths: !names.bodyGirths.every((name) => known.body[name] !== undefined),
    bodyHeights: !isPlaced(known.body),
    // With the lines placed vertically a tape over the surface tells nothing more.
    bodyLengths: !isPlaced(known.body) && !names.bodyLengths.every((name) => known.body[name] !== undefined),
    bodyApexes: known.body.apexToApex === undefined,
    bodyBreadths: levelNames.some((level) => known.body[`${level}Breadth`] === undefined),
    formGirths: !areLinesRead && names.formGirths.some((name) => known.form[name] === undefined),
    formHeights: !areLinesRead && !isPlaced(known.form),
    formLines: bare && !areLinesRead,
    formBreadths: bare && areLinesRead && fitting.form.readAtBodyLines !== true && !isMeasuredOn("breadth"),
    formDepths: bare && areLinesRead && fitting.form.readAtBodyLines !== true && !isMeasuredOn("depth"),
  };
  return order.filter(({ id }) => isOpen[id]).map(({ id, gain }) => ({ id, gain, first: firstOf(id, known) }));
}

const has = (measurements: Measurements, ...either: readonly MeasurementName[]): boolean =>
  either.some((name) => measurements[name] !== undefined);

/** Whether every line was placed vertically. */
const isPlaced = (measurements: Measurements): boolean =>
  levelNames.every((level) => belowNape(measurements, level) !== undefined);

function firstOf(id: QuestionId, known: Known): Question["first"] {
  const whose = id.startsWith("body") ? "body" : "form";
  const name = names[id].find((one) => known[whose][one] === undefined);
  return name === undefined ? null : { whose, name };
}
