import type { Fitting } from "../../document/fitting";
import { type AddOutcome, addFittings } from "./addFittings";
import { type EraseOutcome, eraseEverything, eraseFitting, type Marks, markFitting } from "./changeFitting";
import { type DeviceSettings, loadSettings, saveSettings } from "./deviceSettings";
import type { ObjectStores } from "./objectStores";
import { listedId, type ListOutcome, notRead, type SaveOutcome } from "./fittingOutcome";
import { goneFittings } from "./goneFittings";
import { type Change, keptChanges } from "./keptChange";
import { type KnownFittings, knownFittings } from "./knownFittings";
import { type ListedSoFar, listFittings, readFittings } from "./listFittings";
import { loadFitting } from "./loadFitting";
import { quarantinedItem } from "./quarantine";
import { type SaveRequest, saveFitting } from "./saveFitting";

export interface StorageTools {
  /** The present instant, as ISO 8601 text in UTC. */
  readonly now: () => string;
  readonly newId: () => string;
  /** Left out, nothing is noted outside the stores, and no loss can be told. */
  readonly known?: KnownFittings;
}

type Tools = Required<StorageTools>;

/**
 * The one door to everything that is kept on this device. Every promise resolves, never rejects, with an outcome; one
 * that says saved, changed, added or erased was kept to the end before it said so.
 */
export type FittingStorage = ReturnType<typeof fittingStorage>;

export function fittingStorage(stores: ObjectStores, { known = knownFittings({}), ...others }: StorageTools) {
  const tools: Tools = { ...others, known };
  const change = keptChanges(stores);
  return {
    ...reading(stores, change, tools),
    ...changing(change, tools),
    ...onThisDevice(stores, change, tools),
    newId: tools.newId,
    close: () => stores.close(),
  };
}

const reading = (stores: ObjectStores, change: Change, { now, known }: Tools) => ({
  list: async (onSoFar?: ListedSoFar): Promise<ListOutcome> => {
    const listed = await listFittings(stores, onSoFar).catch(notRead);
    if (listed.kind !== "listed") return listed;
    for (const one of listed.fittings) known.note(listedId(one), one.kind === "fitting" ? one.entry.title : undefined);
    return listed;
  },
  /** What fittings of the list say, without their steps; the list is put right where it said otherwise of them. */
  read: (ids: readonly string[] | "all") => readFittings(stores, ids).catch(notRead),
  load: (id: string) => loadFitting(stores, change, id, now()).catch(notRead),
  quarantined: async () => {
    const read = async () => {
      const found = await stores.look((open) => open.readAll("quarantine"));
      return { kind: "listed", items: found.map(quarantinedItem) } as const;
    };
    return read().catch(notRead);
  },
  /** Which fittings are lost: they were there, nobody erased them, and they are there no more. */
  gone: () => goneFittings(stores, known).catch(notRead),
});

function changing(change: Change, { now, newId, known }: Tools) {
  const mark = (id: string, marks: Marks) => change((open) => markFitting(open, id, marks));
  return {
    save: async (request: SaveRequest): Promise<SaveOutcome> => {
      const outcome = await saveFitting(change, request, now());
      if (outcome.kind === "saved") known.note(outcome.entry.id, outcome.entry.title);
      return outcome;
    },
    /** From a file, a link, or a copy: all or none, and nothing that is there is touched. */
    add: async (fittings: readonly Fitting[]): Promise<AddOutcome> => {
      const outcome = await addFittings(change, fittings, { now: now(), newId });
      if (outcome.kind === "added") for (const { id, title } of outcome.fittings) known.note(id, title);
      return outcome;
    },
    setArchived: (id: string, archived: boolean) => mark(id, { archived }),
    /** Takes a fitting off the list; `restore` puts it back as it was. */
    remove: (id: string) => mark(id, { deletedAt: now() }),
    restore: (id: string) => mark(id, { deletedAt: null }),
    erase: async (id: string): Promise<EraseOutcome> => {
      const outcome = await change((open) => eraseFitting(open, id, now()));
      if (outcome.kind === "erased") known.forget(id);
      return outcome;
    },
    eraseEverything: async (): Promise<EraseOutcome> => {
      const outcome = await change(eraseEverything);
      if (outcome.kind === "erased") known.clear();
      return outcome;
    },
    eraseQuarantined: (key: string): Promise<EraseOutcome> =>
      change(async (open) => {
        await open.clear("quarantine", key);
        return { kind: "erased" };
      }),
  };
}

const onThisDevice = (stores: ObjectStores, change: Change, { now, known }: Tools) => ({
  settings: (): Promise<DeviceSettings> => stores.look(loadSettings).catch(() => ({})),
  saveSettings: (values: DeviceSettings) => change((open) => saveSettings(open, values, now())),
  /** The person knows of these losses. */
  forgetGone: (ids: readonly string[]): void => ids.forEach(known.forget),
  /** These fittings were handed to the person in a file. */
  noteFile: (ids: readonly string[], name: string): void => known.noteFile(ids, { name, savedAt: now() }),
  lastFile: () => known.lastFile(),
});
