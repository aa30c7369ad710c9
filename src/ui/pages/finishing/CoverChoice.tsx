import { useState } from "react";
import { stretchDraftKeys } from "../../../app/session/commands";
import { chosenCloth, isCloth } from "../../../app/steps/chosenCloth";
import { usualCover } from "../../../app/steps/stepRecord";
import { knitOfTest, stretchOffered } from "../../../core/cover/cloth";
import { mm } from "../../../core/units";
import type { CoverCloth } from "../../../document/fitting";
import { finishingWords } from "../../../text/finishing";
import { coverChoice } from "../../../text/makingSteps";
import { doneWords } from "../../../text/stops";
import { DraftLength } from "../../kit/field/DraftLength";
import { useTypedLength } from "../../kit/stop/useTypedLength";
import { StepFrame } from "../../kit/stop/StepFrame";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useDrafts, useLengths } from "../../kit/useStore";

/** Where a cover is chosen after there was none: what ends the choice. */
interface ChosenAgain {
  readonly onEnd: () => void;
}

/** What the cover is made of, and for a knit that is cut, how much it gives. */
export function CoverChoice({ at, again = null }: { readonly at: StepAtHand; readonly again?: ChosenAgain | null }) {
  const was = chosenCloth(at.fitting).kind;
  const [cloth, setCloth] = useState<CoverCloth>(again !== null && was === "none" ? usualCover : was);
  const drafts = useDrafts().other;
  const test = useStretchTest();
  const isTest = cloth === "knit";
  const isReady = !isTest || test.kind === "untried" || (test.kind === "tried" && test.stretch >= stretchOffered.least);
  const said = doneWords(at.step);
  const press = () => {
    const texts = Object.entries(stretchDraftKeys).map(([name, key]) => [name, drafts[key]?.trim() ?? ""] as const);
    at.record(said, { cloth, ...(isTest && test.kind === "tried" ? Object.fromEntries(texts) : {}) });
    again?.onEnd();
  };
  return (
    <StepFrame
      at={at}
      trail={{}}
      act="choose-cover"
      kind="working"
      picture={null}
      slab={{ words: said, press, isReady }}
      ways={
        again === null ? null : (
          <button type="button" className="patch patch-plain" onClick={again.onEnd}>
            {finishingWords.keepNone}
          </button>
        )
      }
    >
      {again === null ? null : <p>{finishingWords.coverAfterAllHow}</p>}
      <fieldset className="stack cover-choice">
        <legend>{coverChoice.legend}</legend>
        {(Object.keys(coverChoice.cloths) as CoverCloth[])
          .filter((kind) => again === null || kind !== "none")
          .map((kind) => (
            <label key={kind} className="tick">
              <input type="radio" name="cover" checked={cloth === kind} onChange={() => setCloth(kind)} />
              <span>{coverChoice.cloths[kind]}</span>
            </label>
          ))}
      </fieldset>
      {isTest ? <StretchFields /> : null}
    </StepFrame>
  );
}

function StretchFields() {
  const { write, unit } = useLengths();
  const { test } = coverChoice;
  const told = useStretchTest();
  return (
    <details className="stretch-test" open={told.kind !== "untried"}>
      <summary className="fold">{test.title}</summary>
      <p>{test.how(write(unit === "in" ? mm(101.6) : mm(100)))}</p>
      <div className="stretch-fields">
        <DraftLength draftKey={stretchDraftKeys.marked} label={test.marked} />
        <DraftLength draftKey={stretchDraftKeys.across} label={test.across} />
        <DraftLength draftKey={stretchDraftKeys.along} label={test.along} />
      </div>
      <p role="status">
        {told.kind === "impossible"
          ? test.cannot
          : told.kind === "tried"
            ? test.gives(Math.round(100 * told.stretch))
            : told.kind === "begun"
              ? test.begun
              : test.optional}
      </p>
    </details>
  );
}

type Tested =
  | { readonly kind: "untried" | "begun" | "impossible" }
  | { readonly kind: "tried"; readonly stretch: number };

/** What the three lengths say together, as far as they are there. */
function useStretchTest(): Tested {
  const typed = [
    useTypedLength(stretchDraftKeys.marked),
    useTypedLength(stretchDraftKeys.across),
    useTypedLength(stretchDraftKeys.along),
  ];
  const [marked = null, across = null, along = null] = typed.map(({ length }) => length);
  if (marked === null || across === null || along === null)
    return { kind: typed.some(({ text = "" }) => text.trim() !== "") ? "begun" : "untried" };
  const test = { marked, across, along };
  if (!isCloth(test)) return { kind: "impossible" };
  const cloth = knitOfTest(test);
  return { kind: "tried", stretch: cloth.kind === "knit" ? cloth.stretch : 0 };
}
