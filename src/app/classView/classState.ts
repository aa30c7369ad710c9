import { type LevelName, levelNames } from "../../core/body/vocabulary";

/** The level looked at: one of them, or the one that the piece at hand changes most. */
export type ClassLevel = LevelName | "follow";

/**
 * What is in the class view: whose plan, which step of the job, at which level it is looked at, and whether the figures of the body are
 * covered. It lives beside the fitting and never in it.
 */
export interface ClassState {
  /** The person's own fitting, or one of the made-up people by her place in the list. */
  readonly person: "own" | number;
  readonly step: number;
  readonly level: ClassLevel;
  readonly figures: ClassCover;
}

/** What is covered: the person and the form, neither, or one of them; what follows from both is covered with either. */
export type ClassCover = "covered" | "shown" | "personCovered" | "formCovered";

export type ClassAction =
  | { readonly does: "forward" | "back" | "first" | "last" | "cover" | "coverPerson" | "coverForm" | "madeUp" | "own" }
  | { readonly does: "level"; readonly level: ClassLevel };

/** What the class view has to know of the jobs to move among them. */
export interface ClassRoom {
  /** How many steps the job in the class view has. */
  readonly steps: number;
  /** Where the own job stands, or null where there is no own plan. */
  readonly ownStep: number | null;
  /** Nobody was measured for the fitting that is open: it is a sample person's. */
  readonly isOwnMadeUp: boolean;
  readonly madeUpPeople: number;
  /** The step of a made-up person's job that is most like the one at hand. */
  readonly stepOf: (madeUp: number) => number;
}

/** A body that was measured starts covered: nobody in the room is shown in public before she says so. */
export const classStart = ({ ownStep, isOwnMadeUp }: Pick<ClassRoom, "ownStep" | "isOwnMadeUp">): ClassState =>
  ownStep === null
    ? { person: 0, step: 0, level: "follow", figures: "shown" }
    : { person: "own", step: ownStep, level: "follow", figures: isOwnMadeUp ? "shown" : "covered" };

export const isPersonCovered = (figures: ClassCover): boolean => figures === "covered" || figures === "personCovered";
export const isFormCovered = (figures: ClassCover): boolean => figures === "covered" || figures === "formCovered";

const coverOf = (person: boolean, form: boolean): ClassCover =>
  person ? (form ? "covered" : "personCovered") : form ? "formCovered" : "shown";

/** The class view after an action; one that changes nothing gives back the very same state. */
export function classAfter(state: ClassState, action: ClassAction, room: ClassRoom): ClassState {
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
    case "coverPerson":
      return { ...state, figures: coverOf(!isPersonCovered(state.figures), isFormCovered(state.figures)) };
    case "coverForm":
      return { ...state, figures: coverOf(isPersonCovered(state.figures), !isFormCovered(state.figures)) };
    case "madeUp": {
      const person = nextMadeUp(state.person, room);
      return { ...state, person, step: room.stepOf(person), figures: "shown" };
    }
    case "own":
      return room.ownStep === null || state.person === "own"
        ? state
        : { ...state, person: "own", step: room.ownStep, figures: room.isOwnMadeUp ? "shown" : "covered" };
  }
}

const atStep = (state: ClassState, step: number): ClassState => (state.step === step ? state : { ...state, step });

const nextMadeUp = (person: ClassState["person"], { madeUpPeople }: ClassRoom): number =>
  person === "own" ? 0 : (person + 1) % madeUpPeople;

/**
 * What a key does in the class view. Clickers send Page Down and Page Up, some the arrows, and a full stop or a B to blank the
 * screen. A key that is not ours, or held together with a command key, does nothing.
 */
export type ClassKey =
  | ClassAction
  | { readonly does: "unit" }
  | { readonly does: "fullScreen" }
  | { readonly does: "keys" }
  | { readonly does: "session" }
  | { readonly does: "note" }
  | { readonly does: "remote" }
  | { readonly does: "timer" }
  | { readonly does: "takeHome" }
  | { readonly does: "type" };

interface PressedKey {
  readonly key: string;
  readonly shift: boolean;
  /** Control, the command key or Alt: those belong to the browser. */
  readonly command: boolean;
}

export function classKey({ key, shift, command }: PressedKey, lettersWork: boolean): ClassKey | null {
  if (command) return null;
  if (key === " ") return { does: shift ? "back" : "forward" };
  const moving = movingKeys[key];
  if (moving !== undefined) return { does: moving };
  if (key === "Enter") return { does: "type" };
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

function letterKey(key: string): ClassKey | null {
  const letter = letterKeys[key];
  if (letter !== undefined) return letter;
  if (key === "0") return { does: "level", level: "follow" };
  const level = /^[1-9]$/.test(key) ? levelNames[Number(key) - 1] : undefined;
  return level === undefined ? null : { does: "level", level };
}

const letterKeys: { readonly [key: string]: ClassKey } = {
  c: { does: "cover" },
  b: { does: "cover" },
  ".": { does: "cover" },
  x: { does: "coverPerson" },
  z: { does: "coverForm" },
  m: { does: "madeUp" },
  o: { does: "own" },
  u: { does: "unit" },
  f: { does: "fullScreen" },
  t: { does: "takeHome" },
  s: { does: "session" },
  n: { does: "note" },
  r: { does: "remote" },
  p: { does: "timer" },
  k: { does: "keys" },
  "?": { does: "keys" },
};
