import { battingWords } from "../../../text/batting";
import { battingProblemText } from "../../../text/problems";
import { unbroken } from "../../../text/shownLength";
import { useDerived } from "../useDerived";
import { useDoAndSay } from "../shelf/useDone";
import { useFitting, useLengths } from "../useStore";
import { BattingFields } from "./BattingFields";
import { secondBatting } from "./secondBatting";

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
