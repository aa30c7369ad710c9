import { requiredMeasurementNames } from "../../core/body/vocabulary";
import type { Fitting } from "../../document/fitting";
import type { Planning } from "./derived";

/**
 * How well the form is known: its own girths were read, the person said which size it is, the tool took the size that suits
 * best and only supposes it, or nothing is known of it yet.
 */
export type FormStanding =
  | { readonly kind: "measured" }
  | { readonly kind: "chosen"; readonly size: string }
  | { readonly kind: "supposed"; readonly size: string }
  | { readonly kind: "unknown" };

export function formStanding({ form }: Pick<Fitting, "form">, planning: Planning): FormStanding {
  if (requiredMeasurementNames.every((name) => form[name] !== undefined)) return { kind: "measured" };
  if (form.size !== undefined) return { kind: "chosen", size: String(form.size) };
  return planning.kind === "planned" && planning.size !== null
    ? { kind: "supposed", size: planning.size }
    : { kind: "unknown" };
}
