import type { Step } from "../../../app/steps/step";
import { tapeStep } from "../../../core/lengthText";
import { stepWords } from "../../../text/steps";
import type { WallView } from "./wallView";

/** What the wall says of a step: its act as the headline, and the rest of the very same sentence. */
export interface WallSaid {
  readonly headline: string;
  readonly rest: string;
}

export function wallSaid(
  { plan, unit, isCovered }: Pick<WallView, "plan" | "unit" | "isCovered">,
  step: Step,
): WallSaid {
  const lengths = tapeStep[unit];
  const [headline, rest] = stepWords(step, { lengths, levels: plan.levels, pieces: plan.pieces });
  return { headline: hidden(headline, isCovered), rest: hidden(rest, isCovered) };
}

/** Covered, no length is told: what has none stays. */
function hidden(text: string, isCovered: boolean): string {
  if (!isCovered) return text;
  return text
    .split(/(?<=\.)\s+/)
    .filter((sentence) => !/\d[\s\u00a0]*(?:in|cm|mm)\b|\d\/\d/.test(sentence))
    .join(" ");
}
