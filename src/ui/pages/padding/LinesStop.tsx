import { type ReactNode, useMemo, useState } from "react";
import { type LineReadingAsked, linesAtForm, linesStepHere, openParts } from "../../../app/progress/linesAtForm";
import type { LineChange } from "../../../core/plan/lineChange";
import type { Plan } from "../../../core/plan/plan";
import { linesWords } from "../../../text/linesAtForm";
import { goTo, pageAddress } from "../../kit/page";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { MarkStop } from "./MarkStop";
import { PrepareStop } from "./PrepareStop";
import { ReadLineStop } from "./ReadLineStop";
import { StopFrame } from "../../kit/stop/StopFrame";

/** The work on the bare form before the first piece, one stop at a time. */
interface LinesStopProps {
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
  const step = linesStepHere(next, openParts(lines), skipped, chosen);
  const news = change === null ? null : <ChangeNews change={change} />;
  /**
   * What was left out is not asked for again, and the work goes on. Away from a width, the way leads first to a line that has
   * no reading all around, as one that was marked again.
   */
  const passOver = () => {
    const open = openParts(lines);
    if (step.do === "read" && step.part !== "girth" && open.some(({ part }) => part === "girth")) {
      setSkipped(open.filter(({ part }) => part !== "girth"));
      setChosen(null);
      return;
    }
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

interface FinishedStopProps {
  readonly plan: Plan;
  readonly news: ReactNode;
  readonly isAllRead: boolean;
  readonly onAgain: () => void;
  readonly onGoOn: () => void;
}

/** Every line is measured, or what was left out is: how firm the plan is now, and the way on. */
function FinishedStop({ plan, news, isAllRead, onAgain, onGoOn }: FinishedStopProps) {
  const { write } = useLengths();
  const { finished, region, trail } = linesWords;
  const isDraft = plan.basis === "draft";
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="read"
      kind="working"
      title={isDraft ? finished.stillDraft : finished.title}
      sentence={finished.sentence(write(plan.mayMiss))}
      picture={null}
      news={news}
      ways={
        <>
          {isAllRead ? null : (
            <button type="button" className="patch patch-plain" onClick={onAgain}>
              {finished.again}
            </button>
          )}
          <a className="patch patch-plain" href={pageAddress("plan")}>
            {finished.toPlan}
          </a>
        </>
      }
      slab={{ words: finished.goOn, press: onGoOn, isReady: true }}
    >
      <p>{finished.next(plan.pieces.length)}</p>
    </StopFrame>
  );
}
