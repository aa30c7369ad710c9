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
