import { type KeyboardEvent, type PointerEvent, useCallback, useRef, useState } from "react";
import { lookSentence, turningWords } from "../../../text/turning";
import { frontView, turned, type TurningView } from "./turningSurface";

/** Buttons that turn and tip the figure, for those who do not drag. */
interface TurningControlsProps {
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
      <fieldset className="choices">
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
      <div className="choices">
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

/** Turning by drag, by keys and by buttons. Nothing turns by itself. */
interface Turning {
  readonly view: TurningView;
  readonly turn: (by: number, tipBy?: number) => void;
  readonly lookFrom: (degrees: number) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerUp: (event: PointerEvent<HTMLElement>) => void;
}

const turnStep = 15;
const tipStep = 10;
/** A drag across a finger's breadth turns about ten degrees. */
const degreesPerPixel = 0.5;

export function useTurning(): Turning {
  const [view, setView] = useState(frontView);
  const last = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const turn = useCallback((by: number, tipBy = 0) => setView((before) => turned(before, by, tipBy)), []);
  const lookFrom = useCallback((degrees: number) => setView(({ tip }) => turned({ turn: degrees, tip }, 0)), []);

  const onKeyDown = (event: KeyboardEvent) => {
    const key = keyTurns[event.key];
    if (key === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    if ("to" in key) lookFrom(key.to);
    else turn(key.by, key.tip);
  };
  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    last.current = { x: event.clientX, y: event.clientY };
  };
  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    const before = last.current;
    if (before === null) return;
    last.current = { x: event.clientX, y: event.clientY };
    // The surface under the finger follows it: drawn to the right, her right side comes round.
    turn((before.x - event.clientX) * degreesPerPixel, (event.clientY - before.y) * degreesPerPixel);
  };
  const onPointerUp = () => {
    last.current = null;
  };
  return { view, turn, lookFrom, onKeyDown, onPointerDown, onPointerMove, onPointerUp };
}

const keyTurns: {
  readonly [key: string]: { readonly by: number; readonly tip: number } | { readonly to: number };
} = {
  ArrowLeft: { by: -turnStep, tip: 0 },
  ArrowRight: { by: turnStep, tip: 0 },
  ArrowUp: { by: 0, tip: tipStep },
  ArrowDown: { by: 0, tip: -tipStep },
  Home: { to: 0 },
  End: { to: 180 },
};
