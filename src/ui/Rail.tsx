import { useEffect } from "react";
import { type Place, placeAddress, workPlaces } from "./place";
import { placeNames, unitMarks, unitNames, workroomWords } from "./text/workroom";
import { useAnnounce } from "./Announcer";
import { SavedMark } from "./library/SavedMark";
import { usePlaceStates } from "./usePlaceStates";
import { useDispatch, useFittingState, useStoreItself, useUnit } from "./useStore";

/** The band: a tape down its edge, the places hung on it, and what is at hand everywhere: unit, undo, paper. */
export function Rail({ place }: { readonly place: Place }) {
  const states = usePlaceStates();
  return (
    <header className="rail">
      <a className="rail-name" href={placeAddress("door")} aria-current={place === "door" ? "page" : undefined}>
        <NameMark />
        {placeNames.door}
      </a>
      <nav className="rail-places" aria-label={workroomWords.places}>
        <ul>
          {workPlaces.map((name) => (
            <li key={name}>
              <a className="rail-label" href={placeAddress(name)} aria-current={place === name ? "page" : undefined}>
                <span className="rail-label-name">{placeNames[name]}</span>
                <span className="rail-label-state">{states[name]}</span>
              </a>
            </li>
          ))}
          {(["print", "wall"] as const).map((name) => (
            <li key={name}>
              <a
                className={`rail-label rail-label-${name === "print" ? "paper" : name}`}
                href={placeAddress(name)}
                aria-current={place === name ? "page" : undefined}
              >
                <span className="rail-label-name">{placeNames[name]}</span>
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <RailTools />
    </header>
  );
}

function RailTools() {
  return (
    <div className="rail-tools">
      <SavedMark />
      <UnitSwitch />
      <UndoRedo />
    </div>
  );
}

export function UnitSwitch() {
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
  const announce = useAnnounce();
  const canUndo = useFittingState((state) => state.past.length > 0);
  const canRedo = useFittingState((state) => state.future.length > 0);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z" || isTyping(event.target)) return;
      event.preventDefault();
      if (event.shiftKey) store.redo();
      else store.undo();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [store]);

  const undo = () => {
    store.undo();
    announce(workroomWords.undone);
  };
  const redo = () => {
    store.redo();
    announce(workroomWords.redone);
  };
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

/** The mark of the tool: a pad pinned under a tape. */
function NameMark() {
  return (
    <svg className="rail-mark" width="34" height="34" viewBox="0 0 34 34" aria-hidden focusable="false">
      <path className="rail-mark-pad" d="M6 14 C6 6 28 6 28 14 C30 24 24 31 17 31 C10 31 4 24 6 14 Z" />
      <path className="rail-mark-tape" d="M1 17 C10 23 24 23 33 17 L33 22 C24 28 10 28 1 22 Z" />
      <path className="rail-mark-tick" d="M9 21 V24 M13 22.2 V25.2 M17 22.6 V26.6 M21 22.2 V25.2 M25 21 V24" />
      <circle className="rail-mark-pin" cx="17" cy="11" r="3" />
    </svg>
  );
}
