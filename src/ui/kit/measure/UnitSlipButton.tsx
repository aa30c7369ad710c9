import type { MeasurementProblem } from "../../../core/body/plausibility";
import { measuringWords } from "../../../text/measuring";
import { useDoAndSay } from "../shelf/useDone";

/** Where readings look as if they were typed in the wrong unit: one tap reads them in the other; undo takes it back. */
export function UnitSlipButton({ problem }: { readonly problem: MeasurementProblem }) {
  const doAndSay = useDoAndSay();
  const unit = slippedFrom[problem.code];
  if (unit === undefined) return null;
  const reread = () =>
    doAndSay(
      { does: "reread", slipped: { whose: problem.whose, names: problem.names, unit } },
      measuringWords.reread[unit],
    );
  return (
    <button type="button" className="patch" onClick={reread}>
      {measuringWords.theyAre(unit, problem.names.length)}
    </button>
  );
}

/** The unit such readings were taken in. */
const slippedFrom: { readonly [code in MeasurementProblem["code"]]?: "cm" | "in" } = {
  centimetresAsInches: "cm",
  inchesAsCentimetres: "in",
};
