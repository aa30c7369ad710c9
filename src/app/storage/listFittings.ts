import type { ObjectStores, StoresToChange } from "./objectStores";
import { fieldsOf } from "./fields";
import type { ListedFitting, ListOutcome, OpenedFitting, ReadOutcome } from "./fittingOutcome";
import { entryOf, type FittingEntry, readSummary, summaryOf } from "./fittingRecord";
import { readStored, type StoredFitting } from "./storedFitting";

/** Told after the first fittings, and again whenever there are twice as many. */
export type ListedSoFar = (fittings: readonly ListedFitting[], toCome: number) => void;

/** Everything there is, readable or not, in no particular order. Only what has no summary is opened, and given one. */
export async function listFittings(stores: ObjectStores, onSoFar: ListedSoFar = () => {}): Promise<ListOutcome> {
  const { keys, summaries } = await stores.look(async (open) => ({
    keys: await open.readKeys("fittings"),
    summaries: new Map((await open.readAll("summaries")).map(({ key, value }) => [key, readSummary(key, value)])),
  }));
  const listed = keys.flatMap((key): readonly ListedFitting[] => {
    const entry = summaries.get(key);
    return entry ? [{ kind: "fitting", entry }] : [];
  });
  const unknown = keys.filter((key) => !summaries.get(key));
  const opened = await opening(stores, unknown, (soFar) =>
    onSoFar([...listed, ...soFar.map(withoutText)], unknown.length - soFar.length),
  );
  return { kind: "listed", fittings: [...listed, ...opened.map(withoutText)] };
}

/** What these fittings say, without their steps; those that are not there are left out. */
export async function readFittings(stores: ObjectStores, ids: readonly string[] | "all"): Promise<ReadOutcome> {
  const keys = ids === "all" ? await stores.look((open) => open.readKeys("fittings")) : ids;
  return { kind: "read", fittings: await opening(stores, keys) };
}

/** So many are opened at a time: the page stays quick between two portions, and a tablet has room for one. */
const portion = 20;

/** Opens records, and sees to it that those which can be read have their summary, and no others. */
async function opening(
  stores: ObjectStores,
  keys: readonly string[],
  onSoFar: (opened: readonly OpenedFitting[]) => void = () => {},
): Promise<readonly OpenedFitting[]> {
  const opened: OpenedFitting[] = [];
  let tellAt = portion;
  for (let i = 0; i < keys.length; i += portion) {
    const stored = await openPortion(stores, keys.slice(i, i + portion));
    opened.push(...stored.map(openedFitting));
    if (i + portion >= keys.length || i + portion < tellAt) continue;
    onSoFar(opened.slice());
    tellAt *= 2;
  }
  return opened;
}

async function openPortion(stores: ObjectStores, keys: readonly string[]): Promise<readonly StoredFitting[]> {
  const found = await stores.look((open) =>
    Promise.all(
      keys.map(async (key) => ({
        key,
        value: await open.read("fittings", key),
        summary: readSummary(key, await open.read("summaries", key)),
      })),
    ),
  );
  const there = found
    .filter(({ value }) => value !== undefined)
    .map(({ key, value, summary }) => ({ stored: readStored(key, value), summary }));
  const wrong = there.filter(({ stored, summary }) => JSON.stringify(summary) !== JSON.stringify(entryIn(stored)));
  await putSummariesRight(
    stores,
    wrong.map(({ stored }) => stored),
  );
  return there.map(({ stored }) => stored);
}

/** A summary is a help and no more: without room for it the record is opened again the next time. */
async function putSummariesRight(stores: ObjectStores, wrong: readonly StoredFitting[]): Promise<void> {
  if (wrong.length === 0) return;
  const work = async (open: StoresToChange): Promise<void> => {
    for (const stored of wrong) {
      if (stored.kind !== "fitting") await open.clear("summaries", stored.id);
      else {
        const { id, check } = stored.record;
        const isAsOpened = fieldsOf(await open.read("fittings", id)).check === check;
        if (isAsOpened) await open.write("summaries", id, summaryOf(stored.record));
      }
    }
  };
  await stores.change(work).catch(() => {});
}

const entryIn = (stored: StoredFitting): FittingEntry | null =>
  stored.kind === "fitting" ? entryOf(stored.record) : null;

const openedFitting = (stored: StoredFitting): OpenedFitting =>
  stored.kind === "fitting" ? { kind: "fitting", entry: entryOf(stored.record), fitting: stored.fitting } : stored;

const withoutText = (opened: OpenedFitting): ListedFitting =>
  opened.kind === "fitting" ? { kind: "fitting", entry: opened.entry } : opened;
