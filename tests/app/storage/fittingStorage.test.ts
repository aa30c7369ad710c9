import { describe, expect, it } from "vitest";
import { type FittingRecord, sealedRecord } from "../../../src/app/storage/fittingRecord";
import { checkSum } from "../../../src/app/storage/checkSum";
import type { ObjectStores, StoresToRead } from "../../../src/app/storage/objectStores";
import { type FittingStorage, fittingStorage } from "../../../src/app/storage/fittingStorage";
import { fittingText } from "../../../src/app/storage/fittingText";
import type { Fitting } from "../../../src/document/fitting";
import { keptText, type MemoryStores, memoryStores } from "./memoryStores";
import { sampleFitting, sampleTitled, sampleWithWaist, waistOf } from "./sampleFittings";

function freshStorage(stores: MemoryStores = memoryStores()) {
  let ids = 0;
  let seconds = 0;
  const storage = fittingStorage(stores, {
    now: () => new Date(Date.UTC(2026, 0, 1, 12, 0, seconds++)).toISOString(),
    newId: () => `made-by-us-${++ids}`,
  });
  return { storage, stores };
}

const request = (fitting: Fitting, baseRevision: number, mark: string, past: readonly Fitting[] = []) => ({
  id: "one",
  baseRevision,
  mark,
  earlierMarks: [],
  fitting,
  history: { past, future: [] },
});

describe("saving and loading", () => {
  it("gives back what was saved, with the steps to undo in order", async () => {
    const { storage } = freshStorage();
    const steps = [80, 81, 82].map(sampleWithWaist);
    const undone = [90, 91].map(sampleWithWaist);
    const saved = await storage.save({
      ...request(sampleWithWaist(85), 0, "a"),
      history: { past: steps, future: undone },
    });
    expect(saved).toMatchObject({ kind: "saved", entry: { revision: 1, title: "Odile, spring jacket" } });
    const loaded = await storage.load("one");
    if (loaded.kind !== "loaded") throw new Error(loaded.kind);
    expect(waistOf(loaded.fitting)).toBe(85);
    expect(loaded.fitting.id).toBe("one");
    expect(loaded.history.past.map(waistOf)).toEqual([80, 81, 82]);
    expect(loaded.history.future.map(waistOf)).toEqual([90, 91]);
    expect(loaded.historyLost).toBe(false);
  });

  it("keeps no order of keys from memory, only what is said", () => {
    const { waistGirth, ...others } = sampleFitting.body;
    if (waistGirth === undefined) throw new Error("the sample has a waist");
    const turnedRound: Fitting = { ...sampleFitting, body: { waistGirth, ...others } };
    expect(fittingText(turnedRound)).toBe(fittingText(sampleFitting));
  });

  it("says that nothing lies under an unknown id", async () => {
    const { storage } = freshStorage();
    expect(await storage.load("nobody")).toEqual({ kind: "missing", id: "nobody" });
  });

  it("does not let a fitting near the record that could not be read back", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    const before = keptText(stores);
    const broken: Fitting = { ...sampleFitting, body: { ...sampleFitting.body, waistGirth: Number.NaN } };
    expect(await storage.save(request(broken, 1, "b"))).toMatchObject({ kind: "notSaved", reason: "unwritable" });
    expect(keptText(stores)).toBe(before);
  });
});

