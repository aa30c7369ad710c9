import { layerDraftKeys } from "../../../app/session/commands";
import type { BattingRole } from "../../../core/material";
import type { BattingEntry } from "../../../document/fitting";
import { battingGuesses, battingWords } from "../../../text/batting";
import { secondBatting, thinStep } from "../../../text/battingText";
import { battingProblemText } from "../../../text/problems";
import { unbroken } from "../../../text/shownLength";
import { LengthField } from "../field/LengthField";
import { lengthFieldState } from "../../../app/session/lengthFieldState";
import { useDoAndSay } from "../shelf/useDone";
import { useDerived } from "../useDerived";
import { useDispatch, useDrafts, useFitting, useLengths, useUnit } from "../useStore";

/** Where the battings are changed: the one the padding is built with, and a second one to finish with where there is one. */
export function BattingBench() {
  const { batting, finishingBatting } = useFitting();
  return (
    <div className="batting-bench">
      <fieldset className="batting-fields">
        <legend>{battingWords.first}</legend>
        <BattingFields which="building" batting={batting} />
        <p className="quiet small">{battingWords.layerNote}</p>
      </fieldset>
      {finishingBatting === undefined ? null : (
        <fieldset className="batting-fields">
          <legend>{battingWords.finishing}</legend>
          <BattingFields which="finishing" batting={finishingBatting} />
          <p className="quiet small">{battingWords.finishingNote}</p>
        </fieldset>
      )}
      <BattingProblems />
      <SecondButton />
    </div>
  );
}

function BattingProblems() {
  const { problems } = useDerived();
  const { step } = useLengths();
  return (
    <div role="status">
      <ul className="problems">
        {problems.batting.map((problem, i) => (
          // Two battings may share a name; their order tells them apart.
          <li key={`${problem.batting}${String(i)}`} className="problem problem-contradiction">
            {unbroken(battingProblemText(problem, step))}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** One button that stays where it is, so that the focus does too when the second batting comes or goes. */
function SecondButton() {
  const { batting, finishingBatting, unit } = useFitting();
  const doAndSay = useDoAndSay();
  const isThere = finishingBatting !== undefined;
  const change = () =>
    doAndSay(
      { does: "changeFinishingBatting", batting: isThere ? null : secondBatting(batting, unit) },
      isThere ? battingWords.removed : battingWords.added,
    );
  return (
    <button type="button" className="patch" onClick={change}>
      {isThere ? battingWords.finishingRemove : battingWords.finishingAdd}
    </button>
  );
}

/** What a batting is called and what one layer of it adds, typed or started from a guess. */
interface BattingFieldsProps {
  readonly which: BattingRole;
  readonly batting: BattingEntry;
}

function BattingFields({ which, batting }: BattingFieldsProps) {
  const { unit, work } = useFitting();
  const drafts = useDrafts();
  const isRead = work.some(({ did }) => did === "measured" || did === "trial");
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
      <LengthField label={battingWords.layer(isRead)} state={state} />
      <BattingGuesses legend={battingWords.guesses} batting={batting} onChoose={start} />
    </>
  );
}

/** The starting figures a person may pick, one tap each. */
interface BattingGuessesProps {
  readonly legend: string;
  readonly batting: BattingEntry;
  readonly onChoose: (batting: BattingEntry) => void;
}

export function BattingGuesses({ legend, batting, onChoose }: BattingGuessesProps) {
  const unit = useUnit();
  return (
    <fieldset className="choices">
      <legend>{legend}</legend>
      {battingGuesses.map(({ name, layer }) => (
        <button
          key={name}
          type="button"
          className="patch"
          aria-pressed={batting.name === name && Object.values(layer).some((text) => text === batting.layerThickness)}
          onClick={() => onChoose({ name, layerThickness: layer[unit] })}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}
