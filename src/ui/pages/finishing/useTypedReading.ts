import { readingDraftKey } from "../../../app/session/commands";
import {
  type LevelNow,
  levelWithReadings,
  type NowReading,
  readingName,
  type TapePart,
} from "../../../app/progress/padProgress";
import { parseLength } from "../../../core/lengthText";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Millimetres } from "../../../core/units";
import { useDraft, useDraftsSoon, useUnit } from "../../kit/useStore";

/** A stretch of the tape while readings are typed: what is written in its own field, and what the tape reads with it. */
export interface TypedReading {
  readonly draft: string | undefined;
  readonly now: NowReading;
}

/**
 * What is typed into the stretch itself counts at once; what is typed into the two others, from which it may follow, a
 * frame later, so that a letter draws one stretch anew before its frame and not three.
 */
export function useTypedReading(level: LevelName, part: TapePart, kept: LevelNow): TypedReading {
  const unit = useUnit();
  const own = readingDraftKey(readingName(level, part));
  const draft = useDraft("other", own);
  const drafts = useDraftsSoon().other;
  const typed = (other: TapePart): Millimetres | undefined => {
    const key = readingDraftKey(readingName(level, other));
    const text = key === own ? draft : drafts[key];
    const length = text === undefined ? null : parseLength(text, unit);
    return length?.ok ? length.value : undefined;
  };
  const now = levelWithReadings(kept, {
    girth: typed("girth"),
    frontArc: typed("frontArc"),
    backArc: typed("backArc"),
  });
  return { draft, now: now[part] };
}
