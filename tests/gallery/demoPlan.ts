import { demoFitting } from "../../src/app/session/demoFitting";
import { planFitting } from "../../src/core/plan/planFitting";
import { assert } from "../../src/core/result";
import { fittingMeasurements } from "../../src/document/fittingMeasurements";
import { largestFitting } from "../studies/benchLargest";

/** The plan of the fitting that lies on the table when somebody tries the tool, and the plan with the most to it. */
const lengths = fittingMeasurements(demoFitting);
assert(lengths.ok && lengths.value.form.kind === "known", "the demo knows its form");
const { body, form, batting } = lengths.value;

export const demoPlan = planFitting({ body, form: form.measurements, batting });
export const largestPlan = planFitting(largestFitting);
