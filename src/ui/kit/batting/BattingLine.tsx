import { useState } from "react";
import type { Plan } from "../../../core/plan/plan";
import { battingWords, twoBattingNames } from "../../../text/batting";
import { useDispatch, useFitting } from "../useStore";
import { BattingBench, BattingGuesses } from "./BattingBench";
import { isBattingSupposed } from "../../../app/session/newFitting";
import { battingText } from "../../../text/battingText";
import { onlyBatting } from "../../../core/padding/piece";

/**
 * Which batting the plan is worked out for, or which two, and the way to others; open at once where a batting stops the
 * plan. Where nobody has said which batting there is, that is asked first.
 */
export function BattingLine({ plan }: { readonly plan: Plan | null }) {
  const fitting = useFitting();
  const { batting, finishingBatting, unit } = fitting;
  const [isOpen, setOpen] = useState(plan === null);
  const dispatch = useDispatch();
  const isSupposed = isBattingSupposed(fitting);
  const only = plan === null ? null : onlyBatting(plan.pieces);
  return (
    <div className={isSupposed ? "batting plan-question" : "batting"}>
      <p>
        {isSupposed ? battingWords.supposedFor : battingWords.workedOutFor}{" "}
        <strong>{battingText(batting, unit)}</strong>
        {finishingBatting === undefined ? null : (
          <>
            , {battingWords.finishedWith} <strong>{battingText(finishingBatting, unit)}</strong>
          </>
        )}
        .
      </p>
      {isSupposed && !isOpen ? (
        <BattingGuesses
          legend={battingWords.ask}
          batting={batting}
          onChoose={(chosen) => dispatch({ does: "changeBatting", batting: chosen })}
        />
      ) : null}
      <button type="button" className="patch patch-plain" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {isSupposed ? battingWords.another : battingWords.change}
      </button>
      {finishingBatting === undefined || only === null ? null : (
        <p className="quiet">{battingWords.allOf(twoBattingNames(batting.name, finishingBatting.name)[only])}</p>
      )}
      {isOpen ? <BattingBench /> : null}
    </div>
  );
}
