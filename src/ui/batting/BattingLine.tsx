import { layerDraftKey } from "../../app/commands";
import { useState } from "react";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../field/lengthFieldState";
import { battingGuesses, battingWords } from "../text/batting";
import { battingProblemText } from "../text/problems";
import { useDerived } from "../useDerived";
import { useDispatch, useFitting, useLengths } from "../useStore";
import { formatLength, fineStep } from "../../core/lengthText";
import { entryLength } from "../../document/fitting";

/** Which batting the plan is worked out for, and the way to another one. */
export function BattingLine() {
  const { batting, unit } = useFitting();
  const [isOpen, setOpen] = useState(false);
  const layer = entryLength(batting.layerThickness, unit);
  const layerText = layer.ok ? formatLength(layer.value, thinStep(unit)) : String(batting.layerThickness);
  return (
    <div className="batting">
      <p>
        {battingWords.workedOutFor} <strong>{battingWords.layerShort(batting.name, layerText)}</strong>.{" "}
        <button type="button" className="patch patch-plain" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {battingWords.change}
        </button>
      </p>
      {isOpen ? <BattingFields /> : null}
    </div>
  );
}

/** A layer is thin: millimetres beside centimetres, sixteenths beside inches. */
const thinStep = (unit: ReturnType<typeof useFitting>["unit"]) => (unit === "in" ? fineStep.in : "1 mm");

function BattingFields() {
  const { batting, drafts, unit } = useFitting();
  const { problems } = useDerived();
  const { step } = useLengths();
  const dispatch = useDispatch();
  const state = lengthFieldState({
    entry: batting.layerThickness,
    draft: drafts.other[layerDraftKey],
    unit,
    step: thinStep(unit),
    onDraft: (text) => dispatch({ does: "draft", of: "other", key: layerDraftKey, text }),
    onCommit: (text) => dispatch({ does: "setLayer", text }),
  });
  return (
    <div className="batting-fields">
      <label className="choice">
        <span>{battingWords.name}</span>
        <input
          type="text"
          className="line-input"
          maxLength={100}
          value={batting.name}
          onChange={(event) => dispatch({ does: "nameBatting", name: event.target.value })}
        />
      </label>
      <LengthField label={battingWords.layer} state={state} unit={unit} step={step} />
      <div role="status">
        <ul className="problems">
          {problems.batting.map((problem) => (
            <li key={problem.batting} className="problem problem-contradiction">
              {battingProblemText(problem, step)}
            </li>
          ))}
        </ul>
      </div>
      <p className="quiet small">{battingWords.layerNote}</p>
      <fieldset className="guesses">
        <legend>{battingWords.guesses}</legend>
        {battingGuesses.map(({ name, layer }) => (
          <button
            key={name}
            type="button"
            className="patch"
            aria-pressed={batting.name === name && batting.layerThickness === layer}
            onClick={() => dispatch({ does: "changeBatting", batting: { name, layerThickness: layer } })}
          >
            {name}
          </button>
        ))}
      </fieldset>
    </div>
  );
}
