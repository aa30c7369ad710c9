import { upperFirst } from "../../../text/upperFirst";
import { Fragment } from "react";
import { type TapePart, tapeParts } from "../../../app/progress/padProgress";
import { tapeStep } from "../../../core/lengthText";
import { remaining, remainingText } from "../../../text/remaining";
import { levelWords } from "../../../text/pictures";
import { classWords } from "../../../text/classView";
import { stripSpan, type ClassView } from "../../../app/classView/classView";
import { ClassStrip } from "./ClassStrip";
import { HeadCells } from "../../kit/HeadCells";
import { writtenLength } from "../../../text/writtenLength";

/** The tape's figures at the level, large: wanted, after this piece, left to go; all round, front and back apart. */
export function ClassFigures({ view }: { readonly view: ClassView }) {
  const { level, pinned, unit } = view;
  const { girth, frontArc, backArc } = level.body;
  const wanted = { girth: girth.value, frontArc: frontArc.value, backArc: backArc.value };
  const span = stripSpan(wanted, view.plan.bareForm[level.name]);
  return (
    <section className="class-figures" aria-label={classWords.figures}>
      <table className="class-table">
        <caption className="class-level">
          {upperFirst(levelWords[level.name])} <span className="class-unit">{classWords.inUnit[unit]}</span>
        </caption>
        <thead>
          <tr>
            <td />
            <HeadCells
              words={[
                classWords.wanted,
                view.step.do === "read-cover"
                  ? classWords.overCover
                  : pinned === 0
                    ? classWords.afterBare
                    : classWords.after(pinned),
                classWords.left,
              ]}
            />
          </tr>
        </thead>
        <tbody>
          {tapeParts.map((part) => (
            <Fragment key={part}>
              <PartRow view={view} part={part} />
              {view.isCovered ? null : (
                <tr aria-hidden className="class-strip-row">
                  <td colSpan={4}>
                    <ClassStrip wanted={level.body[part]} now={view.readings[part]} span={span} unit={unit} />
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function PartRow({ view, part }: { readonly view: ClassView; readonly part: TapePart }) {
  const { level, readings, unit, isRead, isCovered, covers } = view;
  const wanted = level.body[part];
  const left = remaining(wanted.value, readings[part]);
  const write = (length: typeof wanted.value): string => writtenLength(length, tapeStep[unit], "bare");
  return (
    <tr
      className={`class-row class-row-${isCovered ? "covered" : left.kind}${isRead[part] ? "" : " class-row-unread"}`}
    >
      <th scope="row">{classWords.parts[part]}</th>
      <td>
        <Figure text={write(wanted.value)} isCovered={covers.person} isGuess={wanted.kind === "estimated"} />
      </td>
      <td>
        <Figure text={write(readings[part])} isCovered={covers.form} />
      </td>
      <td className="class-left">
        {left.kind === "there" && !isCovered ? (
          <span className="class-there">{isRead[part] ? classWords.there : classWords.shouldBeThere}</span>
        ) : (
          <>
            <Figure text={remainingText(wanted.value, readings[part], tapeStep[unit])} isCovered={isCovered} />
            {left.kind === "over" && !isCovered ? <span className="class-over"> {classWords.over}</span> : null}
          </>
        )}
      </td>
    </tr>
  );
}

interface FigureProps {
  readonly text: string;
  readonly isCovered: boolean;
  readonly isGuess?: boolean;
}

/** One length. Covered, it leaves no trace of itself in the page: a patch of one size lies in its place. */
function Figure({ text, isCovered, isGuess = false }: FigureProps) {
  if (isCovered)
    return (
      <span className="class-cover">
        <span className="unseen">{classWords.covered}</span>
      </span>
    );
  const [, whole = text, fraction = "", unit = ""] = /^(.*?\d)(\s\d+\/\d+)?\s?([a-z]*)$/.exec(text) ?? [];
  return (
    <span className={isGuess ? "class-figure class-guess" : "class-figure"}>
      {whole}
      {fraction === "" ? null : <span className="class-fraction">{fraction}</span>}
      {unit === "" ? null : <span className="class-figure-unit"> {unit}</span>}
      {isGuess ? <span className="unseen"> {classWords.guessed}</span> : null}
    </span>
  );
}
