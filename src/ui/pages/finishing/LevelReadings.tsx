import { type KeyboardEvent, useRef } from "react";
import {
  isConfirmed,
  type PadProgress,
  readingName,
  type TapePart,
  tapeParts,
} from "../../../app/progress/padProgress";
import { type LevelName, levelNames } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { tapeSpan } from "../../drawing/tapeScene";
import { levelWords } from "../../../text/pictures";
import { paddingWords } from "../../../text/padding";
import { touchQuery, useMediaQuery } from "../../kit/useScreen";
import { useLengths } from "../../kit/useStore";
import { useReadingsKept, useReadingsSaid, useRefused } from "./readingsOverCover";
import "./padding.css";
import { ReadingLine } from "./ReadingLine";

/**
 * One level under the tape: what it reads on the person, what it reads now, and what is left, all around and front and back apart,
 * moving while a reading is typed.
 */
interface LevelReadingsProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
  /** Which stretch the caret is in, so that the pad knows where to write. */
  readonly onPart: (part: TapePart) => void;
}

export function LevelReadings({ plan, progress, level, onLevel, onPart }: LevelReadingsProps) {
  const isTouch = useMediaQuery(touchQuery);
  const { write } = useLengths();
  const refused = useRefused();
  useReadingsKept(level);
  useReadingsSaid(plan, progress);
  const planned = plan.levels.find(({ name }) => name === level);
  if (planned === undefined) return null;
  const { girth } = progress.now[level];
  const span = tapeSpan(tapeParts.map((part) => planned.body[part].value - plan.bareForm[level][part]));

  return (
    <section className="readings" aria-label={paddingWords.readings}>
      <p className="readings-state">
        <span className="quiet">{paddingWords.nowCovered}.</span>{" "}
        {isConfirmed(girth) ? null : <strong>{paddingWords.readNow(levelWords[level], write(girth.value))}</strong>}
      </p>
      <LevelTabs level={level} onLevel={onLevel} />
      <div className="reading-lines" id="readings-panel" role="tabpanel" aria-label={levelWords[level]}>
        {tapeParts.map((part) => (
          <ReadingLine
            key={`${level}.${part}`}
            level={level}
            part={part}
            wanted={planned.body[part]}
            kept={progress.now[level]}
            span={span}
            {...refused(readingName(level, part))}
            isTouch={isTouch}
            onPart={onPart}
          />
        ))}
      </div>
    </section>
  );
}

/** Which tab a key leads to, counted on past the last and back before the first; another key leads nowhere. */
function tabAfter(key: string, at: number): number | null {
  if (key === "ArrowRight" || key === "ArrowDown") return at + 1;
  if (key === "ArrowLeft" || key === "ArrowUp") return at - 1;
  return key === "Home" ? 0 : key === "End" ? -1 : null;
}

interface LevelTabsProps {
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

function LevelTabs({ level, onLevel }: LevelTabsProps) {
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const at = levelNames.indexOf(level);
    const to = tabAfter(event.key, at);
    if (to === null) return;
    event.preventDefault();
    const next = levelNames.at(to % levelNames.length);
    if (next === undefined) return;
    onLevel(next);
    list.current?.querySelector<HTMLElement>(`[data-level="${next}"]`)?.focus();
  };
  return (
    <div className="segments" role="tablist" aria-label={paddingWords.levelTabs} ref={list} onKeyDown={onKeyDown}>
      {levelNames.map((name) => (
        <button
          key={name}
          type="button"
          role="tab"
          className="segment"
          data-level={name}
          aria-selected={name === level}
          aria-controls="readings-panel"
          tabIndex={name === level ? 0 : -1}
          onClick={() => onLevel(name)}
        >
          {levelWords[name]}
        </button>
      ))}
    </div>
  );
}
