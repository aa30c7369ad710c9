import { parseLength } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { useDraft, useLengths } from "../useStore";

/** What is written for a reading, and what it means. */
export function useTypedLength(draftKey: string): {
  readonly text: string | undefined;
  readonly length: Millimetres | null;
} {
  const { unit } = useLengths();
  const text = useDraft("other", draftKey);
  const typed = text === undefined ? null : parseLength(text, unit);
  return { text, length: typed?.ok ? typed.value : null };
}
