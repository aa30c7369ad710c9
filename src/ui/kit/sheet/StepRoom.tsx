import type { Step } from "../../../app/steps/step";
import { onTarget } from "../../../core/tolerances";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { measurementTexts } from "../../../text/measurements";
import { printingWords } from "../../../text/printing";
import { thinText } from "../../../text/thinText";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";

/** What is written down beside a step. */
export function StepRoom({ step }: { readonly step: Step }) {
  const { lengths, input } = useDerived();
  const { unit, write } = useLengths();
  const { pinsIn, pinsOut, trialCells, trial, linesOverleaf, lookAt } = printingWords;
  if (lengths === null || input === null) return null;
  switch (step.do) {
    case "read-lines":
      return <p>{linesOverleaf(write(onTarget))}</p>;
    case "baste":
      return <Cells words={[pinsIn, pinsOut]} />;
    case "look":
      return (
        <Cells
          before={lookAt}
          words={lookedAt.flatMap((name) => {
            const length = lengths.body[name];
            return length === undefined ? [] : [`${measurementTexts[name].label.toLowerCase()} ${write(length)},`];
          })}
        />
      );
    case "trial":
      return (
        <>
          <Cells words={trialCells} />
          <p>{trial(thinText(input.batting.layerThickness, unit))}</p>
        </>
      );
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

const Cells = ({ words, before }: { readonly words: readonly string[]; readonly before?: string }) => (
  <p className="sheet-pins">
    {before === undefined ? null : <span>{before}</span>}
    {words.map((word, i) => (
      <span key={`${word}${String(i)}`}>
        {word} <span className="sheet-write" />
      </span>
    ))}
  </p>
);
