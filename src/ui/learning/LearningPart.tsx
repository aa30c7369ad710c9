import type { PadProgress } from "../../app/padProgress";
import { type BattingRole, battingRoles } from "../../core/material";
import type { Plan } from "../../core/plan/plan";
import { homeTape } from "../../core/tolerances";
import { learningWords, placeOver, placesOver } from "../text/learning";
import { useFitting } from "../useStore";
import { CorrectionRow } from "./CorrectionRow";
import { correctionsHere } from "./correctionsHere";
import { MadeOfText } from "./NextMadeOf";
import { ReadingCare } from "./ReadingCare";
import { ReadingsBehind } from "./ReadingsBehind";
import { useAnswer } from "./useAnswer";
import { WorthPart } from "./WorthPart";

/** What the tape has taught: the worth of a layer with its plot, what else is over, and what the pieces left can be made of. */
export function LearningPart({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { finishingBatting } = useFitting();
  const roles: readonly BattingRole[] = finishingBatting === undefined ? ["building"] : battingRoles;
  return (
    <section className="learning stitched">
      <h2>{learningWords.title}</h2>
      {roles.map((role) => (
        <WorthPart key={role} role={role} isNamed={roles.length > 1} />
      ))}
      <ReadingCare />
      <ReadingsBehind />
      <OverPart plan={plan} progress={progress} />
      <UsesPart progress={progress} />
    </section>
  );
}

function OverPart({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { answer } = useAnswer("learning");
  if (answer === null) return null;
  const { others, believed } = correctionsHere(answer.replan.corrections, progress);
  if (others.length === 0 && believed.length === 0) return null;
  return (
    <div className="stack">
      <h3>{learningWords.correctionsTitle}</h3>
      {others.some(({ over }) => over <= homeTape) ? <p>{learningWords.small}</p> : null}
      {others.map((correction) => (
        <CorrectionRow
          key={`${correction.level}.${correction.half}`}
          plan={plan}
          progress={progress}
          correction={correction}
        />
      ))}
      {believed.length === 0 ? null : (
        <p>{learningWords.readFirst(placesOver(believed.map(({ level, half }) => placeOver(level, half))))}</p>
      )}
    </div>
  );
}

/** Beside the next piece, which is told above: all those that are left, or would be left by a new plan. */
function UsesPart({ progress }: { readonly progress: PadProgress }) {
  const { answer } = useAnswer("madeOf");
  const isLeft = (id: string): boolean => progress.pieces.some(({ piece, pinned }) => piece.id === id && !pinned);
  const left = answer?.filter(({ piece }) => isLeft(piece.id)) ?? [];
  if (left.length === 0) return null;
  return (
    <div className="stack">
      <h3>{learningWords.usesTitle}</h3>
      <ul className="plain-list">
        {left.map((made) => (
          <li key={made.piece.id}>
            <MadeOfText made={made} />
          </li>
        ))}
      </ul>
    </div>
  );
}
