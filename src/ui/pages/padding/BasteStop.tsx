import { useState } from "react";
import { Cautions } from "../../kit/Cautions";
import { basteStop, doneWords, handSteps, tapeTrail } from "../../../text/stops";
import { StepFrame } from "../../kit/stop/StepFrame";
import { HandSteps } from "../../kit/stop/StopFrame";
import type { StepAtHand } from "../../kit/stop/useStep";
import { WorkPictureOf } from "../../kit/stop/WorkPictureOf";

/** Basted, the pins out and counted. A pin that is missing is a path of its own, from which the slab leads back. */
export function BasteStop({ at }: { readonly at: StepAtHand }) {
  const { step, plan, pinned, words, record } = at;
  const [pins, setPins] = useState("");
  const [isMissing, setMissing] = useState(false);
  const count = /^\d{1,4}$/.test(pins.trim()) ? Number(pins) : null;
  const now = pinned.filter(({ id }) => step.pieceIds.includes(id));
  const said = count === null ? doneWords(step) : basteStop.done(count);
  return (
    <StepFrame
      at={at}
      trail={tapeTrail}
      act="baste"
      kind="working"
      title={isMissing ? basteStop.missingTitle : words[0]}
      sentence={isMissing ? "" : words[1]}
      picture={<WorkPictureOf plan={plan} on={pinned} now={now} doing="baste" title={words[0]} />}
      slab={
        isMissing
          ? { words: basteStop.found, press: () => setMissing(false), isReady: true }
          : { words: said, press: () => record(said, count === null ? {} : { pins: count }), isReady: true }
      }
      ways={
        isMissing ? null : (
          <button type="button" className="patch patch-plain" onClick={() => setMissing(true)}>
            {basteStop.missing}
          </button>
        )
      }
    >
      <Cautions at="securing" />
      {isMissing ? (
        <HandSteps steps={basteStop.missingHow.map((text) => ({ title: "", text }))} />
      ) : (
        <>
          <HandSteps steps={handSteps(step, "", at.facts.form)} />
          <label className="pins-out">
            {basteStop.pins}
            <input
              className="line-input"
              type="text"
              inputMode="numeric"
              maxLength={4}
              autoComplete="off"
              value={pins}
              onChange={(event) => setPins(event.target.value.replace(/\D/g, ""))}
            />
          </label>
        </>
      )}
    </StepFrame>
  );
}
