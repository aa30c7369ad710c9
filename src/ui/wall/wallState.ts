import type { WallLevel } from "../text/wall";

/**
 * What is on the wall: whose plan, how many of its pieces are on, at which level it is looked at, and whether the
 * figures of the body are covered. It lives beside the fitting and never in it.
 */
export interface WallState {
  /** The person's own fitting, or one of the made-up people by her place in the list. */
  readonly person: "own" | number;
  /** The lines are marked on the form before anything else; the pieces follow. */
  readonly scene: "lines" | "pieces";
  readonly step: number;
  readonly level: WallLevel;
  readonly figures: "covered" | "shown";
}

export type WallAction =
  | { readonly does: "forward" | "back" | "first" | "last" | "cover" | "madeUp" | "own" }
  | { readonly does: "level"; readonly level: WallLevel };

/** What the wall has to know of the plans to move among them. */
export interface WallRoom {
  /** How many pieces the plan on the wall has. */
  readonly pieces: number;
  /** How many pieces of the own plan are pinned already, or null where there is no own plan. */
  readonly ownPinned: number | null;
  readonly madeUpPeople: number;
}

/** Whoever has begun to pin has marked the lines. */
const sceneAt = (pinned: number): WallState["scene"] => (pinned === 0 ? "lines" : "pieces");

/** An own body starts covered: nobody in the room is measured in public before she says so. */
export const wallStart = ({ ownPinned }: WallRoom): WallState =>
  ownPinned === null
    ? { person: 0, scene: "lines", step: 0, level: "follow", figures: "shown" }
    : { person: "own", scene: sceneAt(ownPinned), step: ownPinned, level: "follow", figures: "covered" };

/** The wall after an action; one that changes nothing gives back the very same state. */
export function wallAfter(state: WallState, action: WallAction, room: WallRoom): WallState {
  switch (action.does) {
    case "forward":
      return state.scene === "lines" ? atStep(state, 0) : atStep(state, Math.min(state.step + 1, room.pieces));
    case "back":
      return state.step === 0 ? atLines(state) : atStep(state, state.step - 1);
    case "first":
      return atLines(state);
    case "last":
      return atStep(state, room.pieces);
    case "level":
      return state.level === action.level ? state : { ...state, level: action.level };
    case "cover":
      return { ...state, figures: state.figures === "covered" ? "shown" : "covered" };
    case "madeUp":
      return { ...state, person: nextMadeUp(state.person, room), scene: "lines", step: 0, figures: "shown" };
    case "own":
      return room.ownPinned === null || state.person === "own"
        ? state
        : {
            ...state,
            person: "own",
            scene: sceneAt(room.ownPinned),
            step: room.ownPinned,
            figures: "covered",
          };
  }
}

const atStep = (state: WallState, step: number): WallState =>
  state.scene === "pieces" && state.step === step ? state : { ...state, scene: "pieces", step };

const atLines = (state: WallState): WallState =>
  state.scene === "lines" ? state : { ...state, scene: "lines", step: 0 };

const nextMadeUp = (person: WallState["person"], { madeUpPeople }: WallRoom): number =>
  person === "own" ? 0 : (person + 1) % madeUpPeople;
