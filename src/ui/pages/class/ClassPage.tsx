import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { ClassKey } from "../../../app/classView/classState";
import { classPerson, type ClassPerson } from "../../../app/classView/classPeople";
import type { ClassView } from "../../../app/classView/classView";
import { classWords } from "../../../text/classView";
import { sampleTitle } from "../../../text/workroom";
import { useAnnounce } from "../../kit/Announcer";
import { useAnswer } from "../../kit/useAnswer";
import { useDerived } from "../../kit/useDerived";
import { useFullScreen, useWakeLock } from "../../kit/useScreen";
import { useFitting } from "../../kit/useStore";
import { ClassControls } from "./ClassControls";
import { ClassStage } from "./ClassStage";
import { ClassTypedLine, focusTyped } from "./ClassTyped";
import { ClassFoot, ClassHead, classSaid } from "./ClassWords";
import { isPanel, OpenPanel, type PanelName, panelAfterMove } from "./OpenPanel";
import { useClassKeys } from "./useClassKeys";
import { useClassRemote } from "./useClassRemote";
import { useClassScreen } from "./useClassScreen";
import { useClassTimer } from "./useClassTimer";
import "./class.css";

/**
 * The view for the class view of a classroom: the plan piece by piece, large, moved by keys or a clicker. It reads the fitting
 * and never writes into it; what happens here is forgotten on leaving.
 */
export function ClassPage() {
  const own = useOwnPerson();
  return own === "working" ? null : <ClassScreen own={own} />;
}

function ClassScreen({ own }: { readonly own: ClassPerson | null }) {
  const { state, person, view, move, turnUnit, keepTyped } = useClassScreen(own);
  const [panel, setPanel] = useState<PanelName>("none");
  const [lettersWork, setLettersWork] = useState(true);
  const screen = useFullScreen();
  const { toggle: toggleScreen } = screen;
  useWakeLock(true);
  const timer = useClassTimer(`${state.person} ${state.step}`);
  const { toggle: toggleTimer } = timer;

  const act = useCallback(
    (key: ClassKey) => {
      if (key.does === "unit") turnUnit();
      else if (key.does === "fullScreen") toggleScreen();
      else if (key.does === "timer") toggleTimer();
      else if (key.does === "type") focusTyped();
      else if (isPanel(key)) {
        const { does } = key;
        setPanel((before) => (before === does ? "none" : does));
      } else {
        setPanel((before) => panelAfterMove(before, key));
        move(key);
      }
    },
    [toggleScreen, toggleTimer, turnUnit, move],
  );
  useClassKeys(act, lettersWork);

  const remote = useClassRemote(
    view === null ? "" : classSaid(view, view.step).headline,
    useCallback((does) => act({ does }), [act]),
  );
  if (view === null) return null;
  return (
    <div className="class-view" data-figures={state.figures}>
      <ClassHead person={person} view={view} timer={timer} />
      <div className="class-stage">
        <ClassStage view={view} />
        <ClassTypedLine view={view} keep={keepTyped} />
        <OpenPanel
          open={panel}
          person={person}
          view={view}
          timer={timer}
          remote={remote}
          letters={{ lettersWork, onLetters: setLettersWork }}
          onOpen={setPanel}
        />
      </div>
      <ClassFoot view={view} />
      <ClassControls
        state={state}
        view={view}
        own={own}
        screen={screen}
        panel={panel}
        hasRemote={remote.isOffered}
        act={act}
      />
      <Spoken view={view} whose={sampleTitle(person.name)} />
    </div>
  );
}

/** The fitting that is open, once it is known where its work stands. */
function useOwnPerson(): ClassPerson | null | "working" {
  const derived = useDerived();
  const fitting = useFitting();
  const { answer, isWorking } = useAnswer("step");
  const own = useMemo(() => classPerson(derived, fitting, answer), [derived, fitting, answer]);
  return isWorking && answer === null && fitting.work.length > 0 ? "working" : own;
}

/** Says after each step the sentence that the class view shows, and first who it is where that changed; covered figures are not said either. */
function Spoken({ view, whose }: { readonly view: ClassView; readonly whose: string }) {
  const { isCovered, step } = view;
  const announce = useAnnounce();
  const { headline, rest } = classSaid(view, step);
  const sentence = `${headline} ${rest}`.trim();
  const figures = isCovered ? classWords.figuresCovered : classWords.figuresShown;
  const said = useRef({ sentence, whose, figures });
  useEffect(() => {
    const before = said.current;
    if (before.sentence === sentence && before.whose === whose && before.figures === figures) return;
    said.current = { sentence, whose, figures };
    const who = before.whose === whose || whose === "" ? [] : [`${whose}.`];
    announce([...who, ...(before.figures === figures ? [] : [figures]), sentence].join(" "));
  }, [sentence, whose, figures, announce]);
  return null;
}
