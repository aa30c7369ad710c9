import { type ReactNode, useState } from "react";
import { type HandStep, pinsOutStop } from "../../../text/stops";
import { Cautions } from "../Cautions";
import { StepFrame } from "./StepFrame";
import { HandSteps } from "./StopFrame";
import type { StepAtHand } from "./useStep";

interface PinsOutStopProps<Act extends string> {
  readonly at: StepAtHand;
  readonly trail: { readonly [act in Act]?: string };
  readonly act: Act;
  readonly picture: ReactNode;
  readonly hands: readonly HandStep[];
  /** What the button says, without a count and with one. */
  readonly said: (count: number | null) => string;
  /** Small ways out of this step beside the missing pin. */
  readonly ways?: ReactNode;
  /** What is said over what the hands do, while no pin is missing. */
  readonly news?: ReactNode;
}

/** Sewn, the pins out and counted. A pin that is missing is a path of its own, from which the slab leads back. */
export function PinsOutStop<Act extends string>(props: PinsOutStopProps<Act>) {
  const { at, trail, act, picture, hands, ways = null, news = null } = props;
  const [pins, setPins] = useState("");
  const [isMissing, setMissing] = useState(false);
  const count = /^\d{1,4}$/.test(pins.trim()) ? Number(pins) : null;
  const said = props.said(count);
  const { words, record } = at;
  return (
    <StepFrame
      at={at}
      trail={trail}
      act={act}
      kind="working"
      title={isMissing ? pinsOutStop.missingTitle : words[0]}
      sentence={isMissing ? "" : words[1]}
      picture={picture}
      news={isMissing ? null : news}
      slab={
        isMissing
          ? { words: pinsOutStop.found, press: () => setMissing(false), isReady: true }
          : { words: said, press: () => record(said, count === null ? {} : { pins: count }), isReady: true }
      }
      ways={
        isMissing ? null : (
          <>
            <button type="button" className="patch patch-plain" onClick={() => setMissing(true)}>
              {pinsOutStop.missing}
            </button>
            {ways}
          </>
        )
      }
    >
      <Cautions at="securing" />
      {isMissing ? (
        <HandSteps steps={pinsOutStop.missingHow.map((text) => ({ title: "", text }))} />
      ) : (
        <>
          <HandSteps steps={hands} />
          <PinsField pins={pins} onPins={setPins} />
        </>
      )}
    </StepFrame>
  );
}

/** How many came out; may be left empty. */
const PinsField = ({ pins, onPins }: { readonly pins: string; readonly onPins: (pins: string) => void }) => (
  <label className="pins-out">
    {pinsOutStop.pins}
    <input
      className="line-input"
      type="text"
      inputMode="numeric"
      maxLength={4}
      autoComplete="off"
      value={pins}
      onChange={(event) => onPins(event.target.value.replace(/\D/g, ""))}
    />
  </label>
);
