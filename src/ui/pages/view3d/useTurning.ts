import { type KeyboardEvent, type PointerEvent, useCallback, useRef, useState } from "react";
import { frontView, turned, type TurningView } from "./turningView";

/** Turning by drag, by keys and by buttons. Nothing turns by itself. */
export interface Turning {
  readonly view: TurningView;
  readonly turn: (by: number, tipBy?: number) => void;
  readonly lookFrom: (degrees: number) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerUp: (event: PointerEvent<HTMLElement>) => void;
}

export const turnStep = 15;
export const tipStep = 10;
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
