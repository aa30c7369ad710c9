import { addedByPadding } from "../../core/above/addedByPadding";
import { type BuildAbove, isToDo } from "../../core/above/buildAbove";
import { buildsAbove } from "../../core/above/buildsAbove";
import { belowNape } from "../../core/body/linePlace";
import type { Measurements } from "../../core/body/measurements";
import type { Plan } from "../../core/plan/plan";
import type { Millimetres } from "../../core/units";
import type { SettledFitting } from "../../document/fitting";
import type { FittingMeasurements } from "../../document/fittingMeasurements";
import type { PlanInput } from "../../core/plan/basis";
import { layersMade } from "./madeAbove";

/** What was measured, and what the plan is made from; null where it cannot be read. */
interface KnownLengths {
  readonly lengths: FittingMeasurements | null;
  readonly input: PlanInput | null;
}

/**
 * What is built above the bust for a fitting as it stands: on the bare form and what the whole plan adds up there, with a layer as
 * thick as the readings have taught, or as thick as it is taken to be before them. What is built already has the layers that hands
 * have put there.
 */
export function fittingBuilds(
  { plan, layer }: { readonly plan: Plan; readonly layer: Millimetres },
  { lengths, input }: KnownLengths,
  { form, work }: Pick<SettledFitting, "form" | "work">,
): readonly BuildAbove[] {
  if (lengths === null || input === null) return [];
  const bare = form.readAtBodyLines === true ? atBodyLines(lengths) : input.form;
  const added = addedByPadding(plan.levels, plan.pieces);
  return buildsAbove(input.body, bare, { layerThickness: layer }, added, layersMade({ work }));
}

/** Everything typed of a form that was read on the person's lines: its bust line and waistline lie where the person's do. */
function atBodyLines({ body, form }: FittingMeasurements): Measurements {
  const places = (["bust", "waist"] as const).flatMap((level) => {
    const place = belowNape(body, level);
    return place === undefined ? [] : [[`${level}BelowNape`, place] as const];
  });
  return { ...form.measured, ...Object.fromEntries(places) };
}

/** The same before any reading, for a plan that nobody has begun: only what hands have to do. */
export const plannedAbove = (
  plan: Plan,
  known: KnownLengths,
  fitting: Pick<SettledFitting, "form" | "work">,
): readonly BuildAbove[] =>
  known.input === null
    ? []
    : fittingBuilds({ plan, layer: known.input.batting.layerThickness }, known, fitting).filter(isToDo);
