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
import type { ListOutcome, LoadOutcome, NotRead, NotSaved, SaveOutcome } from "./fittingOutcome";
import { listFittings, loadFitting, notRead } from "./loadFitting";
import { type QuarantinedItem, quarantinedItem } from "./quarantine";
import { type SaveRequest, saveFitting } from "./saveFitting";

/**
 * The one door to everything that is kept on this device. Every promise resolves, never rejects, with an outcome; one
 * that says saved, changed, added or erased was kept to the end before it said so.
 */
export interface FittingStorage {
  list(): Promise<ListOutcome>;
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
  newId(): string;
  close(): void;
}

export interface StorageTools {
  /** The present instant, as ISO 8601 text in UTC. */
  readonly now: () => string;
  readonly newId: () => string;
}

export function fittingStorage(drawers: Drawers, { now, newId }: StorageTools): FittingStorage {
  return {
    list: () => listFittings(drawers),
    load: (id) => loadFitting(drawers, id, now()),
    save: (request) => saveFitting(drawers, request, now()),
    add: (fittings) => addFittings(drawers, fittings, { now: now(), newId }),
    setArchived: (id, archived) => markFitting(drawers, id, { archived }),
    remove: (id) => markFitting(drawers, id, { deletedAt: now() }),
    restore: (id) => markFitting(drawers, id, { deletedAt: null }),
    erase: (id) => eraseFitting(drawers, id, now()),
    eraseEverything: () => eraseEverything(drawers),
    quarantined: () => listQuarantined(drawers),
    eraseQuarantined: (key) => eraseQuarantined(drawers, key),
    settings: () => loadSettings(drawers),
    saveSettings: (values) => saveSettings(drawers, values, now()),
    newId,
    close: () => drawers.close(),
  };
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
