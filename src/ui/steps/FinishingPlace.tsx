import { useState } from "react";
import type { PadProgress, TapePart } from "../../app/padProgress";
import type { Measurements } from "../../core/body/measurements";
import type { LevelName } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import { squareMm } from "../../core/units";
import { formatArea } from "../area";
import { waistTape } from "../finishing/waistTape";
import { DoneBoard } from "../learning/DoneBoard";
import { LevelReadings } from "../padding/LevelReadings";
import { ReadingPad } from "../padding/ReadingPad";
import { PlanWaiting } from "../plan/PlanWaiting";
import { finishingWords } from "../text/finishing";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";

/** Finishing: the cover, the tape laid once more, the waist tape, what it takes, and the pins counted back. */
export function FinishingPlace() {
  const { planning, progress, lengths } = useDerived();
  if (planning.kind === "waiting" || progress === null || lengths === null) return <PlanWaiting />;
  const { plan } = planning;
  return (
    <>
      <div className="place-head">
        <h1>{finishingWords.title}</h1>
        <p className="lead">{finishingWords.lead}</p>
      </div>
      <section className="stack">
        <h2>{finishingWords.coverTitle}</h2>
        <Sentences sentences={finishingWords.cover} ordered />
        <p className="caution">{finishingWords.coverCare}</p>
      </section>
      <MeasureAgain plan={plan} progress={progress} />
      <DoneBoard plan={plan} progress={progress} />
      <WaistTapePart plan={plan} body={lengths.body} />
      <Supplies plan={plan} body={lengths.body} />
      <section className="stitched stack">
        <h2>{finishingWords.countTitle}</h2>
        <Sentences sentences={finishingWords.care} />
      </section>
    </>
  );
}

function MeasureAgain({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const [level, setLevel] = useState<LevelName>("waist");
  const [part, setPart] = useState<TapePart>("girth");
  return (
    <section className="stitched stack">
      <h2>{finishingWords.againTitle}</h2>
      <p>{finishingWords.again}</p>
      <div className="again wide">
        <LevelReadings plan={plan} progress={progress} level={level} onLevel={setLevel} onPart={setPart} />
        <ReadingPad level={level} part={part} />
      </div>
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
          unit === "in" ? finishingWords.tapeLength(write(length)) : finishingWords.tapeLengthCm(write(length)),
          tilt === null ? finishingWords.tapeLevel : finishingWords.tapeTilt(write(tilt.front), write(tilt.back)),
        ]}
      />
    </section>
  );
}

function Supplies({ plan, body }: PartProps) {
  const { unit, write } = useLengths();
  const { batting } = useFitting();
  const tape = waistTape(plan, body);
  const area = formatArea(squareMm(plan.battingArea * wasteShare), unit);
  return (
    <section className="stitched stack">
      <h2>{finishingWords.suppliesTitle}</h2>
      <Sentences
        sentences={[
          finishingWords.supplies(batting.name, area),
          finishingWords.supplyCover,
          ...(tape ? [finishingWords.supplyTape(write(tape.length))] : []),
          finishingWords.supplyPins(plan.pieces.length * pinsPerPiece),
        ]}
      />
    </section>
  );
}

/** Common practice, no source: a quarter more than the pieces, and a dozen pins to each. */
const wasteShare = 1.25;
const pinsPerPiece = 12;

function Sentences({
  sentences,
  ordered = false,
}: {
  readonly sentences: readonly string[];
  readonly ordered?: boolean;
}) {
  const items = sentences.map((sentence) => <li key={sentence}>{sentence}</li>);
  return ordered ? <ol className="plain-list numbered">{items}</ol> : <ul className="plain-list">{items}</ul>;
}
