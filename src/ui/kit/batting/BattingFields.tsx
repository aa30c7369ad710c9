import { layerDraftKeys } from "../../../app/session/commands";
import type { BattingRole } from "../../../core/material";
import type { BattingEntry } from "../../../document/fitting";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../field/lengthFieldState";
import { battingWords } from "../../../text/batting";
import { useDispatch, useDrafts, useFitting, useLengths } from "../useStore";
import { BattingGuesses } from "./BattingGuesses";
import { thinStep } from "./battingText";

/** What a batting is called and what one layer of it is worth, typed or started from a guess. */
export interface BattingFieldsProps {
  readonly which: BattingRole;
  readonly batting: BattingEntry;
}

export function BattingFields({ which, batting }: BattingFieldsProps) {
  const { unit, work } = useFitting();
  const drafts = useDrafts();
  const isRead = work.some(({ did }) => did === "measured" || did === "trial");
  const { step } = useLengths();
  const dispatch = useDispatch();
  const key = layerDraftKeys[which];
  const state = lengthFieldState({
    entry: batting.layerThickness,
    draft: drafts.other[key],
    unit,
    step: thinStep(unit),
    onDraft: (text) => dispatch({ does: "draft", of: "other", key, text }),
    onCommit: (text) => dispatch({ does: "setLayer", role: which, text }),
  });
  const start = (entry: BattingEntry) =>
    dispatch({ does: which === "building" ? "changeBatting" : "changeFinishingBatting", batting: entry });
  return (
    <>
      <label className="choice">
        <span>{battingWords.name}</span>
        <input
          type="text"
          className="line-input"
          maxLength={100}
          value={batting.name}
          onChange={(event) => dispatch({ does: "nameBatting", role: which, name: event.target.value })}
        />
      </label>
      <LengthField label={battingWords.layer(isRead)} state={state} unit={unit} step={step} />
      <BattingGuesses legend={battingWords.guesses} batting={batting} onChoose={start} />
    </>
  );
}
