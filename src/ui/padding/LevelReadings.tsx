import { type KeyboardEvent, useRef, useState } from "react";
import { levelWithReadings, type PadProgress, readingName, type TapePart, tapeParts } from "../../app/padProgress";
import { readingDraftKey } from "../../app/commands";
import { type LevelName, levelNames } from "../../core/body/vocabulary";
import { parseLength } from "../../core/lengthText";
import type { Plan } from "../../core/plan/plan";
import type { Millimetres } from "../../core/units";
import { FractionPad } from "../field/FractionPad";
import { levelWords } from "../text/pictures";
import { paddingWords } from "../text/padding";
import { useDispatch, useFitting } from "../useStore";
import { ReadingLine } from "./ReadingLine";

/**
 * One level under the tape: what is wanted, what it reads now, and what is left, all round and front and back apart,
 * moving while a reading is typed.
 */
export interface LevelReadingsProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

export function LevelReadings({ plan, progress, level, onLevel }: LevelReadingsProps) {
  const { drafts, unit } = useFitting();
  const dispatch = useDispatch();
  const [active, setActive] = useState<TapePart>("girth");
  const draftOf = (part: TapePart): string | undefined => drafts.other[readingDraftKey(readingName(level, part))];
  const typedLength = (part: TapePart): Millimetres | undefined => {
    const text = draftOf(part);
    const length = text === undefined ? null : parseLength(text, unit);
    return length?.ok ? length.value : undefined;
  };
  const now = levelWithReadings(progress.now[level], {
    girth: typedLength("girth"),
    frontArc: typedLength("frontArc"),
    backArc: typedLength("backArc"),
  });
  const planned = plan.levels.find(({ name }) => name === level);
  if (planned === undefined) return null;
  const isLastOn = progress.pinnedCount > 0;
  const activeText = draftOf(active) ?? "";

  return (
    <section className="readings" aria-label={paddingWords.readings}>
      <LevelTabs level={level} onLevel={onLevel} />
      <div className="readings-body" id="readings-panel" role="tabpanel" aria-label={levelWords[level]}>
        <div className="reading-lines">
          {tapeParts.map((part) => (
            <ReadingLine
              key={`${level}.${part}`}
              level={level}
              part={part}
              wanted={planned.body[part]}
              now={now[part]}
              draft={draftOf(part)}
              isLastOn={isLastOn}
              onActive={() => setActive(part)}
            />
          ))}
        </div>
        <FractionPad
          unit={unit}
          text={activeText}
          untouched={activeText === ""}
          onText={(text) =>
            dispatch({ does: "draft", of: "other", key: readingDraftKey(readingName(level, active)), text: text === "" ? null : text })
          }
        />
      </div>
    </section>
  );
}

interface LevelTabsProps {
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

function LevelTabs({ level, onLevel }: LevelTabsProps) {
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.key === "ArrowRight" || event.key === "ArrowDown" ? 1 : event.key === "ArrowLeft" || event.key === "ArrowUp" ? -1 : 0;
    if (by === 0) return;
    event.preventDefault();
    const next = levelNames[(levelNames.indexOf(level) + by + levelNames.length) % levelNames.length];
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
