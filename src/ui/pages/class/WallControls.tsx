import { levelNames } from "../../../core/body/vocabulary";
import { pageAddress } from "../../kit/page";
import { levelWords } from "../../../text/pictures";
import { wallControls, wallWords } from "../../../text/wall";
import type { FullScreen } from "../../kit/useScreen";
import type { WallKey, WallState } from "./wallState";
import type { WallView } from "./wallView";

/** The strip at the foot for whoever stands beside the wall: everything the keys do, each with its key. */
interface WallControlsProps {
  readonly state: WallState;
  readonly view: WallView;
  readonly hasOwn: boolean;
  readonly screen: FullScreen;
  readonly helpOpen: boolean;
  readonly act: (key: WallKey) => void;
}

export function WallControls({ state, view, hasOwn, screen, helpOpen, act }: WallControlsProps) {
  const { place, count, unit, isCovered } = view;
  const isMadeUp = state.person !== "own";
  // Leaving shows the padding of the person's own fitting: only where it is shown already.
  const isOwnShown = !isMadeUp && !isCovered;
  return (
    <footer className="wall-controls">
      <div className="wall-group">
        <Control name={wallControls.back} mark="←" disabled={place === 1} onPress={() => act({ does: "back" })} />
        <Control
          name={wallControls.forward}
          mark="→"
          disabled={place === count}
          onPress={() => act({ does: "forward" })}
        />
      </div>
      <fieldset className="wall-group">
        <legend className="unseen">{wallControls.levels}</legend>
        {(["follow", ...levelNames] as const).map((level, i) => (
          <Control
            key={level}
            name={level === "follow" ? wallControls.follow : levelWords[level]}
            mark={String(i)}
            pressed={state.level === level}
            onPress={() => act({ does: "level", level })}
          />
        ))}
      </fieldset>
      <div className="wall-group wall-group-end">
        <Control
          name={isCovered ? wallControls.uncover : wallControls.cover}
          mark="C"
          main
          onPress={() => act({ does: "cover" })}
        />
        <Control
          name={isMadeUp ? wallControls.nextMadeUp : wallControls.madeUp}
          mark="M"
          onPress={() => act({ does: "madeUp" })}
        />
        {isMadeUp && hasOwn ? <Control name={wallControls.own} mark="O" onPress={() => act({ does: "own" })} /> : null}
        <Control name={wallControls.unit[unit]} mark="U" onPress={() => act({ does: "unit" })} />
        {screen.allowed ? (
          <Control
            name={screen.on ? wallControls.leaveFullScreen : wallControls.fullScreen}
            mark="F"
            onPress={() => act({ does: "fullScreen" })}
          />
        ) : null}
        <Control name={wallControls.keys} mark="K" keysOnly expanded={helpOpen} onPress={() => act({ does: "keys" })} />
        <a
          className="patch wall-control"
          href={pageAddress(hasOwn && !isOwnShown ? "fittings" : "padding")}
          aria-label={`${wallControls.leave}, ${wallWords.title}`}
        >
          {wallControls.leave}
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
  const kind = main ? " wall-control-main" : keysOnly ? " wall-control-keys" : "";
  return (
    <button
      type="button"
      className={`patch wall-control${kind}`}
      aria-disabled={disabled}
      aria-pressed={pressed}
      aria-expanded={expanded}
      // A pointer leaves the focus where it is, so that the space bar goes on meaning one piece on.
      onMouseDown={(event) => event.preventDefault()}
      onClick={onPress}
    >
      {name}
      <kbd className="wall-key" aria-hidden>
        {mark}
      </kbd>
    </button>
  );
}