describe("two writers", () => {
  it("refuses a change made on an older revision and leaves the newer one alone", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleWithWaist(80), 0, "a"));
    await storage.save(request(sampleWithWaist(81), 1, "b"));
    const before = keptText(stores);
    const late = await storage.save(request(sampleWithWaist(99), 1, "c"));
    expect(late).toMatchObject({ kind: "notSaved", reason: "changedElsewhere" });
    expect(keptText(stores)).toBe(before);
  });

  it("refuses a new fitting under an id that is taken", async () => {
    const { storage } = freshStorage();
    await storage.save(request(sampleWithWaist(80), 0, "a"));
    expect(await storage.save(request(sampleWithWaist(81), 0, "b"))).toMatchObject({ reason: "changedElsewhere" });
  });

  it("recognises its own save that was kept and reported as failed", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleWithWaist(80), 0, "a"));
    stores.failFrom((_, name) => (name === "keep" ? { reason: "lost", when: "after" } : null));
    expect(await storage.save(request(sampleWithWaist(81), 1, "b"))).toMatchObject({ reason: "lost" });
    stores.failFrom(() => null);
    expect(await storage.save(request(sampleWithWaist(81), 1, "b"))).toMatchObject({ kind: "saved" });
    const newer = { ...request(sampleWithWaist(82), 1, "c"), earlierMarks: ["b"] };
    expect(await storage.save(newer)).toMatchObject({ kind: "saved", entry: { revision: 3 } });
  });
});

describe("what cannot be read", () => {
  const damage = (stores: MemoryStores, change: (record: FittingRecord) => unknown): unknown => {
    const damaged = change(stores.kept.get("fittings/one") as FittingRecord);
    stores.kept.set("fittings/one", damaged);
    return damaged;
  };

  it("is copied raw into quarantine, told, and left where it was", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    const damaged = damage(stores, (record) => ({ ...record, text: record.text.slice(0, 40) }));
    const loaded = await storage.load("one");
    expect(loaded).toMatchObject({ kind: "unreadable", quarantined: true });
    expect(stores.kept.get("fittings/one")).toEqual(damaged);
    const items = await storage.quarantined();
    if (items.kind !== "listed") throw new Error(items.kind);
    expect(items.items.map(({ rawText }) => JSON.parse(rawText))).toEqual([damaged]);
    await storage.load("one");
    expect(await storage.quarantined()).toMatchObject({ items: { length: 1 } });
  });

  it("is told even where no room is left for the copy", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    damage(stores, () => "not a record at all");
    stores.failFrom((_, name) => (name === "write" ? { reason: "noRoom", when: "before" } : null));
    expect(await storage.load("one")).toMatchObject({ kind: "unreadable", quarantined: false });
    expect(stores.kept.get("fittings/one")).toBe("not a record at all");
  });

  it("goes into quarantine in the very step that saves over it", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    const damaged = damage(stores, (record) => ({ ...record, title: "Somebody else" }));
    const saved = await storage.save(request(sampleWithWaist(83), 1, "b"));
    expect(saved).toMatchObject({ kind: "saved", found: ["quarantined"] });
    const items = await storage.quarantined();
    if (items.kind !== "listed") throw new Error(items.kind);
    const [fitting] = items.items.filter(({ source }) => source === "fitting");
    expect(JSON.parse(fitting?.rawText ?? "")).toEqual(damaged);
    expect(await storage.load("one")).toMatchObject({ kind: "loaded", entry: { revision: 2 } });
  });

  it("stays in the way of nothing when it is only the steps to undo", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a", [sampleWithWaist(70)]));
    stores.kept.set("histories/one", { nonsense: true });
    expect(await storage.load("one")).toMatchObject({ kind: "loaded", historyLost: true, history: { past: [] } });
    expect(await storage.quarantined()).toMatchObject({ items: [{ source: "history" }] });
  });

  it("is laid in quarantine before a save replaces steps that nobody loaded", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a", [sampleWithWaist(70)]));
    stores.kept.set("histories/one", { nonsense: true });
    await storage.save(request(sampleWithWaist(71), 1, "b"));
    expect(await storage.quarantined()).toMatchObject({ items: [{ source: "history" }] });
  });

  it.each(["opened", "looked through"])("is listed beside the others once it was %s", async (how) => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    await storage.add([sampleTitled("Ines", "ines-0001")]);
    damage(stores, () => 7);
    // Whoever opens it, or everything at once, finds the damage behind the list, and the list says so from then on.
    await (how === "opened" ? storage.load("one") : storage.read("all"));
    const listed = await storage.list();
    if (listed.kind !== "listed") throw new Error(listed.kind);
    expect(listed.fittings.map(({ kind }) => kind).toSorted()).toEqual(["fitting", "unreadable"]);
  });
});

