import type { Fitting } from "../../document/fitting";
import type { FittingProblem } from "../../document/fittingProblem";
import type { Drawers } from "./drawers";
import type { FittingHistory, LoadOutcome } from "./fittingOutcome";
import { entryOf, type FittingRecord, readRecord } from "./fittingRecord";
import { readText } from "./fittingText";
import { readHistory } from "./historyRecord";
import { notRead } from "./listFittings";
import { layInQuarantine, type QuarantineSource, rawText } from "./quarantine";

/** Opens one fitting with its steps to undo. What cannot be read stays where it is, and a copy goes into quarantine. */
export async function loadFitting(drawers: Drawers, id: string, now: string): Promise<LoadOutcome> {
  try {
    const { found, steps } = await drawers.look(async (open) => ({
      found: await open.read("fittings", id),
      steps: await open.read("histories", id),
    }));
    if (found === undefined) return { kind: "missing", id };
    const quarantine = (source: QuarantineSource, value: unknown) => tryQuarantine(drawers, source, id, value, now);
    const reading = readRecord(id, found);
    if (reading.kind === "newer") return { kind: "newer", id, asUnderstood: null, rawText: rawText(found) };
    if (reading.kind === "damaged") return await unreadable(id, found, [], quarantine);
    const read = readText(reading.record.text);
    if (read.kind === "newer")
      return { kind: "newer", id, asUnderstood: read.asUnderstood, rawText: reading.record.text };
    if (read.kind === "unreadable") return await unreadable(id, found, read.problems, quarantine);
    return await loaded(reading.record, read.fitting, steps, quarantine);
  } catch (thrown) {
    return notRead(thrown);
  }
}

type Quarantine = (source: QuarantineSource, value: unknown) => Promise<boolean>;

async function loaded(
  record: FittingRecord,
  fitting: Fitting,
  steps: unknown,
  quarantine: Quarantine,
): Promise<LoadOutcome> {
  const history = steps === undefined ? { past: [], future: [] } : readSteps(steps, record);
  if (history === null) await quarantine("history", steps);
  return {
    kind: "loaded",
    entry: entryOf(record),
    fitting,
    history: history ?? { past: [], future: [] },
    historyLost: history === null,
  };
}

async function unreadable(
  id: string,
  found: unknown,
  problems: readonly FittingProblem[],
  quarantine: Quarantine,
): Promise<LoadOutcome> {
  return { kind: "unreadable", id, problems, rawText: rawText(found), quarantined: await quarantine("fitting", found) };
}

function readSteps(steps: unknown, record: FittingRecord): FittingHistory | null {
  const texts = readHistory(steps, record.text, record.revision);
  if (texts === null) return null;
  const read = (list: readonly string[]): readonly Fitting[] =>
    list.flatMap((text) => {
      const step = readText(text);
      return step.kind === "read" ? [step.fitting] : [];
    });
  const history = { past: read(texts.past), future: read(texts.future) };
  const isWhole = history.past.length === texts.past.length && history.future.length === texts.future.length;
  return isWhole ? history : null;
}

/** A full disk must not keep a person from being told what is wrong, so a failed copy is only reported. */
async function tryQuarantine(
  drawers: Drawers,
  source: QuarantineSource,
  key: string,
  value: unknown,
  now: string,
): Promise<boolean> {
  try {
    await drawers.change(async (open) => {
      await layInQuarantine(open, source, { key, value }, now);
      // The list must not go on showing what cannot be opened as if it could.
      if (source === "fitting") await open.clear("summaries", key);
    });
    return true;
  } catch {
    return false;
  }
}
