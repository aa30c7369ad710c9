import { addedByPadding } from "../../core/above/addedByPadding";
import type { BuildAbove } from "../../core/above/buildAbove";
import { buildsAbove } from "../../core/above/buildsAbove";
import { belowNape } from "../../core/body/linePlace";
import type { Measurements } from "../../core/body/measurements";
import type { SettledFitting } from "../../document/fitting";
import type { FittingMeasurements } from "../../document/fittingMeasurements";
import type { Derived } from "../session/derived";
import type { CurrentStep } from "../steps/currentStep";

/**
 * What is built above the bust for a fitting as it stands: on the bare form and what the whole plan adds up there, with a layer as
 * thick as the readings have taught.
 */
export function fittingBuilds(
  { plan, replan }: Pick<CurrentStep, "plan" | "replan">,
  { lengths, input }: Pick<Derived, "lengths" | "input">,
  { form }: Pick<SettledFitting, "form">,
): readonly BuildAbove[] {
  if (lengths === null || input === null) return [];
  const bare = form.readAtBodyLines === true ? atBodyLines(lengths) : input.form;
  const layerThickness = replan.calibration.building.layer;
  return buildsAbove(input.body, bare, { layerThickness }, addedByPadding(plan.levels, plan.pieces));
}

/** Everything typed of a form that was read on the person's lines: its bust line and waistline lie where the person's do. */
function atBodyLines({ body, form }: FittingMeasurements): Measurements {
  const places = (["bust", "waist"] as const).flatMap((level) => {
    const place = belowNape(body, level);
    return place === undefined ? [] : [[`${level}BelowNape`, place] as const];
  });
  return { ...form.measured, ...Object.fromEntries(places) };
}