describe("data of a newer release", () => {
  const newerText = JSON.stringify({ ...JSON.parse(fittingText(sampleFitting)), version: 2, tomorrow: "unheard of" });
  const newerRecord = sealedRecord({
    id: "one",
    title: "from tomorrow",
    changedAt: "2027-01-01T00:00:00.000Z",
    archived: false,
    deletedAt: null,
    revision: 4,
    saveMark: "z",
    text: newerText,
  });

  it("opens to be looked at, as far as it is understood", async () => {
    const { storage, stores } = freshStorage();
    stores.kept.set("fittings/one", newerRecord);
    const loaded = await storage.load("one");
    expect(loaded).toMatchObject({ kind: "newer", rawText: newerText });
    expect(loaded.kind === "newer" && loaded.asUnderstood?.title).toBe(sampleFitting.title);
  });

  it.each([
    ["a newer fitting", newerRecord],
    ["a newer record", { ...newerRecord, format: 2 }],
  ])("is never overwritten by an old tab: %s", async (_, record) => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    stores.kept.set("fittings/one", record);
    const before = keptText(stores);
    expect(await storage.save(request(sampleWithWaist(70), 1, "b"))).toMatchObject({ reason: "newerRecord" });
    expect(keptText(stores)).toBe(before);
  });
});

describe("the list", () => {
  it("removes with a way back, and erases for good", async () => {
    const { storage } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    const before = await storage.load("one");
    expect(await storage.remove("one")).toMatchObject({ kind: "changed", entry: { deletedAt: expect.any(String) } });
    expect(await storage.restore("one")).toMatchObject({ kind: "changed" });
    expect(await storage.load("one")).toEqual(before);
    expect(await storage.setArchived("one", true)).toMatchObject({ entry: { archived: true, revision: 1 } });
    await storage.erase("one");
    expect(await storage.load("one")).toMatchObject({ kind: "missing" });
  });

  it("has a removed fitting back when somebody goes on in it, and says so", async () => {
    const { storage } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    await storage.remove("one");
    expect(await storage.save(request(sampleWithWaist(70), 1, "b"))).toMatchObject({
      entry: { deletedAt: null },
      found: ["restored"],
    });
    expect(await storage.save(request(sampleWithWaist(71), 2, "c"))).toMatchObject({ found: [] });
  });

  it("puts a fitting away without getting in the way of its writer", async () => {
    const { storage } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    await storage.setArchived("one", true);
    expect(await storage.save(request(sampleWithWaist(70), 1, "b"))).toMatchObject({
      kind: "saved",
      entry: { archived: true, revision: 2 },
    });
  });

  it("erases everything, and a writer who is still at work says so and keeps the work", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    await storage.saveSettings({ lastFitting: "one" });
    await storage.eraseEverything();
    // All that stays is that something was erased, so that nobody is told of a loss.
    expect([...stores.kept]).toEqual([["settings/erased", { format: 1, checks: [checkSum("one")] }]]);
    expect(await storage.save(request(sampleWithWaist(70), 1, "b"))).toMatchObject({
      kind: "saved",
      found: ["recreated"],
    });
  });
});

