import { levelNames } from "../../../core/body/vocabulary";
import { type Page, pageAddress, pageBefore } from "../../kit/page";
import { levelWords } from "../../../text/pictures";
import { classControls, classWords } from "../../../text/classView";
import { remoteWords } from "../../../text/remote";
import type { FullScreen } from "../../kit/useScreen";
import type { ClassKey, ClassState } from "../../../app/classView/classState";
import type { ClassPerson } from "../../../app/classView/classPeople";
import type { ClassView } from "../../../app/classView/classView";
import { ClassControl } from "./ClassControl";
import type { PanelName } from "./OpenPanel";

/** The strip at the foot for whoever stands beside the class view: everything the keys do, each with its key. */
interface ClassControlsProps {
  readonly state: ClassState;
  readonly view: ClassView;
  /** The fitting that is open, where it has a plan. */
  readonly own: ClassPerson | null;
  readonly screen: FullScreen;
  readonly panel: PanelName;
  /** Without it the R key alone says how to share. */
  readonly hasRemote: boolean;
  readonly act: (key: ClassKey) => void;
}

export function ClassControls({ state, view, own, screen, panel, hasRemote, act }: ClassControlsProps) {
  const { place, count, unit, isCovered } = view;
  const isMadeUp = state.person !== "own";
  return (
    <footer className="class-controls">
      <div className="class-group">
        <ClassControl name={classControls.back} mark="←" disabled={place === 1} onPress={() => act({ does: "back" })} />
        <ClassControl
          name={classControls.forward}
          mark="→"
          disabled={place === count}
          onPress={() => act({ does: "forward" })}
        />
      </div>
      <fieldset className="class-group">
        <legend className="unseen">{classControls.levels}</legend>
        {(["follow", ...levelNames] as const).map((level, i) => (
          <ClassControl
            key={level}
            name={level === "follow" ? classControls.follow : levelWords[level]}
            mark={String(i)}
            pressed={state.level === level}
            onPress={() => act({ does: "level", level })}
          />
        ))}
      </fieldset>
      <div className="class-group class-group-end">
        <ClassControl
          name={isCovered ? classControls.uncover : classControls.cover}
          mark="C"
          main
          onPress={() => act({ does: "cover" })}
        />
        <ClassControl
          name={isMadeUp ? classControls.nextMadeUp : classControls.madeUp}
          mark="M"
          onPress={() => act({ does: "madeUp" })}
        />
        {isMadeUp && own !== null ? (
          <ClassControl name={classControls.own} mark="O" onPress={() => act({ does: "own" })} />
        ) : null}
        <ClassControl name={classControls.unit[unit]} mark="U" onPress={() => act({ does: "unit" })} />
        {screen.allowed ? (
          <ClassControl
            name={screen.on ? classControls.leaveFullScreen : classControls.fullScreen}
            mark="F"
            onPress={() => act({ does: "fullScreen" })}
          />
        ) : null}
        <ClassControl
          name={classControls.session}
          mark="S"
          expanded={panel === "session"}
          onPress={() => act({ does: "session" })}
        />
        <ClassControl
          name={classControls.note}
          mark="N"
          expanded={panel === "note"}
          onPress={() => act({ does: "note" })}
        />
        {hasRemote ? (
          <ClassControl
            name={remoteWords.control}
            mark="R"
            expanded={panel === "remote"}
            onPress={() => act({ does: "remote" })}
          />
        ) : null}
        <ClassControl
          name={classControls.coverPerson}
          mark="X"
          keysOnly
          pressed={view.covers.person}
          onPress={() => act({ does: "coverPerson" })}
        />
        <ClassControl
          name={classControls.coverForm}
          mark="Z"
          keysOnly
          pressed={view.covers.form}
          onPress={() => act({ does: "coverForm" })}
        />
        <ClassControl
          name={classControls.keys}
          mark="K"
          keysOnly
          expanded={panel === "keys"}
          onPress={() => act({ does: "keys" })}
        />
        <a
          className="patch class-control"
          href={pageAddress(pageAfter(own, isMadeUp, isCovered))}
          aria-label={`${classControls.leave}, ${classWords.title}`}
        >
          {classControls.leave}
        </a>
      </div>
    </footer>
  );
}

/** Back where one came from; a person who was measured and is not shown here is not shown by leaving either. */
function pageAfter(own: ClassPerson | null, isMadeUp: boolean, isCovered: boolean): Page {
  const before = pageBefore();
  const wouldShow = before === null || !["home", "fittings"].includes(before);
  const mayShow = own === null || own.isMadeUp || (!isMadeUp && !isCovered);
  if (wouldShow && !mayShow) return "fittings";
  return before === null || before === "class" ? "padding" : before;
}
