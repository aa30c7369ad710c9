import type { ObjectStores } from "./objectStores";
import type { FittingHistory, LoadOutcome } from "./fittingOutcome";
import { entryOf, type FittingRecord } from "./fittingRecord";
import { readText } from "./fittingText";
import { readHistory } from "./historyRecord";
import type { Change } from "./keptChange";
import { layInQuarantine, type QuarantineSource } from "./quarantine";
import { readStored } from "./storedFitting";

const noSteps: FittingHistory = { past: [], future: [] };

/** Opens one fitting with its steps to undo. What cannot be read stays where it is, and a copy goes into quarantine. */
export async function loadFitting(stores: ObjectStores, change: Change, id: string, now: string): Promise<LoadOutcome> {
  const { value, steps } = await stores.look(async (open) => ({
    value: await open.read("fittings", id),
    steps: await open.read("histories", id),
  }));
  if (value === undefined) return { kind: "missing", id };
  /** A full disk must not keep a person from being told what is wrong, so a failed copy is only reported. */
  const quarantine = async (source: QuarantineSource, found: unknown): Promise<boolean> => {
    const done = await change(async (open) => {
      await layInQuarantine(open, source, { key: id, value: found }, now);
      // The list must not go on showing what cannot be opened as if it could.
      if (source === "fitting") await open.clear("summaries", id);
      return { kind: "copied" } as const;
    });
    return done.kind === "copied";
  };
  const stored = readStored(id, value);
  if (stored.kind === "newer") return stored;
  if (stored.kind === "unreadable") return { ...stored, quarantined: await quarantine("fitting", value) };
  const { record, fitting } = stored;
  const history = steps === undefined ? noSteps : readSteps(steps, record);
  if (history === null) await quarantine("history", steps);
  return {
    kind: "loaded",
    entry: entryOf(record),
    fitting,
    history: history ?? noSteps,
    historyLost: history === null,
  };
}

/** All of the steps, or null where they or one of them cannot be read. */
function readSteps(steps: unknown, { text, revision }: FittingRecord): FittingHistory | null {
  const texts = readHistory(steps, text, revision);
  if (texts === null) return null;
  const read = (list: readonly string[]) =>
    list.map(readText).flatMap((step) => (step.kind === "read" ? [step.fitting] : []));
  const history = { past: read(texts.past), future: read(texts.future) };
  const isWhole = history.past.length === texts.past.length && history.future.length === texts.future.length;
  return isWhole ? history : null;
}