describe("the list of summaries", () => {
  const entries = async (storage: FittingStorage) => {
    const listed = await storage.list();
    if (listed.kind !== "listed") throw new Error(listed.kind);
    return listed.fittings.map((one) => (one.kind === "fitting" ? one.entry : one.kind));
  };
  const opened = async (storage: FittingStorage) => {
    const read = await storage.read("all");
    if (read.kind !== "read") throw new Error(read.kind);
    return read.fittings.map((one) => (one.kind === "fitting" ? one.entry : one.kind));
  };

  it("opens no record, and says what the records say after every kind of change", async () => {
    const { storage, stores } = freshStorage();
    const says = async () => {
      const read: string[] = [];
      const listed = await entries(fittingStorage(watched(stores, read), { now: () => "", newId: () => "" }));
      expect(read.filter((place) => place.startsWith("fittings/"))).toEqual([]);
      expect(listed).toEqual(await opened(storage));
      return listed;
    };
    await storage.save(request(sampleFitting, 0, "a"));
    await storage.add([sampleTitled("Ines", "ines-0001"), sampleTitled("Ruth", "ruth-0001")]);
    expect(await says()).toHaveLength(3);
    await storage.save(request({ ...sampleFitting, title: "Named anew" }, 1, "b"));
    expect(await says()).toContainEqual(expect.objectContaining({ title: "Named anew", revision: 2 }));
    await storage.setArchived("ines-0001", true);
    expect(await says()).toContainEqual(expect.objectContaining({ id: "ines-0001", archived: true }));
    await storage.remove("ruth-0001");
    expect(await says()).toContainEqual(expect.objectContaining({ deletedAt: expect.any(String) }));
    await storage.add([sampleTitled("Ruth", "ruth-0001")]);
    expect(await says()).toContainEqual(expect.objectContaining({ id: "ruth-0001", deletedAt: null }));
    await storage.erase("ruth-0001");
    expect(await says()).toHaveLength(2);
    expect([...stores.kept.keys()].filter((place) => place.startsWith("summaries/"))).toHaveLength(2);
  });

  it("opens what an older release left without a summary, once", async () => {
    const { storage, stores } = freshStorage();
    await storage.add(Array.from({ length: 120 }, (_, i) => sampleTitled(`No. ${i}`, `older-${1000 + i}`)));
    const before = await entries(storage);
    for (const place of [...stores.kept.keys()]) if (place.startsWith("summaries/")) stores.kept.delete(place);
    stores.kept.set("summaries/older-1001", { half: "a summary", revision: 2n });
    expect((await entries(storage)).toSorted(byId)).toEqual(before.toSorted(byId));
    const read: string[] = [];
    const again = await entries(fittingStorage(watched(stores, read), { now: () => "", newId: () => "" }));
    expect(again.toSorted(byId)).toEqual(before.toSorted(byId));
    expect(read.filter((place) => place.startsWith("fittings/"))).toEqual([]);
  });

  it("tells what it has so far while many are opened, and how many are to come", async () => {
    const { storage, stores } = freshStorage();
    await storage.add(Array.from({ length: 120 }, (_, i) => sampleTitled(`No. ${i}`, `older-${1000 + i}`)));
    for (const place of [...stores.kept.keys()]) {
      if (place.startsWith("summaries/") && place !== "summaries/older-1007") stores.kept.delete(place);
    }
    const told: (readonly [number, number])[] = [];
    const listed = await storage.list((fittings, toCome) => told.push([fittings.length, toCome]));
    expect(told).toEqual([
      [21, 99],
      [41, 79],
      [81, 39],
    ]);
    expect(listed).toMatchObject({ kind: "listed", fittings: { length: 120 } });
    told.length = 0;
    await storage.list((fittings, toCome) => told.push([fittings.length, toCome]));
    expect(told).toEqual([]);
  });

  it("lists as well where no summary can be written", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    stores.kept.delete("summaries/one");
    stores.failFrom((_, name) => (name === "write" ? { reason: "noRoom", when: "before" } : null));
    expect(await entries(storage)).toMatchObject([{ id: "one", revision: 1 }]);
  });

  it("gives no summary of what another tab saved or erased while the list was being opened", async () => {
    const { storage, stores } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    await storage.add([sampleTitled("Ines", "ines-0001"), sampleTitled("Ruth", "ruth-0001")]);
    for (const place of [...stores.kept.keys()]) if (place.startsWith("summaries/")) stores.kept.delete(place);
    let isFirst = true;
    const overtaken: ObjectStores = {
      ...stores,
      change: async (work) => {
        if (isFirst) {
          isFirst = false;
          await storage.save(request({ ...sampleFitting, title: "Named anew" }, 1, "b"));
          await storage.erase("ruth-0001");
        }
        return stores.change(work);
      },
    };
    await entries(fittingStorage(overtaken, { now: () => "", newId: () => "" }));
    expect(isFirst).toBe(false);
    expect(await entries(storage)).toMatchObject([
      { title: "Named anew", revision: 2 },
      { title: "Ines", revision: 1 },
    ]);
    expect([...stores.kept.keys()].filter((place) => place.startsWith("summaries/")).toSorted()).toEqual([
      "summaries/ines-0001",
      "summaries/one",
    ]);
  });

  const byId = (one: unknown, other: unknown) => (JSON.stringify(one) < JSON.stringify(other) ? -1 : 1);
});

