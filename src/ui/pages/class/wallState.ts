import { useLayoutEffect } from "react";
import { levelNames } from "../../../core/body/vocabulary";
import type { WallLevel } from "../../../text/wall";

/**
 * What is on the wall: whose plan, which step of the job, at which level it is looked at, and whether the figures of the body are
 * covered. It lives beside the fitting and never in it.
 */
export interface WallState {
  /** The person's own fitting, or one of the made-up people by her place in the list. */
  readonly person: "own" | number;
  readonly step: number;
  readonly level: WallLevel;
  readonly figures: "covered" | "shown";
}

export type WallAction =
  | { readonly does: "forward" | "back" | "first" | "last" | "cover" | "madeUp" | "own" }
  | { readonly does: "level"; readonly level: WallLevel };

/** What the wall has to know of the jobs to move among them. */
export interface WallRoom {
  /** How many steps the job on the wall has. */
  readonly steps: number;
  /** Where the own job stands, or null where there is no own plan. */
  readonly ownStep: number | null;
  readonly madeUpPeople: number;
}

/** An own body starts covered: nobody in the room is measured in public before she says so. */
export const wallStart = ({ ownStep }: WallRoom): WallState =>
  ownStep === null
    ? { person: 0, step: 0, level: "follow", figures: "shown" }
    : { person: "own", step: ownStep, level: "follow", figures: "covered" };

/** The wall after an action; one that changes nothing gives back the very same state. */
export function wallAfter(state: WallState, action: WallAction, room: WallRoom): WallState {
  switch (action.does) {
    case "forward":
      return atStep(state, Math.min(state.step + 1, room.steps - 1));
    case "back":
      return atStep(state, Math.max(0, state.step - 1));
    case "first":
      return atStep(state, 0);
    case "last":
      return atStep(state, room.steps - 1);
    case "level":
      return state.level === action.level ? state : { ...state, level: action.level };
    case "cover":
      return { ...state, figures: state.figures === "covered" ? "shown" : "covered" };
    case "madeUp":
      return { ...state, person: nextMadeUp(state.person, room), step: 0, figures: "shown" };
    case "own":
      return room.ownStep === null || state.person === "own"
        ? state
        : { ...state, person: "own", step: room.ownStep, figures: "covered" };
  }
}

const atStep = (state: WallState, step: number): WallState => (state.step === step ? state : { ...state, step });

const nextMadeUp = (person: WallState["person"], { madeUpPeople }: WallRoom): number =>
  person === "own" ? 0 : (person + 1) % madeUpPeople;

/**
 * What a key does on the wall. Clickers send Page Down and Page Up, some the arrows, and a full stop or a B to blank the
 * screen. A key that is not ours, or held together with a command key, does nothing.
 */
export type WallKey =
  | WallAction
  | { readonly does: "unit" }
  | { readonly does: "fullScreen" }
  | { readonly does: "keys" }
  | { readonly does: "takeHome" };

interface PressedKey {
  readonly key: string;
  readonly shift: boolean;
  /** Control, the command key or Alt: those belong to the browser. */
  readonly command: boolean;
}

export function wallKey({ key, shift, command }: PressedKey, lettersWork: boolean): WallKey | null {
  if (command) return null;
  if (key === " ") return { does: shift ? "back" : "forward" };
  const moving = movingKeys[key];
  if (moving !== undefined) return { does: moving };
  return lettersWork ? letterKey(key.toLowerCase()) : null;
}

const movingKeys: { readonly [key: string]: "forward" | "back" | "first" | "last" } = {
  ArrowRight: "forward",
  ArrowDown: "forward",
  PageDown: "forward",
  ArrowLeft: "back",
  ArrowUp: "back",
  PageUp: "back",
  Home: "first",
  End: "last",
};

function letterKey(key: string): WallKey | null {
  const letter = letterKeys[key];
  if (letter !== undefined) return letter;
  if (key === "0") return { does: "level", level: "follow" };
  const level = /^[1-9]$/.test(key) ? levelNames[Number(key) - 1] : undefined;
  return level === undefined ? null : { does: "level", level };
}

const letterKeys: { readonly [key: string]: WallKey } = {
  c: { does: "cover" },
  b: { does: "cover" },
  ".": { does: "cover" },
  m: { does: "madeUp" },
  o: { does: "own" },
  u: { does: "unit" },
  f: { does: "fullScreen" },
  t: { does: "takeHome" },
  k: { does: "keys" },
  "?": { does: "keys" },
};

/** Listens to the whole page while the wall is up, from its first frame on, so that a clicker works wherever the focus is. */
export function useWallKeys(act: (key: WallKey) => void, lettersWork: boolean): void {
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || isForControl(event)) return;
      const { key, shiftKey: shift } = event;
      const action = wallKey({ key, shift, command: event.ctrlKey || event.metaKey || event.altKey }, lettersWork);
      if (action === null) return;
      event.preventDefault();
      act(action);
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [act, lettersWork]);
}

/** Space presses the control that has the focus; in a field, in what is taken home and in a dialog all keys stay there. */
const isForControl = ({ key, target }: KeyboardEvent): boolean =>
  target instanceof HTMLElement &&
  (target.closest("dialog, .wall-home, input[type=text], input:not([type])") !== null ||
    (key === " " && target.closest("button, a, input") !== null));
