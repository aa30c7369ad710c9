import { useState } from "react";
import type { PadProgress } from "../../app/padProgress";
import type { LevelName } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import { LevelReadings } from "../padding/LevelReadings";
import { levelToMeasure } from "../padding/levelToMeasure";
import { NextAction } from "../padding/NextAction";
import { PaddingPicture } from "../padding/PaddingPicture";
import { ReadingsOverview } from "../padding/ReadingsOverview";
import { ScreenTools } from "../padding/ScreenTools";
import { PlanWaiting } from "../plan/PlanWaiting";
import { paddingWords } from "../text/padding";
import { useDerived } from "../useStore";

/** Padding: pin the next piece, lay the tape, type what it reads, see what is left to go. */
export function PaddingPlace() {
  const { planning, progress } = useDerived();
  if (planning.kind === "waiting" || progress === null) return <PlanWaiting />;
  if (planning.plan.pieces.length === 0) return <p className="lead">{paddingWords.nothing}</p>;
  return <PaddingBench plan={planning.plan} progress={progress} />;
}

function PaddingBench({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const [looked, setLooked] = useState<number | null>(null);
  const current = plan.pieces.find(({ order }) => order === looked) ?? progress.next;
  const suggested: LevelName = current ? levelToMeasure(plan, current) : "waist";
  const [chosen, setChosen] = useState<{ readonly level: LevelName; readonly during: number | null } | null>(null);
  const during = current?.order ?? null;
  const level = chosen && chosen.during === during ? chosen.level : suggested;

  return (
    <div className="padding">
      <h1 className="unseen">{paddingWords.title}</h1>
      <NextAction plan={plan} progress={progress} current={current} level={level} onLook={setLooked} />
      <PaddingPicture plan={plan} progress={progress} current={current} level={level} />
      <LevelReadings plan={plan} progress={progress} level={level} onLevel={(name) => setChosen({ level: name, during })} />
      <ReadingsOverview plan={plan} progress={progress} />
      <ScreenTools />
    </div>
  );
}
