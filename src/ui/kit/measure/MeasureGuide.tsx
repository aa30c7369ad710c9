import { memo } from "react";
import { measurementFacts } from "../../../core/body/measurementFacts";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { improvementText, measurementTexts } from "../../../text/measurements";
import { measuringWords } from "../../../text/measuring";
import { Drawing } from "../../drawing/Drawing";
import { measureScene } from "../../drawing/measuring/measureScene";

/** How to take one measurement, on a person or on the form: the picture, what to do, and what goes wrong most often. */
interface MeasureGuideProps {
  readonly whose: "body" | "form";
  readonly name: MeasurementName;
}

export function MeasureGuide({ whose, name }: MeasureGuideProps) {
  const text = measurementTexts[name];
  return (
    <div className="guide">
      <figure className="guide-figure">
        <MeasureFigure name={name} whose={whose} />
      </figure>
      <div className="guide-words">
        <p>
          <strong>{text.what}</strong> {whose === "form" ? text.onForm : text.onBody}
        </p>
        <p>
          <strong>{measuringWords.mistake}</strong> {text.mistake}
        </p>
      </div>
    </div>
  );
}

/** The rest: taking it alone, finding the place, and what it buys. */
export function MeasureMore({ whose, name }: MeasureGuideProps) {
  const text = measurementTexts[name];
  return (
    <dl className="guide-notes">
      {whose === "body" ? (
        <>
          <dt>{measuringWords.alone}</dt>
          <dd>{text.alone}</dd>
        </>
      ) : null}
      <dt>{measuringWords.where}</dt>
      <dd>{text.landmark}</dd>
      <dt>{measuringWords.buys}</dt>
      <dd>{improvementText[measurementFacts[name].improves]}</dd>
    </dl>
  );
}

/** How the tape runs for one measurement, on a person or on the form. */
interface MeasureFigureProps {
  readonly name: MeasurementName;
  readonly whose: "body" | "form";
}

export const MeasureFigure = memo(function MeasureFigure({ name, whose }: MeasureFigureProps) {
  return <Drawing scene={measureScene(name, whose)} />;
});
