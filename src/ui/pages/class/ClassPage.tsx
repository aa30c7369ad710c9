import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { LengthUnit } from "../../../core/lengthText";
import { useAnnounce } from "../../kit/Announcer";
import { useFullScreen, useWakeLock } from "../../kit/useScreen";
import { classWords } from "../../../text/classView";
import { sampleTitle } from "../../../text/workroom";
import { useAnswer } from "../../kit/useAnswer";
import { useDerived } from "../../kit/useDerived";
import { useFitting, useUnit } from "../../kit/useStore";
import {
  classAfter,
  type ClassKey,
  type ClassRoom,
  classStart,
  type ClassState,
} from "../../../app/classView/classState";
import { useClassKeys } from "./useClassKeys";
import "./class.css";
import { ClassControls } from "./ClassControls";
import { ClassFoot, ClassHead, classSaid } from "./ClassWords";
import { isPanel, OpenPanel, type PanelName } from "./OpenPanel";
import { ClassStage } from "./ClassStage";
import { useClassRemote } from "./useClassRemote";
import { useClassTimer } from "./useClassTimer";
import { madeUpPeople, madeUpPerson, classPerson, type ClassPerson } from "../../../app/classView/classPeople";
import { type ClassView, classView } from "../../../app/classView/classView";

/**
 * The view for the class view of a classroom: the plan piece by piece, large, moved by keys or a clicker. It reads the fitting
 * and never writes into it; what happens here is forgotten on leaving.
 */
export function ClassPage() {
  const own = useOwnPerson();
  return own === "working" ? null : <ClassScreen own={own} />;
}

function ClassScreen({ own }: { readonly own: ClassPerson | null }) {
  const ownStep = own === null ? null : own.job.now;
  const [state, setState] = useState<ClassState>(() => classStart({ steps: 0, ownStep, madeUpPeople }));
  const person = usePerson(state.person, own);
  const steps = person.job.steps.length;
  const room = useMemo((): ClassRoom => ({ steps, ownStep, madeUpPeople }), [steps, ownStep]);
  const ownUnit = useUnit();
  const [unit, setUnit] = useState<LengthUnit>(ownUnit);
  const [panel, setPanel] = useState<PanelName>("none");
  const [lettersWork, setLettersWork] = useState(true);
  const screen = useFullScreen();
  const { toggle: toggleScreen } = screen;
  useWakeLock(true);
  const timer = useClassTimer(`${state.person} ${state.step}`);
  const { toggle: toggleTimer } = timer;

  const act = useCallback(
    (key: ClassKey) => {
      if (key.does === "unit") setUnit((before) => (before === "in" ? "cm" : "in"));
      else if (key.does === "fullScreen") toggleScreen();
      else if (key.does === "timer") toggleTimer();
      else if (isPanel(key)) {
        const { does } = key;
        setPanel((before) => (before === does ? "none" : does));
      } else setState((before) => classAfter(before, key, room));
    },
    [toggleScreen, toggleTimer, room],
  );
  useClassKeys(act, lettersWork);

  const view = useMemo(() => classView(person, state, unit), [person, state, unit]);
  const remote = useClassRemote(
    view === null ? "" : classSaid(view, view.step).headline,
    useCallback((does) => act({ does }), [act]),
  );
  if (view === null) return null;
  return (
    <div className="class-view" data-figures={state.figures}>
      <ClassHead person={person} whose={state.person === "own" ? "own" : "madeUp"} view={view} timer={timer} />
      <div className="class-stage">
        <ClassStage view={view} />
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
        hasOwn={own !== null}
        screen={screen}
        panel={panel}
        hasRemote={remote.isOffered}
        act={act}
      />
      <Spoken view={view} whose={sampleTitle(person.name)} />
    </div>
  );
}

/** Who stands in the class view: without an own plan a made-up person. */
function usePerson(shown: ClassState["person"], own: ClassPerson | null): ClassPerson {
  const madeUp = useMemo(() => (shown === "own" ? null : madeUpPerson(shown)), [shown]);
  const fallback = useMemo(() => madeUpPerson(0), []);
  return madeUp ?? own ?? fallback;
}

/** The person's own fitting, once it is known where its work stands. */
function useOwnPerson(): ClassPerson | null | "working" {
  const derived = useDerived();
  const fitting = useFitting();
  const { answer, isWorking } = useAnswer("step");
  const own = useMemo(() => classPerson(classWords.own, derived, fitting, answer), [derived, fitting, answer]);
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
    const first = [...(before.whose === whose ? [] : [`${whose}.`]), ...(before.figures === figures ? [] : [figures])];
    announce([...first, sentence].join(" "));
  }, [sentence, whose, figures, announce]);
  return null;
}
