import { type BattingRole, battingRoles } from "../../../core/material";
import { learningWords } from "../../../text/learning";
import { useFitting } from "../../kit/useStore";
import "../../kit/learning/learning.css";
import { ReadingCare } from "./ReadingCare";
import { ReadingsBehind } from "./ReadingsBehind";
import { WorthPart } from "./WorthPart";

/** What the tape has shown: how much a layer adds with its plot, how closely is measured, and the readings behind it. */
export function LearningPart() {
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
    </section>
  );
}
