import type { Plan, Shortfall } from "../../core/plan/plan";
import { tapeAgreement } from "../../core/tolerances";

/**
 * Why the tape reads too much somewhere: the form itself has that much there, or the padding that lies on it. Only of the form one can
 * choose a smaller one.
 */
export function shortfallCause({ levels }: Pick<Plan, "levels">, shortfall: Shortfall): "form" | "padding" {
  if (shortfall.what === "length" || shortfall.sense !== "tooLarge") return "form";
  const level = levels.find(({ name }) => name === shortfall.level);
  if (level === undefined) return "form";
  const over = level.form[shortfall.what].value - level.body[shortfall.what].value;
  return over >= shortfall.amount / 2 - tapeAgreement && over > 0 ? "form" : "padding";
}
