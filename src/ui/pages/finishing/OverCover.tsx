import { useMemo, useState } from "react";
import { coverProgress } from "../../../app/progress/coverProgress";
import type { PadProgress, TapePart } from "../../../app/progress/padProgress";
import { possibleWork } from "../../../app/progress/replay";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { DoneBoard } from "./DoneBoard";
import { LevelReadings } from "./LevelReadings";
import { ReadingPad } from "./ReadingPad";
import { finishingWords } from "../../../text/finishing";
import { useDerived } from "../../kit/useDerived";
import { useFitting } from "../../kit/useStore";

/** The tape once more, over the cover: what was read before it went on is only expected of it. */
export function OverCover({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { work, unit } = useFitting();
  const { impossible } = useDerived();
  const covered = useMemo(
    () => coverProgress(plan, progress, { work: possibleWork(work, impossible), unit }),
    [plan, progress, work, impossible, unit],
  );
  const [level, setLevel] = useState<LevelName>("bust");
  const [part, setPart] = useState<TapePart>("girth");
  return (
    <>
      <section className="stitched stack">
        <h2>{finishingWords.againTitle}</h2>
        <p>{finishingWords.again}</p>
        <div className="again wide">
          <LevelReadings plan={plan} progress={covered} level={level} onLevel={setLevel} onPart={setPart} />
          <ReadingPad plan={plan} level={level} part={part} now={covered.now[level]} onPart={setPart} />
        </div>
      </section>
      <DoneBoard plan={plan} progress={covered} />
    </>
  );
}
