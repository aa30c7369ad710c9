import { useState } from "react";
import { measurementFacts } from "../../core/body/measurementFacts";
import type { MeasurementName } from "../../core/body/vocabulary";
import { improvementText, measurementTexts } from "../text/measurements";
import { measuringWords } from "../text/measuring";

/** How to take one measurement, of a body with help or alone, or of the form; what goes wrong, and what it buys. */
export function MeasureGuide({ whose, name }: { readonly whose: "body" | "form"; readonly name: MeasurementName }) {
  const [isAlone, setAlone] = useState(false);
  const text = measurementTexts[name];
  const how = whose === "form" ? text.onForm : isAlone ? `${text.onBody} ${text.alone}` : text.onBody;
  return (
    <div className="guide">
      <h3 className="guide-title">{measuringWords.how}</h3>
      <p>
        <strong>{text.what}</strong> {how}
      </p>
      {whose === "body" ? (
        <button type="button" className="patch patch-plain" aria-pressed={isAlone} onClick={() => setAlone(!isAlone)}>
          {measuringWords.alone}
        </button>
      ) : null}
      <dl className="guide-notes">
        <dt>{measuringWords.where}</dt>
        <dd>{text.landmark}</dd>
        <dt>{measuringWords.mistake}</dt>
        <dd>{text.mistake}</dd>
        <dt>{measuringWords.buys}</dt>
        <dd>{improvementText[measurementFacts[name].improves]}</dd>
      </dl>
    </div>
  );
}
