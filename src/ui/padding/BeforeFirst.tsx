import { useRef, useState } from "react";
import { linesAtForm } from "../../app/linesAtForm";
import type { Plan } from "../../core/plan/plan";
import { Cautions } from "../Cautions";
import { placeAddress } from "../place";
import { linesThing } from "../plan/DraftNote";
import { markLinesSentence, markLinesWords } from "../text/levelLines";
import { linesWords } from "../text/linesAtForm";
import { braSentence, paddingWords } from "../text/padding";
import { phoneQuery, useMediaQuery } from "../useMediaQuery";
import { useFitting, useLengths } from "../useStore";
import { hasCupPads } from "./hasCupPads";

/** The fittings whose lines are marked; until the page is closed it is not said again. */
const seen = new Set<string>();

/** What comes before the first piece: the cautions, the bra the cup pads go into, and the five level lines. */
export function BeforeFirst({ plan }: { readonly plan: Plan }) {
  const { step } = useLengths();
  const isPhone = useMediaQuery(phoneQuery);
  const fitting = useFitting();
  const { id } = fitting;
  const [isOpen, setOpen] = useState(!isPhone && (id === undefined || !seen.has(id)));
  const summary = useRef<HTMLElement>(null);
  const done = () => {
    if (id !== undefined) seen.add(id);
    summary.current?.focus();
    setOpen(false);
  };
  // Whoever marked the lines at their stops has done all of this.
  if (linesAtForm(plan, fitting).lines.every(({ isMarked }) => isMarked)) return <Cautions at="firstPiece" />;
  if (isPhone && plan.basis === "draft") {
    return (
      <div className="before">
        <Cautions at="firstPiece" />
        <a className="before-lines" href={placeAddress("padding", linesThing)}>
          {linesWords.draft.first}
        </a>
      </div>
    );
  }
  return (
    <div className="before">
      <Cautions at="firstPiece" />
      <details className="before-steps" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary className="fold" ref={summary}>
          {paddingWords.beforeTitle}
        </summary>
        <ol className="plain-list numbered">
          <li>{braSentence(hasCupPads(plan))}</li>
          <li>
            {markLinesSentence(plan.levels, step)} <span className="quiet">{markLinesWords.how}</span>{" "}
            <span className="quiet">{markLinesWords.why}</span>
          </li>
        </ol>
        <button type="button" className="patch" onClick={done}>
          {paddingWords.beforeDone}
        </button>
      </details>
    </div>
  );
}
