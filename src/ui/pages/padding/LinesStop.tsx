import { useMemo, useState } from "react";
import { type LineAtForm, lineParts, linesAtForm, type LinesStep } from "../../../app/linesAtForm";
import type { Plan } from "../../../core/plan/plan";
import { linesWords } from "../../text/linesAtForm";
import { useDispatch, useFitting } from "../../useStore";
import { MarkStop } from "./MarkStop";
import { ReadLineStop } from "./ReadLineStop";
import { HandSteps, StopFrame } from "./StopFrame";

/** The work on the bare form before the first piece, one stop at a time. */
export function LinesStop({ plan, onLater }: { readonly plan: Plan; readonly onLater: () => void }) {
  const fitting = useFitting();
  const { lines, next } = useMemo(() => linesAtForm(plan, fitting), [plan, fitting]);
  const [skipped, setSkipped] = useState<readonly string[]>([]);
  const step = withoutSkipped(lines, next, skipped);
  const later = (
    <button type="button" className="patch patch-plain" onClick={onLater}>
      {linesWords.draft.offer}
    </button>
  );
  switch (step.do) {
    case "prepare":
      return <PrepareStop later={later} />;
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
          onSkip={() => setSkipped([...skipped, `${step.level}.${step.part}`])}
        />
      );
    case "done":
      return null;
  }
}

/** The next reading that was not left out on this visit. */
function withoutSkipped(lines: readonly LineAtForm[], next: LinesStep, skipped: readonly string[]): LinesStep {
  if (next.do !== "read") return next;
  for (const { level, read } of lines) {
    const part = lineParts.find((name) => read[name] === undefined && !skipped.includes(`${level}.${name}`));
    if (part !== undefined) return { do: "read", level, part };
  }
  return { do: "done" };
}

function PrepareStop({ later }: { readonly later: React.ReactNode }) {
  const dispatch = useDispatch();
  const { prepare, region, trail } = linesWords;
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
      <HandSteps steps={prepare.steps} />
    </StopFrame>
  );
}
