import type { PadProgress } from "../../../app/progress/padProgress";
import type { Measurements } from "../../../core/body/measurements";
import type { Plan } from "../../../core/plan/plan";
import { waistTape } from "../../../core/plan/waistTape";
import { finishingWords } from "../../../text/finishing";
import { Cautions } from "../../kit/Cautions";
import { pageAddress } from "../../kit/page";
import { PlanWaiting } from "../../kit/plan/PlanWaiting";
import { useDerived } from "../../kit/useDerived";
import { useLengths, useUnit } from "../../kit/useStore";
import { OverCover } from "./OverCover";
import { SuppliesPart } from "./SuppliesPart";

/** Finishing: the cover, the tape laid once more, the waist tape, what it takes, and the pins counted back. */
export function FinishingPage() {
  const { planning, progress, lengths } = useDerived();
  if (planning.kind === "waiting" || progress === null || lengths === null) return <PlanWaiting />;
  const { plan } = planning;
  return (
    <>
      <div className="place-head">
        <h1>{finishingWords.title}</h1>
        <p className="lead">{finishingWords.lead}</p>
      </div>
      <SecurePart progress={progress} />
      <CoverPart />
      <OverCover plan={plan} progress={progress} />
      <WaistTapePart plan={plan} body={lengths.body} />
      <SuppliesPart plan={plan} />
      <section className="stitched stack">
        <h2>{finishingWords.countTitle}</h2>
        <Cautions at="lastPins" />
        <p>{finishingWords.count}</p>
      </section>
    </>
  );
}

/** What lies under the cover is basted first, and its pins are out and counted. */
function SecurePart({ progress: { pieces, pinnedCount } }: { readonly progress: PadProgress }) {
  const left = pieces.length - pinnedCount;
  const unit = useUnit();
  return (
    <section className="stack">
      {left === 0 ? null : (
        <p>
          {finishingWords.notAllOn(left)} <a href={pageAddress("padding")}>{finishingWords.toPadding}</a>
        </p>
      )}
      <h2>{finishingWords.secureTitle}</h2>
      <Cautions at="securing" />
      <Sentences sentences={finishingWords.secure(unit)} ordered />
    </section>
  );
}

function CoverPart() {
  const unit = useUnit();
  return (
    <section className="stitched stack">
      <h2>{finishingWords.coverTitle}</h2>
      <Cautions at="covering" />
      <Sentences sentences={[finishingWords.bra, ...finishingWords.cover(unit)]} ordered />
    </section>
  );
}

interface PartProps {
  readonly plan: Plan;
  readonly body: Measurements;
}

function WaistTapePart({ plan, body }: PartProps) {
  const { unit, write } = useLengths();
  const tape = waistTape(plan, body);
  if (tape === null) return null;
  const { height, length, tilt } = tape;
  return (
    <section className="stitched stack">
      <h2>{finishingWords.tapeTitle}</h2>
      <Sentences
        sentences={[
          height.kind === "alongBack"
            ? finishingWords.tapeHeight(write(height.value))
            : finishingWords.tapeGuessed(write(height.value)),
          finishingWords.tapeLength(write(length), unit),
          tilt === null ? finishingWords.tapeLevel : finishingWords.tapeTilt(write(tilt.front), write(tilt.back)),
        ]}
      />
    </section>
  );
}

/** Sentences under one another, numbered where their order matters. */
interface SentencesProps {
  readonly sentences: readonly string[];
  readonly ordered?: boolean;
}

function Sentences({ sentences, ordered = false }: SentencesProps) {
  const items = sentences.map((sentence) => <li key={sentence}>{sentence}</li>);
  return ordered ? <ol className="plain-list numbered">{items}</ol> : <ul className="plain-list">{items}</ul>;
}
