import type { StepsTogether } from "../../app/classView/sessionPlan";
import type { Step } from "../../app/steps/step";
import { stepMinutes } from "../../app/steps/stepMinutes";
import { shortCautions } from "./cautions";
import { sessionActs } from "./classView";
import { numberedName } from "./pieces";

export const sessionSheetWords = {
  title: (name: string): string => (name === "" ? "Kursplan" : `Kursplan für ${name}`),
  blanks: ["Kurs", "Datum", "Beginn", "Ende"],
  how: `Die Minuten sind eine Faustregel für ein Paar Hände; eine Quelle dafür gibt es nicht. Das Messen der Person ist nicht dabei. Nur an einer dicken Linie aufhören: Dort hält keine Nadel mehr ein Polster. ${shortCautions("firstPiece")} ${shortCautions("securing")}`,
  heads: { done: "erledigt", step: "Schritt, mit seinen Minuten", sum: "Minuten", soFar: "bisher", took: "gebraucht" },
  stop: "Hier aufhören.",
  dayEnds: (day: number): string => `Ende von Tag ${String(day)}, zu 6 h.`,
  days: "Kurstage",
  dayHeads: ["Datum", "Beginn", "Ende", "aufgehört nach", "Nadeln hinein", "Nadeln heraus", "Nächstes Mal"],
  already: "erledigt",
} as const;

export function sessionRowText(together: StepsTogether, say: (step: Step) => string, hasMinutes: boolean): string {
  const [{ piece }] = together;
  if (piece === null || together.length === 1) return together.map(say).join(" ");
  const acts = together.map((step) => {
    const act = sessionActs[step.do] ?? say(step);
    return hasMinutes ? `${act} ${stepMinutes(step)}` : act;
  });
  return `${numberedName(piece)}: ${acts.join(", ")}`;
}
