import type { StepsTogether } from "../app/classView/sessionPlan";
import type { Step } from "../app/steps/step";
import { stepMinutes } from "../app/steps/stepMinutes";
import { shortCautions } from "./cautions";
import { sessionActs } from "./classView";
import { numberedName } from "./pieces";

/** Words of the session plan on paper. */
export const sessionSheetWords = {
  title: (name: string): string => (name === "" ? "Session plan" : `Session plan for ${name}`),
  blanks: ["Class", "Date", "Start", "End"],
  how: `Minutes are a rule of thumb for one pair of hands; there is no source for them. Measuring the person is not in them. Stop only at a thick line: no pin holds a piece there. ${shortCautions("firstPiece")} ${shortCautions("securing")}`,
  heads: { done: "done", step: "Step, with its minutes", sum: "minutes", soFar: "so far", took: "it took" },
  stop: "Stop here.",
  /** Where each day of the class goes as far as it can. */
  dayEnds: (day: number): string => `End of day ${String(day)}, of 6 h.`,
  days: "Days of the class",
  dayHeads: ["Date", "start", "end", "stopped after", "pins in", "pins out", "Next time"],
  already: "done",
} as const;

/**
 * One row of the plan: a step in its own words, or what is done with one piece behind its name. With minutes, those of each step stand
 * behind it where there are several.
 */
export function sessionRowText(together: StepsTogether, say: (step: Step) => string, hasMinutes: boolean): string {
  const [{ piece }] = together;
  if (piece === null || together.length === 1) return together.map(say).join(" ");
  const acts = together.map((step) => {
    const act = sessionActs[step.do] ?? say(step);
    return hasMinutes ? `${act} ${stepMinutes(step)}` : act;
  });
  return `${numberedName(piece)}: ${acts.join(", ")}`;
}
