import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { tapeParts } from "../../app/padProgress";
import { type LengthUnit, tapeStep } from "../../core/lengthText";
import { useAnnounce } from "../Announcer";
import { useWakeLock } from "../padding/useWakeLock";
import { remaining } from "../readout/remaining";
import { remainingWords } from "../readout/remainingWords";
import { levelWords } from "../text/pictures";
import { wallSentence, wallWords } from "../text/wall";
import { useDerived } from "../useDerived";
import { useUnit } from "../useStore";
import { useFullScreen } from "./useFullScreen";
import { useWallKeys } from "./useWallKeys";
import "./wall.css";
import { WallControls } from "./WallControls";
import { WallFigures } from "./WallFigures";
import { WallHead } from "./WallHead";
import { WallHelp } from "./WallHelp";
import { WallLines } from "./WallLines";
import { WallTakeHome } from "./WallTakeHome";
import type { WallKey } from "./wallKey";
import { madeUpPeople, madeUpPerson, type WallPerson } from "./wallPeople";
import { WallSection } from "./WallSection";
import { wallAfter, type WallRoom, type WallState, wallStart } from "./wallState";
import { type WallView, wallView } from "./wallView";

/**
 * The view for the wall of a classroom: the plan piece by piece, large, moved by keys or a clicker. It reads the fitting
 * and never writes into it; what happens here is forgotten on leaving.
 */
export function WallPlace() {
  const own = useOwnPerson();
  const ownPinned = own === null ? null : own.progress.pinnedCount;
  const [state, setState] = useState<WallState>(() => wallStart({ pieces: 0, ownPinned, madeUpPeople }));
  const madeUp = useMemo(() => (state.person === "own" ? null : madeUpPerson(state.person)), [state.person]);
  const fallback = useMemo(() => madeUpPerson(0), []);
  const person = madeUp ?? own ?? fallback;
  const pieces = person.plan.pieces.length;
  const room = useMemo((): WallRoom => ({ pieces, ownPinned, madeUpPeople }), [pieces, ownPinned]);
  const ownUnit = useUnit();
  const [unit, setUnit] = useState<LengthUnit>(ownUnit);
  const [panel, setPanel] = useState<"none" | "keys" | "takeHome">("none");
  const [lettersWork, setLettersWork] = useState(true);
  const screen = useFullScreen();
  const { toggle: toggleScreen } = screen;
  useWakeLock(true);

  const act = useCallback(
    (key: WallKey) => {
      if (key.does === "unit") setUnit((before) => (before === "in" ? "cm" : "in"));
      else if (key.does === "fullScreen") toggleScreen();
      else if (key.does === "keys" || key.does === "takeHome") {
        const { does } = key;
        setPanel((before) => (before === does ? "none" : does));
      } else setState((before) => wallAfter(before, key, room));
    },
    [toggleScreen, room],
  );
  useWallKeys(act, lettersWork);

  const view = useMemo(() => wallView(person, state, unit), [person, state, unit]);
  if (view === null) return null;
  return (
    <div className="wall" data-figures={state.figures}>
      <WallHead person={person} whose={state.person === "own" ? "own" : "madeUp"} view={view} />
      <div className="wall-stage">
        {view.scene === "lines" ? (
          <WallLines view={view} />
        ) : (
          <>
            <WallSection view={view} />
            <WallFigures view={view} />
          </>
        )}
        {panel === "keys" ? (
          <WallHelp
            lettersWork={lettersWork}
            onLetters={setLettersWork}
            onTakeHome={person.takeHome === null ? null : () => setPanel("takeHome")}
            onClose={() => setPanel("none")}
          />
        ) : null}
        {panel === "takeHome" && person.takeHome !== null ? (
          <WallTakeHome fitting={person.takeHome} onClose={() => setPanel("none")} />
        ) : null}
      </div>
      <WallControls
        state={state}
        view={view}
        hasOwn={own !== null}
        screen={screen}
        helpOpen={panel === "keys"}
        act={act}
      />
      <Spoken view={view} whose={person.name} />
    </div>
  );
}

function useOwnPerson(): WallPerson | null {
  const { planning, progress } = useDerived();
  return useMemo(
    () =>
      planning.kind === "planned" && progress !== null
        ? { name: wallWords.own, plan: planning.plan, progress, takeHome: null }
        : null,
    [planning, progress],
  );
}

/** Says after each step what the wall shows, and first who it is where that changed; covered figures are not said either. */
function Spoken({ view, whose }: { readonly view: WallView; readonly whose: string }) {
  const { level, step, readings, isRead, isCovered, unit } = view;
  const announce = useAnnounce();
  const isLines = view.scene === "lines";
  const where = isLines ? wallWords.markLines : step === 0 ? wallWords.bareForm : wallWords.after(step);
  const parts =
    isCovered || isLines
      ? []
      : tapeParts.map((part) => {
          const [wanted, now] = [level.body[part].value, readings[part]];
          const standing = isRead[part] ? "read" : "bare";
          const words = remainingWords({ part, wanted, now, standing }, tapeStep[unit]);
          return remaining(wanted, now).kind === "there" ? `${wallWords.parts[part]} ${words}` : words;
        });
  const sentence = wallSentence(where, levelWords[level.name], parts);
  const figures = isCovered ? wallWords.figuresCovered : wallWords.figuresShown;
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