/** The same stores, noting every place that is read. */
const watched = (stores: ObjectStores, read: string[]): ObjectStores => {
  const noting = <Open extends StoresToRead>(open: Open): Open => ({
    ...open,
    read: (storeName, key) => {
      read.push(`${storeName}/${key}`);
      return open.read(storeName, key);
    },
    readAll: (storeName) => {
      read.push(`${storeName}/`);
      return open.readAll(storeName);
    },
  });
  return {
    ...stores,
    look: (work) => stores.look((open) => work(noting(open))),
    change: (work) => stores.change((open) => work(noting(open))),
  };
};

describe("adding", () => {
  it("adds nothing twice, and another state of the same fitting beside it", async () => {
    const { storage } = freshStorage();
    const ines = sampleTitled("Ines", "ines-0001");
    const first = await storage.add([ines, sampleTitled("No id of ours", "x")]);
    expect(first).toMatchObject({
      fittings: [
        { kind: "added", id: "ines-0001" },
        { kind: "added", id: "made-by-us-1" },
      ],
    });
    const changed = { ...ines, notes: "Taller than last time." };
    const second = await storage.add([ines, changed]);
    expect(second).toMatchObject({
      fittings: [{ kind: "alreadyHere" }, { kind: "addedBeside", id: "made-by-us-2", besideId: "ines-0001" }],
    });
    expect(await storage.load("ines-0001")).toMatchObject({ fitting: { notes: ines.notes } });
  });

  it("adds one of two that say the same in one file, where no id of ours tells them apart", async () => {
    const { storage } = freshStorage();
    await storage.save(request(sampleFitting, 0, "a"));
    const twin = sampleTitled("Twin", "x");
    expect(await storage.add([twin, sampleTitled("Other", "x"), twin])).toMatchObject({
      fittings: [
        { kind: "added", id: "made-by-us-1" },
        { kind: "added", id: "made-by-us-2" },
        { kind: "alreadyHere", id: "made-by-us-1" },
      ],
    });
    expect(await storage.list()).toMatchObject({ fittings: { length: 3 } });
  });

  it("brings back a removed fitting that comes again word for word", async () => {
    const { storage } = freshStorage();
    await storage.add([sampleTitled("Ines", "ines-0001")]);
    await storage.remove("ines-0001");
    await storage.add([sampleTitled("Ines", "ines-0001")]);
    expect(await storage.list()).toMatchObject({ fittings: [{ entry: { deletedAt: null } }] });
  });
});

describe("settings of the device", () => {
  it("lay new values over old ones, and forget what is set to null", async () => {
    const { storage } = freshStorage();
    await storage.saveSettings({ colours: "dark", changes: 3 });
    await storage.saveSettings({ changes: 4, colours: null });
    expect(await storage.settings()).toEqual({ changes: 4 });
  });

  it("count as none when damaged, and are laid in quarantine before they are replaced", async () => {
    const { storage, stores } = freshStorage();
    await storage.saveSettings({ colours: "dark" });
    stores.kept.set("settings/device", { format: 1, text: "{", check: "00000000" });
    expect(await storage.settings()).toEqual({});
    await storage.saveSettings({ colours: "light" });
    expect(await storage.quarantined()).toMatchObject({ items: [{ source: "settings" }] });
  });
});
