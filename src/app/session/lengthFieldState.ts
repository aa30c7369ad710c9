import { formatLength, type LengthProblem, type LengthStep, type LengthUnit, parseLength } from "../../core/lengthText";
import type { Result } from "../../core/result";
import type { Millimetres } from "../../core/units";
import { type Entry, entryLength } from "../../document/fitting";

/**
 * A length field holds two things that are never mixed: the text as it was typed, and the length it is taken to mean.
 * While a person types there is a draft; leaving the field or pressing Enter commits it. An entry in the unit at hand
 * shows as it was typed; in another unit it is written anew, and the entry itself stays what it was.
 */
interface LengthFieldInput {
  readonly entry: Entry | undefined;
  readonly draft: string | undefined;
  readonly unit: LengthUnit;
  readonly step: LengthStep;
  readonly onDraft: (text: string | null) => void;
  readonly onCommit: (text: string) => void;
}

export interface LengthFieldState {
  readonly text: string;
  /** What the text means now, drafts included; null where nothing is written. */
  readonly meaning: Result<Millimetres, LengthProblem> | null;
  /** Whether the text carries a unit other than the one at hand, so that its meaning is worth repeating. */
  readonly isForeign: boolean;
  readonly isDraft: boolean;
  readonly type: (text: string) => void;
  readonly commit: () => void;
}

export function lengthFieldState({ entry, draft, unit, step, onDraft, onCommit }: LengthFieldInput): LengthFieldState {
  const text = draft ?? entryText(entry, unit, step);
  const blank = text.trim() === "";
  return {
    text,
    meaning: blank
      ? null
      : draft === undefined && entry !== undefined
        ? entryLength(entry, unit)
        : parseLength(text, unit),
    isForeign: !blank && hasOtherUnit(text, unit),
    isDraft: draft !== undefined,
    type: onDraft,
    commit: () => {
      if (draft !== undefined) onCommit(draft);
    },
  };
}

/** The text a committed entry shows in a field whose unit stands beside it. */
export function entryText(entry: Entry | undefined, unit: LengthUnit, step: LengthStep): string {
  if (entry === undefined) return "";
  if (typeof entry === "number") return String(entry);
  if (!hasOtherUnit(entry, unit)) return entry.trim().replace(/\s*(?:"|''|[a-z.]+)$/i, "");
  const length = entryLength(entry, unit);
  return length.ok ? formatLength(length.value, step, "bare") : entry;
}

/** A text has a unit of its own that is not the one at hand when it means the same whatever the unit and not the same bare. */
function hasOtherUnit(text: string, unit: LengthUnit): boolean {
  const bare = text.trim().replace(/\s*(?:"|''|[a-z.]+)$/i, "");
  if (bare === text.trim()) return false;
  const [whole, alone] = [parseLength(text, unit), parseLength(bare, unit)];
  return whole.ok && (!alone.ok || alone.value !== whole.value);
}
