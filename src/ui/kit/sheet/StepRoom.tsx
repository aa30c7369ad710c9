import type { Step } from "../../../app/steps/step";
import { tuningWidths } from "../../../app/print/tuningWidths";
import { linesBetween } from "../../../core/cover/coverGround";
import type { MeasurementName } from "../../../core/body/vocabulary";
import type { LengthUnit } from "../../../core/lengthText";
import { leastHalfWidth } from "../../../core/padding/sideLevel";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { onTarget } from "../../../core/tolerances";
import { type Millimetres, mm } from "../../../core/units";
import { measurementInSentence } from "../../../text/measurements";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";
import { writtenLength } from "../../../text/writtenLength";
import { AboveReadingCells, CoverReadingCells } from "./ReadingCells";

/** What is written down beside a step. */
export function StepRoom({ step, plan }: { readonly step: Step; readonly plan: Plan }) {
  const { lengths, input } = useDerived();
  const { write } = useLengths();
  const { pinsIn, pinsOut, trialCells, linesOverleaf } = printingWords;
  if (lengths === null || input === null) return null;
  switch (step.do) {
    case "read-lines":
      return <p>{linesOverleaf(write(onTarget))}</p>;
    case "baste":
      return <Cells words={[pinsIn, pinsOut]} />;
    case "read-cover":
      return <CoverReadingCells step={step} />;
    case "read-between":
      return <Cells words={betweenRoom(plan, write)} />;
    case "build-above":
      return step.build === null ? null : <AboveReadingCells build={step.build} />;
    case "look":
      return (
        <Cells
          words={lookedAt.flatMap((name) => {
            const length = lengths.body[name];
            return length === undefined ? [] : [`${measurementInSentence(name)} ${write(length)},`];
          })}
        />
      );
    case "trial":
      return (
        <>
          <Cells words={trialCells} />
          <p>{printingWords.trial.see}</p>
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

/** All around and front at each height between two level lines. */
const betweenRoom = ({ levels }: Plan, write: (length: Millimetres) => string): readonly string[] =>
  linesBetween(levels).flatMap(({ above, depthBelowNape }) => {
    const level = levels.find(({ name }) => name === above)?.depthBelowNape.value ?? depthBelowNape;
    return [printingWords.below(levelWords[above], write(mm(depthBelowNape - level))), printingWords.readHead.frontArc];
  });

const Cells = ({ words }: { readonly words: readonly string[] }) => (
  <p className="sheet-pins">
    {words.map((word, i) => (
      <span key={`${word}${String(i)}`}>
        {word} <span className="sheet-write" />
      </span>
    ))}
  </p>
);

/** How wide to cut a tuning layer at each line by what is short there, so that the work goes on with nothing but paper. */
export function TuningTable({ plan, piece }: { readonly plan: Plan; readonly piece: PlannedPiece }) {
  const { input } = useDerived();
  const { unit, step, write } = useLengths();
  if (input === null) return null;
  const half = piece.anchor === "centerBack" ? "back" : "front";
  const { tuning, tuningShort, tuningNone, tuningBeyond } = printingWords;
  const shortages = shortagesIn[unit];
  return (
    <div className="sheet-tuning">
      <p>{tuning(half)}</p>
      <table className="sheet-table">
        <thead>
          <tr>
            <th scope="col">{tuningShort}</th>
            {shortages.map((short) => (
              <th key={short} scope="col">
                {write(mm(short))}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {tuningWidths(input, plan, piece, shortages).map(({ level, widths }) => (
            <tr key={level}>
              <th scope="row">{levelWords[level]}</th>
              {widths.map((width, i) => (
                <td key={shortages[i]}>
                  {width === "none"
                    ? tuningNone
                    : width === "beyond"
                      ? tuningBeyond
                      : writtenLength(width, step, "bare")}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** What the signs in these tables mean, once. */
export function TuningLegend() {
  const { write } = useLengths();
  return <p>{printingWords.tuningLegend(write(mm(2 * leastHalfWidth)))}</p>;
}

/** From what a tape just tells to more than one layer of most battings adds to a half (mm). */
const eighth = 25.4 / 8;
const shortagesIn: { readonly [unit in LengthUnit]: readonly number[] } = {
  in: [2, 3, 4, 5, 6, 7].map((eighths) => eighths * eighth),
  cm: [5, 10, 15, 20, 25],
  mm: [5, 8, 11, 14, 17, 20],
};
