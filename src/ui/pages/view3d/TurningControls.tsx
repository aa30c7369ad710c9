import { lookSentence, turningWords } from "../../../text/turning";
import { tipStep, turnStep, type Turning } from "./useTurning";

/** Buttons that turn and tip the figure, for those who do not drag. */
export interface TurningControlsProps {
  readonly turning: Turning;
  readonly body: "shown" | "hidden";
  readonly onBody: (body: "shown" | "hidden") => void;
}

const ways = [
  { name: turningWords.front, degrees: 0 },
  { name: turningWords.leftSide, degrees: 90 },
  { name: turningWords.back, degrees: 180 },
  { name: turningWords.rightSide, degrees: 270 },
] as const;

export function TurningControls({ turning, body, onBody }: TurningControlsProps) {
  const { view, turn, lookFrom } = turning;
  return (
    <div className="turning-controls stack">
      <p className="turning-now" aria-live="polite">
        {turningWords.ways} {lookSentence(view.turn, view.tip).replace(/^from /, "")}
      </p>
      <fieldset className="turning-row">
        <legend className="unseen">{turningWords.ways}</legend>
        {ways.map(({ name, degrees }) => (
          <button
            key={name}
            type="button"
            className="patch turning-way"
            aria-pressed={view.turn === degrees}
            onClick={() => lookFrom(degrees)}
          >
            {name}
          </button>
        ))}
      </fieldset>
      <div className="turning-row">
        <button type="button" className="patch" onClick={() => turn(-turnStep)}>
          <span aria-hidden>↺</span> {turningWords.turnLeft}
        </button>
        <button type="button" className="patch" onClick={() => turn(turnStep)}>
          <span aria-hidden>↻</span> {turningWords.turnRight}
        </button>
        <button type="button" className="patch" onClick={() => turn(0, tipStep)}>
          {turningWords.tipUp}
        </button>
        <button type="button" className="patch" onClick={() => turn(0, -tipStep)}>
          {turningWords.tipDown}
        </button>
        <button
          type="button"
          className="patch turning-way"
          aria-pressed={body === "shown"}
          onClick={() => onBody(body === "shown" ? "hidden" : "shown")}
        >
          {turningWords.body}
        </button>
      </div>
    </div>
  );
}
