import { createStore, type StoreApi } from "zustand/vanilla";
import type { Fitting } from "../../document/fitting";
import { apply, isStep, type Command } from "./commands";

/**
 * The open fitting, and the states before and after it that undo and redo walk through. Whoever keeps fittings
 * subscribes to this store and hands back what was kept through `load`; nothing here writes anywhere.
 */
export interface FittingState {
  readonly fitting: Fitting;
  /** Earlier states, oldest first. */
  readonly past: readonly Fitting[];
  /** Undone states, nearest first. */
  readonly future: readonly Fitting[];
  /**
   * The command that led here, or how else this state came about. After "look" nothing is changed until the next load:
   * the fitting was kept by a newer release, and only its unit may be switched, to read it.
   */
  readonly cause: Command["does"] | "load" | "look" | "undo" | "redo";
}

export interface FittingStore extends StoreApi<FittingState> {
  readonly dispatch: (command: Command) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly load: (fitting: Fitting, history?: Pick<FittingState, "past" | "future">) => void;
  /** Shows a fitting that must not be changed. */
  readonly look: (fitting: Fitting) => void;
}

/** An evening of measuring and pinning is some two hundred steps; more than that nobody walks back. */
export const longestPast = 200;

export function fittingStore(start: Fitting): FittingStore {
  const store = createStore<FittingState>(() => ({ fitting: start, past: [], future: [], cause: "load" }));
  return {
    ...store,
    dispatch: (command) => store.setState((state) => after(state, command)),
    undo: () => store.setState(undone),
    redo: () => store.setState(redone),
    load: (fitting, history = { past: [], future: [] }) => store.setState({ ...history, fitting, cause: "load" }, true),
    look: (fitting) => store.setState({ fitting, past: [], future: [], cause: "look" }, true),
  };
}

function after(state: FittingState, command: Command): FittingState {
  const isLook = state.cause === "look";
  if (isLook && command.does !== "changeUnit") return state;
  const fitting = apply(state.fitting, command);
  if (fitting === state.fitting) return state;
  if (isLook) return { ...state, fitting };
  if (!isStep(command) || isSameText(command, state)) return { ...state, fitting, cause: command.does };
  const past = [...state.past, state.fitting].slice(-longestPast);
  return { fitting, past, future: [], cause: command.does };
}

/** A name or a note is one step however many letters it has, as long as nothing else is done in between. */
const isSameText = (command: Command, state: FittingState): boolean =>
  command.does === state.cause && writtenByLetter.has(command.does) && isSameStep(command, state);

/** Each step of the work has a note of its own: the last one written was this, if it is what the last change changed. */
const isSameStep = (command: Command, { fitting, past }: FittingState): boolean =>
  command.does !== "noteStep" || past.at(-1)?.stepNotes?.[command.key] !== fitting.stepNotes?.[command.key];

/** What is told anew with every letter of a text. */
export const writtenByLetter: ReadonlySet<FittingState["cause"]> = new Set([
  "rename",
  "note",
  "noteStep",
  "nameBatting",
]);

/** Texts still being typed are not part of the steps: they stay as they are through undo and redo. */
function undone(state: FittingState): FittingState {
  const before = state.past.at(-1);
  if (before === undefined) return state;
  const fitting = { ...before, drafts: state.fitting.drafts };
  return { fitting, past: state.past.slice(0, -1), future: [state.fitting, ...state.future], cause: "undo" };
}

function redone(state: FittingState): FittingState {
  const [next, ...future] = state.future;
  if (next === undefined) return state;
  const fitting = { ...next, drafts: state.fitting.drafts };
  return { fitting, past: [...state.past, state.fitting], future, cause: "redo" };
}
