import { checkSum } from "./checkSum";
import { fieldsOf } from "./fields";
import { type TextDelta, textAfter, textDelta } from "./textDelta";

/** The steps that can be undone and done again, each as a text. */
export interface TextHistory {
  /** Earlier states, oldest first: undo goes to the last of them. */
  readonly past: readonly string[];
  /** States that were undone, nearest first: redo goes to the first of them. */
  readonly future: readonly string[];
}

/**
 * Those steps as they lie in their store: each as the difference from its neighbor, walking away from the present. The
 * oldest go first, and a history that cannot be read never stands in the way of its fitting.
 */
export interface HistoryRecord {
  readonly format: typeof historyFormat;
  /** The revision of the fitting that these steps lead away from. */
  readonly revision: number;
  readonly past: readonly TextDelta[];
  readonly future: readonly TextDelta[];
  readonly check: string;
}

const historyFormat = 1;
/** An evening of measuring and pinning is some two hundred committed changes. */
const longestHistory = 200;
/** Characters of differences in either direction, so that a save stays quick however large the steps were. */
const largestHistory = 200_000;
/** Characters that opening may have to read again, all steps together: about half a second on a slow tablet. */
const longestReading = 2_000_000;

export function sealedHistory(present: string, history: TextHistory, revision: number): HistoryRecord {
  const past = deltasAwayFrom(present, history.past.toReversed());
  const future = deltasAwayFrom(present, history.future);
  return { format: historyFormat, revision, past, future, check: sealOf(present, revision, past, future) };
}

/** Whether these are the steps around this present text: whole, of this release, and of this revision. */
export function isHistoryOf(value: unknown, present: string, revision: number): value is HistoryRecord {
  const { format, revision: kept, past, future, check } = fieldsOf(value);
  if (format !== historyFormat || kept !== revision || !areDeltas(past) || !areDeltas(future)) return false;
  return check === sealOf(present, revision, past, future);
}

/** The steps around this present text, or nothing where they are not its own. */
export function readHistory(value: unknown, present: string, revision: number): TextHistory | null {
  if (!isHistoryOf(value, present, revision)) return null;
  const { past, future } = value;
  return { past: textsAwayFrom(present, past).toReversed(), future: textsAwayFrom(present, future) };
}

function deltasAwayFrom(present: string, texts: readonly string[]): readonly TextDelta[] {
  const steps: TextDelta[] = [];
  let room = largestHistory;
  let from = present;
  const most = Math.min(longestHistory, Math.floor(longestReading / (present.length + 1)));
  for (const text of texts.slice(0, most)) {
    const delta = rememberedDelta(from, text);
    room -= delta.middle.length;
    if (room < 0) break;
    steps.push(delta);
    from = text;
  }
  return steps;
}

/** All steps but the newest were worked out for the save before, from the very same strings. */
function rememberedDelta(from: string, to: string): TextDelta {
  const before = deltas.get(to);
  if (before?.from === from) return before.delta;
  const delta = textDelta(from, to);
  if (deltas.size > 2 * longestHistory) deltas.clear();
  deltas.set(to, { from, delta });
  return delta;
}

const deltas = new Map<string, { readonly from: string; readonly delta: TextDelta }>();

function textsAwayFrom(present: string, steps: readonly TextDelta[]): readonly string[] {
  let text = present;
  return steps.map((delta) => {
    text = textAfter(text, delta);
    return text;
  });
}

/** The present is sealed in as well: steps laid on another text than their own would lead to a fitting nobody made. */
function sealOf(present: string, revision: number, ...ways: readonly (readonly TextDelta[])[]): string {
  const steps = ways.map((deltas) => deltas.map(({ start, end, middle }) => [start, end, middle]));
  return checkSum(JSON.stringify([historyFormat, checkSum(present), revision, ...steps]));
}

const areDeltas = (value: unknown): value is readonly TextDelta[] =>
  Array.isArray(value) &&
  value
    .map(fieldsOf)
    .every(
      ({ start, end, middle }) => typeof start === "number" && typeof end === "number" && typeof middle === "string",
    );
