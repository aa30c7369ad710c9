import { type ReactNode, useMemo, useState } from "react";
import { type LineReadingAsked, linesAtForm, type LinesStep, openParts } from "../../../app/linesAtForm";
import type { Plan } from "../../../core/plan/plan";
import type { PlanChange } from "../../../core/plan/planChange";
import { LengthField } from "../../field/LengthField";
import { useBenchField } from "../../measure/useBenchField";
import { goTo, placeAddress } from "../../place";
import { linesWords } from "../../text/linesAtForm";
import { useDispatch, useFitting, useLengths } from "../../useStore";
import { MarkStop } from "./MarkStop";
import { ReadLineStop } from "./ReadLineStop";
import { HandSteps, StopFrame } from "./StopFrame";

/** The work on the bare form before the first piece, one stop at a time. */
export function LinesStop({ plan, onLater }: { readonly plan: Plan; readonly onLater: () => void }) {
  const fitting = useFitting();
  const { lines, next } = useMemo(() => linesAtForm(plan, fitting), [plan, fitting]);
  const [skipped, setSkipped] = useState<readonly LineReadingAsked[]>([]);
  const [chosen, setChosen] = useState<LineReadingAsked | null>(null);
  const [change, setChange] = useState<PlanChange | null>(null);
  const step = stepHere(next, openParts(lines), skipped, chosen);
  const news = change === null ? null : <ChangeNews change={change} />;
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
          key={`${step.level}.${step.part}`}
          plan={plan}
          lines={lines}
          level={step.level}
          part={step.part}
          later={later}
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
  const isSkipped = (one: LineReadingAsked) =>
    skipped.some(({ level, part }) => one.level === level && one.part === part);
  const asked = next.do === "done" ? undefined : open.find((one) => !isSkipped(one));
  return asked === undefined ? { do: "done" } : { do: "read", ...asked };
}

/** What the last reading changed in the plan. */
function ChangeNews({ change }: { readonly change: PlanChange }) {
  const { write } = useLengths();
  const [first, ...rest] = linesWords.changed(change, write);
  return (
    <p className="stop-news">
      <strong>{first}</strong> {rest.join(" ")}
    </p>
  );
}

function PrepareStop({ plan, later }: { readonly plan: Plan; readonly later: ReactNode }) {
  const dispatch = useDispatch();
  const { prepare, region, trail } = linesWords;
  const isGuessed = plan.levels.some(({ drop }) => drop.kind === "estimated");
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="prepare"
      kind="working"
      title={prepare.title}
      sentence={prepare.sentence}
      picture={null}
      ways={later}
      slab={{
        words: prepare.done,
        press: () => dispatch({ does: "prepare", what: "form", at: new Date().toISOString() }),
        isReady: true,
      }}
    >
      {isGuessed ? (
        <p className="stop-news">
          {prepare.heightsFirst} <a href={placeAddress("body", "napeHeight")}>{prepare.toHeights}</a>
        </p>
      ) : null}
      <HandSteps steps={prepare.steps} />
      <NapeField />
    </StopFrame>
  );
}

/** With the form's nape above the floor every line has its height for the pointer, and nobody subtracts. */
function NapeField() {
  const { unit, step } = useLengths();
  const { field, input } = useBenchField("form", "napeHeight", 0);
  const { nape } = linesWords.prepare;
  return (
    <div className="stop-nape">
      <LengthField label={nape.label} state={field} unit={unit} step={step} inputRef={input} />
      <p className="quiet">{nape.why}</p>
    </div>
  );
}

interface FinishedStopProps {
  readonly plan: Plan;
  readonly news: ReactNode;
  readonly isAllRead: boolean;
  readonly onAgain: () => void;
}

/** Every line is measured, or what was left out is: how firm the plan is now, and the way on. */
function FinishedStop({ plan, news, isAllRead, onAgain }: FinishedStopProps) {
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
        isAllRead ? null : (
          <button type="button" className="patch" onClick={onAgain}>
            {finished.again}
          </button>
        )
      }
      slab={{ words: finished.toPlan, press: () => goTo("plan"), isReady: true }}
    >
      <p>{finished.next(plan.pieces.length)}</p>
    </StopFrame>
  );
}
