import { requiredMeasurementNames } from "../../core/body/vocabulary";
import type { Fitting } from "../../document/fitting";

/** Where whoever comes back to a fitting goes on: with the measurements, the plan, the padding, or what goes over it. */
export function whereWorkStands({
  body,
  work,
}: Pick<Fitting, "body" | "work">): "body" | "plan" | "padding" | "finishing" {
  if (work.some(({ did }) => did === "coverChosen" || did === "made")) return "finishing";
  if (work.length > 0) return "padding";
  return requiredMeasurementNames.every((name) => body[name] !== undefined) ? "plan" : "body";
}
