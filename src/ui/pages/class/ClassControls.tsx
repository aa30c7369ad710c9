import { levelNames } from "../../../core/body/vocabulary";
import { pageAddress } from "../../kit/page";
import { levelWords } from "../../../text/pictures";
import { classControls, classWords } from "../../../text/classView";
import { remoteWords } from "../../../text/remote";
import type { FullScreen } from "../../kit/useScreen";
import type { ClassKey, ClassState } from "../../../app/classView/classState";
import type { ClassView } from "../../../app/classView/classView";
import type { PanelName } from "./OpenPanel";

/** The strip at the foot for whoever stands beside the class view: everything the keys do, each with its key. */
interface ClassControlsProps {
  readonly state: ClassState;
  readonly view: ClassView;
  readonly hasOwn: boolean;
  readonly screen: FullScreen;
  readonly panel: PanelName;
  readonly hasRemote: boolean;
  readonly act: (key: ClassKey) => void;
}

export function ClassControls({ state, view, hasOwn, screen, panel, hasRemote, act }: ClassControlsProps) {
  const { place, count, unit, isCovered } = view;
  const isMadeUp = state.person !== "own";
  // Leaving shows the padding of the person's own fitting: only where it is shown already.
  const isOwnShown = !isMadeUp && !isCovered;
  return (
    <footer className="class-controls">
      <div className="class-group">
        <Control name={classControls.back} mark="←" disabled={place === 1} onPress={() => act({ does: "back" })} />
        <Control
          name={classControls.forward}
          mark="→"
          disabled={place === count}
          onPress={() => act({ does: "forward" })}
        />
      </div>
      <fieldset className="class-group">
        <legend className="unseen">{classControls.levels}</legend>
        {(["follow", ...levelNames] as const).map((level, i) => (
          <Control
            key={level}
            name={level === "follow" ? classControls.follow : levelWords[level]}
            mark={String(i)}
            pressed={state.level === level}
            onPress={() => act({ does: "level", level })}
          />
        ))}
      </fieldset>
      <div className="class-group class-group-end">
        <Control
          name={isCovered ? classControls.uncover : classControls.cover}
          mark="C"
          main
          onPress={() => act({ does: "cover" })}
        />
        <Control
          name={isMadeUp ? classControls.nextMadeUp : classControls.madeUp}
          mark="M"
          onPress={() => act({ does: "madeUp" })}
        />
        {isMadeUp && hasOwn ? <Control name={classControls.own} mark="O" onPress={() => act({ does: "own" })} /> : null}
        <Control name={classControls.unit[unit]} mark="U" onPress={() => act({ does: "unit" })} />
        {screen.allowed ? (
          <Control
            name={screen.on ? classControls.leaveFullScreen : classControls.fullScreen}
            mark="F"
            onPress={() => act({ does: "fullScreen" })}
          />
        ) : null}
        <Control
          name={classControls.session}
          mark="S"
          expanded={panel === "session"}
          onPress={() => act({ does: "session" })}
        />
        <Control name={classControls.note} mark="N" expanded={panel === "note"} onPress={() => act({ does: "note" })} />
        {hasRemote ? (
          <Control
            name={remoteWords.control}
            mark="R"
            expanded={panel === "remote"}
            onPress={() => act({ does: "remote" })}
          />
        ) : null}
        <Control
          name={classControls.keys}
          mark="K"
          keysOnly
          expanded={panel === "keys"}
          onPress={() => act({ does: "keys" })}
        />
        <a
          className="patch class-control"
          href={pageAddress(hasOwn && !isOwnShown ? "fittings" : "padding")}
          aria-label={`${classControls.leave}, ${classWords.title}`}
        >
          {classControls.leave}
        </a>
      </div>
    </footer>
  );
}

interface ControlProps {
  readonly name: string;
  /** The key that does the same. */
  readonly mark: string;
  readonly onPress: () => void;
  readonly main?: boolean;
  /** Of use only where there are keys. */
  readonly keysOnly?: boolean;
  readonly disabled?: boolean;
  readonly pressed?: boolean;
  readonly expanded?: boolean;
}

function Control(props: ControlProps) {
  const { name, mark, onPress, main = false, keysOnly = false, disabled = false, pressed, expanded } = props;
  const kind = main ? " class-control-main" : keysOnly ? " class-control-keys" : "";
  return (
    <button
      type="button"
      className={`patch class-control${kind}`}
      aria-disabled={disabled}
      aria-pressed={pressed}
      aria-expanded={expanded}
      // A pointer leaves the focus where it is, so that the space bar goes on meaning one piece on.
      onMouseDown={(event) => event.preventDefault()}
      onClick={onPress}
    >
      {name}
      <kbd className="class-key" aria-hidden>
        {mark}
      </kbd>
    </button>
  );
}
