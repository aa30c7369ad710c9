import { levelNames } from "../../../core/body/vocabulary";
import { tapeStep } from "../../../core/lengthText";
import { onTarget } from "../../../core/tolerances";
import { mm } from "../../../core/units";
import { levelToMeasure } from "../../../app/progress/levelToMeasure";
import { LengthFigure } from "../../kit/LengthFigure";
import { levelWords } from "../../../text/pictures";
import { shownLength } from "../../../text/shownLength";
import { wallWords } from "../../../text/wall";
import { wallSaid } from "./wallSaid";
import type { WallView } from "./wallView";

/** The dark foot, the same in every state: the reading to expect in its corner, and what comes next. */
export function WallFoot({ view }: { readonly view: WallView }) {
  const { next, unit, isCovered } = view;
  const expected = expectedReading(view);
  const step = tapeStep[unit];
  return (
    <div className="wall-foot">
      {expected === null || isCovered ? (
        <p>{expected === null ? "" : wallWords.figuresCovered}</p>
      ) : (
        <>
          <p className="wall-foot-words">
            {wallWords.shouldRead(levelWords[expected.level], view.step.piece === null)}
          </p>
          <p className="wall-expected">
            <LengthFigure length={mm(expected.value)} step={step} />
          </p>
          <p>{wallWords.tolerance(shownLength(onTarget, step))}</p>
        </>
      )}
      <p className="wall-next">
        {next === null ? null : (
          <>
            {wallWords.comesNext} <strong>{wallSaid(view, next).headline}</strong>
          </>
        )}
      </p>
    </div>
  );
}

/** After a piece the level it changes most; of a reading the level that is looked at. */
function expectedReading({ plan, step, level }: WallView) {
  if (step.piece !== null) {
    const name = levelToMeasure(plan, step.piece);
    return { level: name, value: step.piece.readingsAfter[name].girth };
  }
  const asked = levelNames.find((name) => name === level.name && step.expected[`${name}Girth`] !== undefined);
  const value = asked === undefined ? undefined : step.expected[`${asked}Girth`];
  return asked === undefined || value === undefined ? null : { level: asked, value };
}
