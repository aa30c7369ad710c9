import type { BelievedWorth } from "../../../core/calibration/believed";
import type { BattingRole } from "../../../core/material";
import { stackedWorth } from "../../../core/plan/replanFitting";
import { mm } from "../../../core/units";
import { layerSentence, learningWords } from "../../../text/learning";
import { thinText } from "../../../text/thinText";
import { useDerived } from "../../kit/useDerived";
import { useUnit } from "../../kit/useStore";

/** How much a layer adds, how sure that is, and the starting figure, in words. */
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
      <p className="learning-worth">{layerSentence(worth, unit, standing)}</p>
      <p>
        {learningWords.inStack(thinText(mm(stackedWorth(worth)), unit))}{" "}
        {started ? learningWords.started(thinText(started.layerThickness, unit)) : null}
      </p>
    </>
  );
}
