import type { BattingRole } from "../../core/material";
import { learningWords, trialWords } from "../text/learning";
import { useFitting } from "../useStore";
import { useAnswer } from "./useAnswer";
import { WorthText } from "./WorthText";

/** What the trials so far say a layer is worth. */
export function TrialAnswer({ role }: { readonly role: BattingRole }) {
  const { work } = useFitting();
  const { answer, isWorking } = useAnswer("learning");
  if (answer === null && !isWorking) return null;
  if (!work.some((entry) => entry.did === "trial")) return null;
  return (
    <section className="trial-answer" aria-label={trialWords.answer}>
      <p>
        <strong>{trialWords.off}</strong>
      </p>
      {answer === null ? (
        <p>{learningWords.working}</p>
      ) : (
        <WorthText worth={answer.replan.belief[role]} role={role} standing="read" />
      )}
    </section>
  );
}
