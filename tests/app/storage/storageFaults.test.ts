import { describe, expect, it } from "vitest";
import { type FailureReason, failureReasons } from "../../../src/app/storage/objectStores";
import { type FittingStorage, fittingStorage } from "../../../src/app/storage/fittingStorage";
import type { Fitting } from "../../../src/document/fitting";
import { keptText, type MemoryStores, memoryStores } from "./memoryStores";
import { sampleTitled, sampleWithWaist } from "./sampleFittings";

/**
 * The way databases test themselves: the same work again and again, with the first call failing, then the second, and
 * so on until a run is done before the fault. (Described for SQLite in its public testing documentation; from memory.)
 */
type Work = (storage: FittingStorage) => Promise<{ readonly kind: string }>;

const request = (fitting: Fitting, baseRevision: number, mark: string) => ({
  id: "work-0001",
  baseRevision,
  mark,
  earlierMarks: [],
  fitting,
  history: { past: [sampleWithWaist(79)], future: [sampleWithWaist(90)] },
});

const works: { readonly [name: string]: Work } = {
  "save again": (storage) => storage.save(request(sampleWithWaist(81), 1, "second")),
  "save something new": (storage) => storage.save({ ...request(sampleWithWaist(81), 0, "n"), id: "new-00001" }),
  "save over damage": (storage) => storage.save({ ...request(sampleWithWaist(81), 3, "d"), id: "damaged-1" }),
  "add three": (storage) => storage.add(["Ines", "Odile", "Ruth"].map((title) => sampleTitled(title, `${title}-0001`))),
  remove: (storage) => storage.remove("work-0001"),
  archive: (storage) => storage.setArchived("work-0001", true),
  erase: (storage) => storage.erase("work-0001"),
  "erase damage": (storage) => storage.erase("damaged-1"),
  "erase everything": (storage) => storage.eraseEverything(),
  "save settings": (storage) => storage.saveSettings({ colours: "dark" }),
};

async function furnished(): Promise<{ readonly storage: FittingStorage; readonly stores: MemoryStores }> {
  const stores = memoryStores();
  let ids = 0;
  const storage = fittingStorage(stores, { now: () => "2026-03-01T10:00:00.000Z", newId: () => `fresh-${++ids}-000` });
  await storage.save(request(sampleWithWaist(80), 0, "first"));
  await storage.add([sampleTitled("Ines", "Ines-0001")]);
  await storage.saveSettings({ colours: "light" });
  stores.kept.set("fittings/damaged-1", { half: "a rec" });
  return { storage, stores };
}

const happy = (kind: string): boolean => ["saved", "added", "changed", "erased"].includes(kind);

describe.each(Object.entries(works))("%s, failing at every call", (_, work) => {
  it.each(failureReasons)("with reason %s keeps the old or the new, whole, and says which", async (reason) => {
    const old = keptText((await furnished()).stores);
    const whole = await furnished();
    expect(happy((await work(whole.storage)).kind)).toBe(true);
    const fresh = keptText(whole.stores);
    expect(fresh).not.toBe(old);

    let strikes = 0;
    let refusals = 0;
    for (let n = 1; ; n += 1) {
      const { struck, kind, after } = await runFailingAt(n, { reason, when: "before" }, work);
      if (!struck) {
        expect(after).toBe(fresh);
        break;
      }
      strikes += 1;
      expect(after).toBe(happy(kind) ? fresh : old);
      // What was kept stays kept where only reading it again fails.
      if (kind === "notSaved") refusals += 1;
    }
    expect(refusals).toBeGreaterThanOrEqual(3);
    expect(strikes).toBeGreaterThanOrEqual(3);
  });

  it("tried again after a fault that came too late, ends at the new, once", async () => {
    const whole = await furnished();
    await work(whole.storage);
    const { storage, stores } = await furnished();
    stores.failFrom((_call, name) => (name === "keep" ? { reason: "lost", when: "after" } : null));
    expect((await work(storage)).kind).toBe("notSaved");
    expect(keptText(stores)).toBe(keptText(whole.stores));
    stores.failFrom(() => null);
    expect(happy((await work(storage)).kind)).toBe(true);
    expect(keptText(stores)).toBe(keptText(whole.stores));
  });
});

describe("loading and listing, failing at every call", () => {
  it.each(["work-0001", "damaged-1"])("never throw and change nothing that was there: %s", async (id) => {
    let strikes = 0;
    for (let n = 1; ; n += 1) {
      const { storage, stores } = await furnished();
      const before = stores.kept.get(`fittings/${id}`);
      const start = stores.calls();
      stores.failFrom((call) => (call === start + n ? { reason: "failed", when: "before" } : null));
      const loaded = await storage.load(id);
      await storage.list();
      expect(stores.kept.get(`fittings/${id}`)).toEqual(before);
      if (stores.calls() < start + n) break;
      strikes += 1;
      expect(["notRead", "unreadable", "loaded"]).toContain(loaded.kind);
    }
    expect(strikes).toBeGreaterThanOrEqual(4);
  });
});

async function runFailingAt(n: number, fault: { readonly reason: FailureReason; readonly when: "before" }, work: Work) {
  const { storage, stores } = await furnished();
  const start = stores.calls();
  stores.failFrom((call) => (call === start + n ? fault : null));
  const { kind } = await work(storage);
  return { struck: stores.calls() >= start + n, kind, after: keptText(stores) };
}
