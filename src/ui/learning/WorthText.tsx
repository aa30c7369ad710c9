import type { BelievedWorth } from "../../core/calibration/believed";
import type { BattingRole } from "../../core/material";
import { stackedWorth } from "../../core/plan/replanFitting";
import { mm } from "../../core/units";
import { learningWords, thinText, worthSentence } from "../text/learning";
import { useDerived } from "../useDerived";
import { useUnit } from "../useStore";

/** What a layer is believed to be worth, how sure that is, and what was put down before, in words. */
export interface WorthTextProps {
  readonly worth: BelievedWorth;
  readonly role: BattingRole;
  /** Whether a tape was read over it, or the packet alone says so. */
  readonly standing: "read" | "guessed";
}

export function WorthText({ worth, role, standing }: WorthTextProps) {
  const unit = useUnit();
  const { lengths } = useDerived();
  const started = role === "finishing" ? lengths?.finishingBatting : lengths?.batting;
  return (
    <>
      <p className="learning-worth">{worthSentence(worth, unit, standing)}</p>
      <p>
        {learningWords.inStack(thinText(mm(stackedWorth(worth)), unit))}{" "}
        {started ? learningWords.started(thinText(started.layerThickness, unit)) : null}
      </p>
    </>
  );
}
