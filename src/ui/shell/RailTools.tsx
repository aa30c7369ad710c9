import { useCallback, useEffect } from "react";
import type { OpenState } from "../../app/storage/openFitting";
import { timeText } from "../../text/moment";
import { savedWords } from "../../text/saved";
import { unitMarks, unitNames, workroomWords } from "../../text/workroom";
import { pageAddress } from "../kit/page";
import { useShelf } from "../kit/shelf/shelf";
import { useSayDone } from "../kit/shelf/useDone";
import { useDispatch, useFittingState, useStoreItself, useUnit } from "../kit/useStore";

/** What is at hand everywhere: whether the work is kept, the unit, and the way back. */
export function RailTools() {
  return (
    <div className="rail-tools">
      <SavedMark />
      <UnitSwitch />
      <UndoRedo />
    </div>
  );
}

function UnitSwitch() {
  const unit = useUnit();
  const dispatch = useDispatch();
  return (
    <fieldset className="switch">
      <legend className="unseen">{workroomWords.unit}</legend>
      {(["in", "cm"] as const).map((name) => (
        <label key={name} className="switch-side">
          <input
            type="radio"
            name="unit"
            checked={unit === name}
            onChange={() => dispatch({ does: "changeUnit", unit: name })}
          />
          <span aria-hidden>{unitMarks[name]}</span>
          <span className="unseen">{unitNames[name]}</span>
        </label>
      ))}
    </fieldset>
  );
}

function UndoRedo() {
  const store = useStoreItself();
  const sayDone = useSayDone();
  const canUndo = useFittingState((state) => state.past.length > 0);
  const canRedo = useFittingState((state) => state.future.length > 0);

  const undo = useCallback(() => {
    if (store.getState().past.length === 0) return;
    store.undo();
    sayDone(workroomWords.undone);
  }, [store, sayDone]);
  const redo = useCallback(() => {
    if (store.getState().future.length === 0) return;
    store.redo();
    sayDone(workroomWords.redone);
  }, [store, sayDone]);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z" || isTyping(event.target)) return;
      event.preventDefault();
      (event.shiftKey ? redo : undo)();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [undo, redo]);

  return (
    <div className="rail-undo">
      <button type="button" className="rail-tool" disabled={!canUndo} onClick={undo}>
        <TurnMark back />
        <span className="rail-tool-word">{workroomWords.undo}</span>
      </button>
      <button type="button" className="rail-tool" disabled={!canRedo} onClick={redo}>
        <TurnMark back={false} />
        <span className="rail-tool-word">{workroomWords.redo}</span>
      </button>
    </div>
  );
}

/** Inside a field the browser's own undo works on the letters. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement && target.type === "text" && target.value !== target.defaultValue;

function TurnMark({ back }: { readonly back: boolean }) {
  const path = back
    ? "M4 9 H13 a5 5 0 0 1 0 10 H9 M8 4.5 L3.5 9 L8 13.5"
    : "M18 9 H9 a5 5 0 0 0 0 10 H13 M14 4.5 L18.5 9 L14 13.5";
  return (
    <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden focusable="false">
      <path
        d={path}
        fill="none"
        stroke="currentColor"
        strokeWidth="2.25"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}

/**
 * Whether the newest change is kept, beside the tools of the band, as a way to the shelf. It says "saved" only when it
 * is; screen readers hear of it when something is not, from the notice.
 */
export function SavedMark() {
  const open = useShelf((state) => state.open);
  const state = stateOf(open);
  return (
    <a className={`saved-mark saved-mark-${state.kind}`} href={pageAddress("fittings")}>
      <span className="saved-mark-place">{savedWords.toFittings}</span>
      {state.kind === "quiet" && state.text !== "" ? (
        <span className="saved-mark-state kept-room" data-longest={savedWords.saved(timeText(longTime))}>
          <span>{state.text}</span>
        </span>
      ) : (
        <span className="saved-mark-state">{state.text}</span>
      )}
    </a>
  );
}

/** While letters are typed "saving" and "saved" take turns, and neither moves the band: a time of four figures is the longest. */
const longTime = "2000-12-28T22:58:00";

function stateOf(open: OpenState | null): { readonly kind: string; readonly text: string } {
  if (open?.access === "newer") return { kind: "elsewhere", text: savedWords.newer };
  if (open === null || open.saving.kind === "nothingYet") return { kind: "quiet", text: "" };
  if (open.saving.kind === "notSaved") return { kind: "trouble", text: savedWords.notSaved };
  if (open.access === "elsewhere") return { kind: "elsewhere", text: savedWords.elsewhere };
  if (open.saving.kind === "saving") return { kind: "quiet", text: savedWords.saving };
  return { kind: "quiet", text: savedWords.saved(timeText(open.saving.at)) };
}
