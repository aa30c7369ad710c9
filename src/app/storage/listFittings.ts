import { type Drawers, failureOf } from "./drawers";
import type { ListedFitting, ListOutcome, NotRead, OpenedFitting, ReadOutcome } from "./fittingOutcome";
import { entryOf, type FittingEntry, type FittingRecord, readRecord } from "./fittingRecord";
import { summaryEntry, writeSummary } from "./fittingSummary";
import { readText } from "./fittingText";
import { rawText } from "./quarantine";

/**
 * Everything there is, readable or not, in no particular order. The list comes out of the summaries; only what has none
 * is opened, and given one. Where many have none, what is listed so far is told meanwhile.
 */
export async function listFittings(drawers: Drawers, onSoFar: ListedSoFar = () => {}): Promise<ListOutcome> {
  try {
    const { keys, entries } = await drawers.look(async (open) => ({
      keys: await open.readKeys("fittings"),
      entries: new Map((await open.readAll("summaries")).map(({ key, value }) => [key, summaryEntry(key, value)])),
    }));
    const listed = keys.flatMap((key): readonly ListedFitting[] => {
      const entry = entries.get(key) ?? null;
      return entry === null ? [] : [{ kind: "fitting", entry }];
    });
    const withOpened = (opened: readonly Opened[]): readonly ListedFitting[] => [
      ...listed,
      ...opened.map(({ fitting }) => withoutText(fitting)),
    ];
    const unknown = keys.filter((key) => (entries.get(key) ?? null) === null);
    const opened = await opening(drawers, unknown, (soFar) =>
      onSoFar(withOpened(soFar), unknown.length - soFar.length),
    );
    return { kind: "listed", fittings: withOpened(opened) };
  } catch (thrown) {
    return notRead(thrown);
  }
}

/** Told after the first fittings, and again whenever there are twice as many. */
export type ListedSoFar = (fittings: readonly ListedFitting[], toCome: number) => void;

/** What these fittings say, without their steps; those that are not there are left out. */
export async function readFittings(drawers: Drawers, ids: readonly string[] | "all"): Promise<ReadOutcome> {
  try {
    const keys = ids === "all" ? await drawers.look((open) => open.readKeys("fittings")) : ids;
    return { kind: "read", fittings: (await opening(drawers, keys)).map(({ fitting }) => fitting) };
  } catch (thrown) {
    return notRead(thrown);
  }
}

export function notRead(thrown: unknown): NotRead {
  const { reason, message } = failureOf(thrown);
  return { kind: "notRead", reason, detail: message };
}

/** So many are opened at a time: the page stays quick between two portions, and a tablet has room for one. */
const portion = 20;

interface Opened {
  readonly fitting: OpenedFitting;
  /** The check of a record that can be read. */
  readonly check: string | null;
}

/** Opens records, and sees to it that those which can be read have their summary, and no others. */
async function opening(
  drawers: Drawers,
  keys: readonly string[],
  onSoFar: (opened: readonly Opened[]) => void = () => {},
): Promise<readonly Opened[]> {
  const opened: Opened[] = [];
  let tellAt = portion;
  for (let i = 0; i < keys.length; i += portion) {
    const found = await drawers.look((open) =>
      Promise.all(keys.slice(i, i + portion).map(async (key) => ({ key, value: await open.read("fittings", key) }))),
    );
    const read = found.filter(({ value }) => value !== undefined).map(({ key, value }) => openedFitting(key, value));
    opened.push(...read);
    await keepSummaries(drawers, read).catch(() => {});
    if (i + portion >= keys.length || i + portion < tellAt) continue;
    onSoFar(opened.slice());
    tellAt *= 2;
  }
  return opened;
}

/** A summary is a help and no more: without room for it the record is opened again the next time. */
async function keepSummaries(drawers: Drawers, opened: readonly Opened[]): Promise<void> {
  const wrong = await drawers.look(async (open) => {
    const summaries = await Promise.all(
      opened.map(async ({ fitting }) => {
        const id = idOf(fitting);
        return { fitting, entry: summaryEntry(id, await open.read("summaries", id)) };
      }),
    );
    return new Set(
      summaries.filter(({ fitting, entry }) => !isSummaryOf(entry, fitting)).map(({ fitting }) => fitting),
    );
  });
  if (wrong.size === 0) return;
  await drawers.change(async (open) => {
    for (const { fitting, check } of opened) {
      if (!wrong.has(fitting)) continue;
      const id = idOf(fitting);
      const now = (await open.read("fittings", id)) as Partial<FittingRecord> | undefined;
      if (fitting.kind !== "fitting") await open.clear("summaries", id);
      else if (now?.check === check) await writeSummary(open, fitting.entry);
    }
  });
}

const isSummaryOf = (entry: FittingEntry | null, fitting: OpenedFitting): boolean =>
  fitting.kind === "fitting" ? JSON.stringify(entry) === JSON.stringify(fitting.entry) : entry === null;

const idOf = (fitting: OpenedFitting): string => (fitting.kind === "fitting" ? fitting.entry.id : fitting.id);

const withoutText = (fitting: OpenedFitting): ListedFitting =>
  fitting.kind === "fitting" ? { kind: "fitting", entry: fitting.entry } : fitting;

function openedFitting(id: string, value: unknown): Opened {
  const reading = readRecord(id, value);
  if (reading.kind === "newer") return { fitting: { kind: "newer", id, rawText: rawText(value) }, check: null };
  if (reading.kind === "damaged") return { fitting: { kind: "unreadable", id, rawText: rawText(value) }, check: null };
  const { record } = reading;
  const read = readText(record.text);
  if (read.kind === "newer") return { fitting: { kind: "newer", id, rawText: record.text }, check: null };
  if (read.kind === "unreadable") return { fitting: { kind: "unreadable", id, rawText: rawText(value) }, check: null };
  return { fitting: { kind: "fitting", entry: entryOf(record), fitting: read.fitting }, check: record.check };
}
