import { useState } from "react";
import { readAbove } from "../../../app/above/madeAbove";
import { aboveDraftKey } from "../../../app/session/commands";
import { layersAfter, readingWith } from "../../../core/above/aboveTurn";
import type { AskedAbove, BuildAbove, MadeLayers, StackPart } from "../../../core/above/buildAbove";
import { parseLength } from "../../../core/lengthText";
import { aboveReadingLabel, readAboveWords } from "../../../text/above";
import { buildHow } from "../../../text/steps";
import { doneWords, tapeTrail } from "../../../text/stops";
import { Cautions } from "../../kit/Cautions";
import { DraftLength } from "../../kit/field/DraftLength";
import { StepFrame } from "../../kit/stop/StepFrame";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useDrafts, useLengths } from "../../kit/useStore";
import { LayerCount } from "./LayerCount";
import { LayersOfBuild } from "./LayersOfBuild";

/** A build above the bust, or its correction: first the hands, then the tape. How many layers lie there and what it reads are noted together. */
export function AboveStop({ at, build }: { readonly at: StepAtHand; readonly build: BuildAbove }) {
  const { step, words } = at;
  const [isMeasuring, setMeasuring] = useState(false);
  const isOff = step.turn?.what === "takeOff";
  if (isMeasuring) return <MeasureOver at={at} build={build} onBack={() => setMeasuring(false)} />;
  return (
    <StepFrame
      at={at}
      {...trailOf(at)}
      kind="working"
      sentence={step.turn === null ? buildHow(build, at.saying) : words[1]}
      picture={<LayersOfBuild build={build} title={words[0]} />}
      slab={{
        words: isOff ? readAboveWords.off : readAboveWords.pinned,
        press: () => setMeasuring(true),
        isReady: true,
      }}
      ways={step.turn === null ? null : <LeaveIt at={at} build={build} />}
    >
      <Cautions at={isOff ? "securing" : "buildingAbove"} />
    </StepFrame>
  );
}

const trailOf = ({ step }: StepAtHand) => ({
  trail: tapeTrail,
  act: step.do === "correct-above" ? ("tune" as const) : ("baste" as const),
});

interface MeasureOverProps {
  readonly at: StepAtHand;
  readonly build: BuildAbove;
  readonly onBack: () => void;
}

/** What the tape reads over it, each of it optional, with how many layers really lie there. */
function MeasureOver({ at, build, onBack }: MeasureOverProps) {
  const { step, record, fitting } = at;
  const { unit } = useLengths();
  const drafts = useDrafts().other;
  const [layers, setLayers] = useState<MadeLayers>(() => layersAfter(build, step.turn));
  const asks = build.act.what === "layers" ? build.act.asks : [];
  const typed = asks.flatMap((name) => {
    const text = drafts[aboveDraftKey(name)]?.trim() ?? "";
    return text === "" ? [] : [[name, text] as const];
  });
  const said = doneWords(step);
  const before = step.turn === null ? {} : (readAbove(build.id, fitting) ?? {});
  const title = readAboveWords.measure(build);
  return (
    <StepFrame
      at={at}
      {...trailOf(at)}
      kind="working"
      title={title}
      sentence={readAboveWords.how}
      speech={title}
      picture={<LayersOfBuild build={build} title={title} />}
      slab={{
        words: said,
        press: () => record(said, { layers, readings: Object.fromEntries(typed) }),
        isReady: typed.every(([, text]) => parseLength(text, unit).ok),
      }}
      ways={
        <button type="button" className="patch patch-plain" onClick={onBack}>
          {readAboveWords.back}
        </button>
      }
    >
      <ReadOver asks={asks} expected={(name) => readingWith(build, before, layers, name)} />
      {(Object.keys(layers) as StackPart[]).map((part) => (
        <LayerCount
          key={part}
          label={readAboveWords.layers(part)}
          count={layers[part] ?? 0}
          onCount={(count) => setLayers({ ...layers, [part]: count })}
        />
      ))}
    </StepFrame>
  );
}

/** Every reading that can be asked over it, with what it should read beside it. Each may stay empty. */
function ReadOver({
  asks,
  expected,
}: {
  readonly asks: readonly AskedAbove[];
  readonly expected: (name: AskedAbove) => ReturnType<typeof readingWith>;
}) {
  const { write } = useLengths();
  return (
    <div className="read-above">
      {asks.map((name) => (
        <div key={name}>
          <DraftLength draftKey={aboveDraftKey(name)} label={aboveReadingLabel(name)} />
          <p className="small">{readAboveWords.should(write(expected(name)))}</p>
        </div>
      ))}
    </div>
  );
}

/** The layers stay as they were, and what was read over them asks for nothing more. */
function LeaveIt({ at: { record }, build }: { readonly at: StepAtHand; readonly build: BuildAbove }) {
  return (
    <button
      type="button"
      className="patch patch-plain"
      onClick={() => record(readAboveWords.leave, { layers: layersAfter(build, null), readings: {} })}
    >
      {readAboveWords.leave}
    </button>
  );
}
