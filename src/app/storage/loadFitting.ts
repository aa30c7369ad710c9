import type { Fitting } from "../../document/fitting";
import type { FittingProblem } from "../../document/fittingProblem";
import { type Drawers, failureOf } from "./drawers";
import type { FittingHistory, ListedFitting, ListOutcome, LoadOutcome, NotRead } from "./fittingOutcome";
import { entryOf, type FittingRecord, readRecord } from "./fittingRecord";
import { readText } from "./fittingText";
import { readHistory } from "./historyRecord";
import { layInQuarantine, type QuarantineSource, rawText } from "./quarantine";

/** Everything there is, readable or not, in no particular order. */
export async function listFittings(drawers: Drawers): Promise<ListOutcome> {
  try {
    const found = await drawers.look((open) => open.readAll("fittings"));
    return { kind: "listed", fittings: found.map(({ key, value }) => listedFitting(key, value)) };
  } catch (thrown) {
    return notRead(thrown);
  }
}

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

export function notRead(thrown: unknown): NotRead {
  const { reason, message } = failureOf(thrown);
  return { kind: "notRead", reason, detail: message };
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
    await drawers.change((open) => layInQuarantine(open, source, { key, value }, now));
    return true;
  } catch {
    return false;
  }
}

function listedFitting(id: string, value: unknown): ListedFitting {
  const reading = readRecord(id, value);
  if (reading.kind === "newer") return { kind: "newer", id, rawText: rawText(value) };
  if (reading.kind === "damaged") return { kind: "unreadable", id, rawText: rawText(value) };
  const { record } = reading;
  const read = readText(record.text);
  if (read.kind === "newer") return { kind: "newer", id, rawText: record.text };
  if (read.kind === "unreadable") return { kind: "unreadable", id, rawText: rawText(value) };
  return { kind: "fitting", entry: entryOf(record), fitting: read.fitting };
}
