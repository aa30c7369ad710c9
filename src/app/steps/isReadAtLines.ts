import type { Plan } from "../../core/plan/plan";
import type { Fitting } from "../../document/fitting";

/** Whether a plan stands on readings of the bare form at the person's lines, so that they are not asked for again. */
export const isReadAtLines = ({ basis }: Pick<Plan, "basis">, { form }: Pick<Fitting, "form">): boolean =>
  basis === "lines" || form.readAtBodyLines === true;
