import type { ReactNode } from "react";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { parseLength } from "../../../core/lengthText";
import { LengthFigure } from "../LengthFigure";
import { measurementTexts } from "../../../text/measurements";
import { measuringWords } from "../../../text/measuring";
import { useDerived } from "../useDerived";
import { useLengths } from "../useStore";
import { isContradicted } from "./MeasureProblems";
import { useMeasurement } from "./useMeasurement";

/** One line of the chart: what is measured, and what is known of it: read, guessed, or nothing yet. */
interface MeasureRowProps {
  readonly whose: "body" | "form";
  readonly name: MeasurementName;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
  readonly children?: ReactNode;
}

export function MeasureRow({ whose, name, isChosen, onChoose, children }: MeasureRowProps) {
  const { problems } = useDerived();
  const needsLook = isContradicted(problems.measurements, whose, name);
  return (
    <li className={isChosen ? "chart-row chart-row-chosen" : "chart-row"}>
      <button
        type="button"
        className="chart-button"
        aria-expanded={isChosen}
        data-measurement={name}
        onClick={onChoose}
      >
        <span className="chart-name">{measurementTexts[name].label}</span>
        <RowValue whose={whose} name={name} />
        {needsLook ? <span className="chart-look">{measuringWords.look}</span> : null}
      </button>
      {children}
    </li>
  );
}

function RowValue({ whose, name }: { readonly whose: "body" | "form"; readonly name: MeasurementName }) {
  const { unit, step } = useLengths();
  const known = useMeasurement(whose, name);
  if (known.kind === "draft") {
    if (parseLength(known.text, unit).ok) return <span className="chart-value">{known.text}</span>;
    return (
      <span className="chart-value">
        <span className="chart-draft">{known.text}</span> <span className="chart-kind">{measuringWords.draft}</span>
      </span>
    );
  }
  if (known.kind === "nothing") return <span className="chart-value chart-kind">{measuringWords.empty}</span>;
  if (known.kind === "measured") {
    return (
      <span className="chart-value">
        <LengthFigure length={known.value} step={step} />
      </span>
    );
  }
  return (
    <span className="chart-value">
      <LengthFigure length={known.value} step={step} estimated />{" "}
      <span className="chart-kind">{known.kind === "table" ? measuringWords.fromTable : measuringWords.guessed}</span>
    </span>
  );
}
