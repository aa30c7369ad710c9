import { useMemo, useState } from "react";
import {
  isAmong,
  type LineReadingAsked,
  linesAtForm,
  type LinesStep,
  openParts,
} from "../../../app/progress/linesAtForm";
import type { Plan } from "../../../core/plan/plan";
import type { LineChange } from "../../../core/plan/lineChange";
import { linesWords } from "../../../text/linesAtForm";
import { goTo } from "../../kit/place";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { FinishedStop } from "./FinishedStop";
import { MarkStop } from "./MarkStop";
import { PrepareStop } from "./PrepareStop";
import { ReadLineStop } from "./ReadLineStop";

/** The work on the bare form before the first piece, one stop at a time. */
export interface LinesStopProps {
  readonly plan: Plan;
  /** Looked at again by its own address, and not because it is next. */
  readonly isAsked: boolean;
  readonly onLater: () => void;
}

export function LinesStop({ plan, isAsked, onLater }: LinesStopProps) {
  const fitting = useFitting();
  const dispatch = useDispatch();
  const { lines, next } = useMemo(() => linesAtForm(plan, fitting), [plan, fitting]);
  const [skipped, setSkipped] = useState<readonly LineReadingAsked[]>([]);
  const [chosen, setChosen] = useState<LineReadingAsked | null>(null);
  const [change, setChange] = useState<LineChange | null>(null);
  const step = stepHere(next, openParts(lines), skipped, chosen);
  const news = change === null ? null : <ChangeNews change={change} />;
  /** What was left out is not asked for again, and the work goes on. */
  const passOver = () => {
    if (next.do === "read")
      dispatch({ does: "record", entry: { did: "measured", readings: {}, at: new Date().toISOString() } });
    if (isAsked) goTo("padding");
  };
  const later = (
    <button type="button" className="patch patch-plain" onClick={onLater}>
      {plan.basis === "draft" ? linesWords.draft.offer : linesWords.finished.toPlan}
    </button>
  );
  switch (step.do) {
    case "prepare":
      return <PrepareStop plan={plan} later={later} />;
    case "mark":
      return <MarkStop plan={plan} lines={lines} level={step.level} later={later} />;
    case "read":
      return (
        <ReadLineStop
          plan={plan}
          lines={lines}
          level={step.level}
          part={step.part}
          later={
            <button type="button" className="patch patch-plain" onClick={passOver}>
              {linesWords.read.passOver}
            </button>
          }
          news={news}
          skipped={skipped}
          onSkip={() => {
            setSkipped([...skipped, { level: step.level, part: step.part }]);
            setChosen(null);
          }}
          onChoose={setChosen}
          onKept={(kept) => {
            setChange(kept);
            setChosen(null);
          }}
        />
      );
    case "done":
      return (
        <FinishedStop
          plan={plan}
          news={news}
          onAgain={() => setSkipped([])}
          onGoOn={passOver}
          isAllRead={openParts(lines).length === 0}
        />
      );
  }
}

/** What was picked out comes first; then the next reading that was not left out on this visit. */
function stepHere(
  next: LinesStep,
  open: readonly LineReadingAsked[],
  skipped: readonly LineReadingAsked[],
  chosen: LineReadingAsked | null,
): LinesStep {
  if (next.do === "prepare" || next.do === "mark") return next;
  if (chosen !== null) return { do: "read", ...chosen };
  const asked = next.do === "done" ? undefined : open.find((one) => !isAmong(skipped, one));
  return asked === undefined ? { do: "done" } : { do: "read", ...asked };
}

/** What the last reading changed in the plan. */
function ChangeNews({ change }: { readonly change: LineChange }) {
  const { write } = useLengths();
  const [first, where, ...rest] = linesWords.changed(change, write);
  return (
    <p className="stop-news">
      <strong>{first}</strong> <span className="stop-news-first">{where}</span> <span>{rest.join(" ")}</span>
    </p>
  );
}
