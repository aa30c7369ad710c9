import type { Step } from "../../../app/steps/step";
import { linesBetween } from "../../../core/cover/coverGround";
import type { MeasurementName } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { onTarget } from "../../../core/tolerances";
import { type Millimetres, mm } from "../../../core/units";
import { measurementInSentence } from "../../../text/measurements";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";
import { WriteCells } from "./WriteCells";
import { TrialRoom } from "./TrialRoom";
import { AboveReadingCells, CoverReadingCells } from "./ReadingCells";

/** What is written down beside a step. */
export function StepRoom({ step, plan }: { readonly step: Step; readonly plan: Plan }) {
  const { lengths, input } = useDerived();
  const { write } = useLengths();
  const { pinsIn, pinsOut, linesOverleaf } = printingWords;
  if (lengths === null || input === null) return null;
  switch (step.do) {
    case "read-lines":
      return <p>{linesOverleaf(write(onTarget))}</p>;
    case "baste":
      return <WriteCells cells={[[pinsIn], [pinsOut]]} />;
    case "read-cover":
      return <CoverReadingCells step={step} />;
    case "read-between":
      return <WriteCells cells={betweenRoom(plan, write).map((word) => [word] as const)} />;
    case "build-above":
      return step.build === null ? null : <AboveReadingCells build={step.build} />;
    case "look":
      return (
        <WriteCells
          cells={lookedAt.flatMap((name) => {
            const length = lengths.body[name];
            return length === undefined ? [] : [[`${measurementInSentence(name)} ${write(length)},`] as const];
          })}
        />
      );
    case "trial":
      return <TrialRoom plan={plan} />;
    default:
      return null;
  }
}

/** What is measured over the padding beside the silhouette, as far as it is known of the person. */
const lookedAt = [
  "shoulderToApex",
  "apexToApex",
  "napeToWaist",
  "frontWaistLength",
] as const satisfies readonly MeasurementName[];

/** All around and front at each height between two level lines. */
const betweenRoom = ({ levels }: Plan, write: (length: Millimetres) => string): readonly string[] =>
  linesBetween(levels).flatMap(({ above, depthBelowNape }) => {
    const level = levels.find(({ name }) => name === above)?.depthBelowNape.value ?? depthBelowNape;
    return [printingWords.below(levelWords[above], write(mm(depthBelowNape - level))), printingWords.readHead.frontArc];
  });
