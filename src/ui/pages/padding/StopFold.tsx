import type { PadProgress } from "../../../app/progress/padProgress";
import type { Plan } from "../../../core/plan/plan";
import { LearningPart } from "./LearningPart";
import { DraftNote } from "../../kit/plan/DraftNote";
import { stopWords } from "../../../text/stops";
import { ReadingsOverview } from "./ReadingsOverview";
import { ScreenTools } from "./ScreenTools";

/** Below the stop, and closed: every reading, what the tape has shown, and the screen kept awake. */
export function StopFold({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  return (
    <div className="padding-more">
      <ScreenTools />
      <details>
        <summary className="fold">{stopWords.more}</summary>
        <DraftNote plan={plan} />
        <ReadingsOverview plan={plan} progress={progress} />
        <LearningPart />
      </details>
    </div>
  );
}
