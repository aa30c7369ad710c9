import type { Fitting } from "../../document/fitting";
import { type AddOutcome, addFittings } from "./addFittings";
import {
  type ChangeOutcome,
  type EraseOutcome,
  eraseEverything,
  eraseFitting,
  eraseQuarantined,
  markFitting,
} from "./changeFitting";
import { type DeviceSettings, loadSettings, saveSettings } from "./deviceSettings";
import type { Drawers } from "./drawers";
import type {
  ListedFitting,
  ListOutcome,
  LoadOutcome,
  NotRead,
  NotSaved,
  ReadOutcome,
  SaveOutcome,
} from "./fittingOutcome";
import { type GoneOutcome, goneFittings } from "./goneFittings";
import { type KnownFile, type KnownFittings, nothingKnown } from "./knownFittings";
import { type ListedSoFar, listFittings, notRead, readFittings } from "./listFittings";
import { loadFitting } from "./loadFitting";
import { type QuarantinedItem, quarantinedItem } from "./quarantine";
import { type SaveRequest, saveFitting } from "./saveFitting";

/**
 * The one door to everything that is kept on this device. Every promise resolves, never rejects, with an outcome; one
 * that says saved, changed, added or erased was kept to the end before it said so.
 */
export interface FittingStorage {
  list(onSoFar?: ListedSoFar): Promise<ListOutcome>;
  /** What fittings of the list say, without their steps; the list is put right where it said otherwise of them. */
  read(ids: readonly string[] | "all"): Promise<ReadOutcome>;
  load(id: string): Promise<LoadOutcome>;
  save(request: SaveRequest): Promise<SaveOutcome>;
  /** From a file, a link, or a copy: all or none, and nothing that is there is touched. */
  add(fittings: readonly Fitting[]): Promise<AddOutcome>;
  setArchived(id: string, archived: boolean): Promise<ChangeOutcome>;
  /** Takes a fitting off the list; `restore` puts it back as it was. */
  remove(id: string): Promise<ChangeOutcome>;
  restore(id: string): Promise<ChangeOutcome>;
  erase(id: string): Promise<EraseOutcome>;
  eraseEverything(): Promise<EraseOutcome>;
  quarantined(): Promise<{ readonly kind: "listed"; readonly items: readonly QuarantinedItem[] } | NotRead>;
  eraseQuarantined(key: string): Promise<EraseOutcome>;
  settings(): Promise<DeviceSettings>;
  saveSettings(values: DeviceSettings): Promise<{ readonly kind: "saved" } | NotSaved>;
  /** Which fittings are lost: they were there, nobody erased them, and they are there no more. */
  gone(): Promise<GoneOutcome>;
  /** The person knows of these losses. */
  forgetGone(ids: readonly string[]): void;
  /** These fittings were handed to the person in a file. */
  noteFile(ids: readonly string[], name: string): void;
  lastFile(): KnownFile | null;
  newId(): string;
  close(): void;
}

export interface StorageTools {
  /** The present instant, as ISO 8601 text in UTC. */
  readonly now: () => string;
  readonly newId: () => string;
  /** Left out, nothing is noted outside the drawers, and no loss can be told. */
  readonly known?: KnownFittings;
}

export function fittingStorage(drawers: Drawers, { now, newId, known = nothingKnown }: StorageTools): FittingStorage {
  return {
    list: async (onSoFar) => {
      const listed = await listFittings(drawers, onSoFar);
      if (listed.kind === "listed") for (const one of listed.fittings) noteListed(known, one);
      return listed;
    },
    read: (ids) => readFittings(drawers, ids),
    load: (id) => loadFitting(drawers, id, now()),
    save: async (request) => {
      const outcome = await saveFitting(drawers, request, now());
      if (outcome.kind === "saved") known.note(outcome.entry.id, outcome.entry.title);
      return outcome;
    },
    add: async (fittings) => {
      const outcome = await addFittings(drawers, fittings, { now: now(), newId });
      if (outcome.kind === "added") for (const { id, title } of outcome.fittings) known.note(id, title);
      return outcome;
    },
    setArchived: (id, archived) => markFitting(drawers, id, { archived }),
    remove: (id) => markFitting(drawers, id, { deletedAt: now() }),
    restore: (id) => markFitting(drawers, id, { deletedAt: null }),
    erase: async (id) => {
      const outcome = await eraseFitting(drawers, id, now());
      if (outcome.kind === "erased") known.forget(id);
      return outcome;
    },
    eraseEverything: async () => {
      const outcome = await eraseEverything(drawers);
      if (outcome.kind === "erased") known.clear();
      return outcome;
    },
    quarantined: () => listQuarantined(drawers),
    eraseQuarantined: (key) => eraseQuarantined(drawers, key),
    settings: () => loadSettings(drawers),
    saveSettings: (values) => saveSettings(drawers, values, now()),
    gone: () => goneFittings(drawers, known),
    forgetGone: (ids) => {
      for (const id of ids) known.forget(id);
    },
    noteFile: (ids, name) => known.noteFile(ids, { name, savedAt: now() }),
    lastFile: () => known.lastFile(),
    newId,
    close: () => drawers.close(),
  };
}

function noteListed(known: KnownFittings, listed: ListedFitting): void {
  if (listed.kind === "fitting") known.note(listed.entry.id, listed.entry.title);
  else known.note(listed.id);
}

async function listQuarantined(
  drawers: Drawers,
): Promise<{ readonly kind: "listed"; readonly items: readonly QuarantinedItem[] } | NotRead> {
  try {
    const found = await drawers.look((open) => open.readAll("quarantine"));
    return { kind: "listed", items: found.map(quarantinedItem) };
  } catch (thrown) {
    return notRead(thrown);
  }
}
