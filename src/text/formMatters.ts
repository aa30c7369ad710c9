import type { LengthStep } from "../core/lengthText";
import type { FormMatter } from "../core/plan/formMatters";
import { levelWords, lineWords } from "./pictures";
import { writtenLength } from "./writtenLength";

/** What stands in the way on the form itself, and what a person can do about it. */
export function formMatterText({ level, what, amount }: FormMatter, step: LengthStep): string {
  const [name, line, by] = [levelWords[level], lineWords[level], writtenLength(amount, step)];
  switch (what) {
    case "belowForm":
      return `The person’s ${line} lies ${by} below the form’s lower edge, where nothing can be pinned. Fix a tube of card or felt under the edge and measure it as part of the form, leave the ${name} out, or use a longer form.`;
    case "aboveReadings":
      return `The person’s ${line} lies ${by} above everything that was measured of the form, so the form is only estimated there. Mark the line on the form and measure it there.`;
    case "belowReadings":
      return `The person’s ${line} lies ${by} below everything that was measured of the form, so the form is only estimated there. Mark the line on the form and measure it there.`;
  }
}
