import { useState } from "react";
import { isBare } from "../../app/isBare";
import type { PadProgress, TapePart } from "../../app/padProgress";
import type { LevelName } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import { correctionsHere } from "../learning/correctionsHere";
import { DoneBoard } from "../learning/DoneBoard";
import { LearningPart } from "../learning/LearningPart";
import { Cautions } from "../Cautions";
import { LearningStrip } from "../learning/LearningStrip";
import { useAnswer } from "../learning/useAnswer";
import { BeforeFirst } from "../padding/BeforeFirst";
import { LevelReadings } from "../padding/LevelReadings";
import { levelToMeasure } from "../padding/levelToMeasure";
import { LogNotes } from "../padding/LogNotes";
import { NextAction } from "../padding/NextAction";
import { PinRow } from "../padding/PinRow";
import { ReadingPad } from "../padding/ReadingPad";
import { PaddingPicture } from "../padding/PaddingPicture";
import { ReadingsOverview } from "../padding/ReadingsOverview";
import { ScreenTools } from "../padding/ScreenTools";
import { LinesStop } from "../pages/padding/LinesStop";
import { goTo, useAskedThing } from "../place";
import { DraftNote, linesThing } from "../plan/DraftNote";
import { PlanWaiting } from "../plan/PlanWaiting";
import { paddingWords } from "../text/padding";
import { useDerived } from "../useDerived";
import { phoneQuery, useMediaQuery } from "../useMediaQuery";
import { useFitting } from "../useStore";

/** Padding: pin the next piece, lay the tape, type what it reads, see what is left to go. */
export function PaddingPlace() {
  const { planning, progress } = useDerived();
  if (planning.kind === "waiting" || progress === null) return <PlanWaiting />;
  return <Padding plan={planning.plan} progress={progress} />;
}

/** The draft says what it may miss by and leads to the lines; the work on the bare form fills the screen when it is asked for. */
function Padding({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { work } = useFitting();
  // On a phone the way to the lines stands among what comes before the first piece, and the pad stays in sight; so it does
  // everywhere once a piece is on.
  const isBelow = useMediaQuery(phoneQuery) || !isBare(work);
  const isAsked = useAskedThing() === linesThing;
  if (isAsked && isBare(work)) return <LinesStop plan={plan} onLater={() => goTo("plan")} />;
  return (
    <>
      {isBelow ? null : <DraftNote plan={plan} />}
      {plan.pieces.length === 0 ? (
        <p className="lead">{paddingWords.nothing}</p>
      ) : (
        <PaddingBench plan={plan} progress={progress} />
      )}
      {isBelow ? <DraftNote plan={plan} /> : null}
    </>
  );
}

function PaddingBench({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const [looked, setLooked] = useState<number | null>(null);
  const current = plan.pieces.find(({ order }) => order === looked) ?? progress.next;
  const { first, isReadingDue } = useTapeSays(progress);
  const correction = looked === null ? first : null;
  const last = progress.pieces.findLast(({ pinned }) => pinned)?.piece ?? null;
  const atHand = looked === null ? (last ?? current) : current;
  const suggested: LevelName = correction?.level ?? (atHand ? levelToMeasure(plan, atHand) : "waist");
  const [chosen, setChosen] = useState<{ readonly level: LevelName; readonly during: number | null } | null>(null);
  const [part, setPart] = useState<TapePart>("girth");
  const during = current?.order ?? null;
  const level = chosen && chosen.during === during ? chosen.level : suggested;
  const chooseLevel = (name: LevelName) => setChosen({ level: name, during });
  const isBegun = last !== null;

  return (
    <>
      <div className="padding">
        <h1 className="unseen">{paddingWords.title}</h1>
        <div className="padding-top">
          <PinRow progress={progress} current={correction === null ? current : null} onLook={setLooked} />
          {isBegun ? <Cautions at="laterPiece" /> : <BeforeFirst plan={plan} />}
          <LogNotes />
          <LearningStrip progress={progress} correction={correction} />
        </div>
        <NextAction
          plan={plan}
          progress={progress}
          current={current}
          correction={correction}
          isLooking={looked !== null}
          isReadingDue={isReadingDue}
          onLook={setLooked}
        />
        <PaddingPicture plan={plan} progress={progress} current={current} level={level} />
        <LevelReadings
          plan={plan}
          progress={progress}
          level={level}
          over="padding"
          onLevel={chooseLevel}
          onPart={setPart}
        />
        <ReadingPad plan={plan} level={level} part={part} now={progress.now[level]} over="padding" onPart={setPart} />
      </div>
      <DoneBoard plan={plan} progress={progress} over="padding" />
      <ReadingsOverview plan={plan} progress={progress} />
      <LearningPart plan={plan} progress={progress} />
      <ScreenTools />
    </>
  );
}

/**
 * What the tape reads over, if it is firm enough to come before the next piece, and whether the tape is to be read before
 * anything more is pinned.
 */
function useTapeSays(progress: PadProgress) {
  const { answer } = useAnswer("learning");
  return {
    first: answer === null ? null : correctionsHere(answer.replan.corrections, progress).first,
    isReadingDue: answer !== null && answer.replan.rest.pieces === 0,
  };
}
