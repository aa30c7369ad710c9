import { useState } from "react";
import type { Plan } from "../../core/plan/plan";
import { battingWords, twoBattingNames } from "../text/batting";
import { useFitting } from "../useStore";
import { BattingBench } from "./BattingBench";
import { battingText } from "./battingText";
import { onlyBatting } from "./battingUse";

/** Which batting the plan is worked out for, or which two, and the way to others; open at once where a batting stops the plan. */
export function BattingLine({ plan }: { readonly plan: Plan | null }) {
  const { batting, finishingBatting, unit } = useFitting();
  const [isOpen, setOpen] = useState(plan === null);
  const only = plan === null ? null : onlyBatting(plan);
  return (
    <div className="batting">
      <p>
        {battingWords.workedOutFor} <strong>{battingText(batting, unit)}</strong>
        {finishingBatting === undefined ? null : (
          <>
            , {battingWords.finishedWith} <strong>{battingText(finishingBatting, unit)}</strong>
          </>
        )}
        .{" "}
        <button type="button" className="patch patch-plain" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {battingWords.change}
        </button>
      </p>
      {finishingBatting === undefined || only === null ? null : (
        <p className="quiet">{battingWords.allOf(twoBattingNames(batting.name, finishingBatting.name)[only])}</p>
      )}
      {isOpen ? <BattingBench /> : null}
    </div>
  );
}
