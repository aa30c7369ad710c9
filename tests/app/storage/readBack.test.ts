import { describe, expect, it } from "vitest";
import { importFile } from "../../../src/app/share/fileImport";
import type { ObjectStores } from "../../../src/app/storage/objectStores";
import { type FittingStorage, fittingStorage } from "../../../src/app/storage/fittingStorage";
import { type MemoryStores, memoryStores } from "./memoryStores";
import { sampleFitting, sampleTitled, sampleWithWaist } from "./sampleFittings";

/**
 * What is announced has been read again. All that expect a refusal were seen to fail when the storage took its own
 * writing: each wish was answered as if it had been kept.
 */
const now = "2026-05-02T08:00:00.000Z";

function storageOf(stores: ObjectStores): FittingStorage {
  let count = 0;
  const newId = (): string => {
    count += 1;
    return `made-by-us-${count}`;
  };
  return fittingStorage(stores, { now: () => now, newId });
}

/** Drawers that report every change as kept, and then lose or damage what was to be kept. */
function lyingStores(stores: MemoryStores, lie: (kept: Map<string, unknown>, before: Map<string, unknown>) => void) {
  const change: ObjectStores["change"] = async (work) => {
    const before = new Map(stores.kept);
    const done = await stores.change(work);
    lie(stores.kept, before);
    return done;
  };
  return { ...stores, change };
}

const lost = (kept: Map<string, unknown>, before: Map<string, unknown>): void => {
  kept.clear();
  for (const [place, value] of before) kept.set(place, value);
};
const damaged = (kept: Map<string, unknown>): void => {
  for (const [place, value] of kept)
    if (place.startsWith("fittings/")) kept.set(place, { ...(value as object), text: "{}" });
};

const history = { past: [], future: [] };
const wishes: { readonly [name: string]: (storage: FittingStorage) => Promise<{ readonly kind: string }> } = {
  add: (storage) => storage.add([sampleTitled("Ruth")]),
  "put away": (storage) => storage.setArchived("odile-0001", true),
  remove: (storage) => storage.remove("odile-0001"),
  save: (storage) =>
    storage.save({
      id: "odile-0001",
      baseRevision: 1,
      mark: "m",
      earlierMarks: [],
      fitting: { ...sampleWithWaist(88), id: "odile-0001" },
      history,
    }),
  erase: (storage) => storage.erase("odile-0001"),
  "erase everything": (storage) => storage.eraseEverything(),
};

describe("a change that was reported as kept and was not", () => {
  it.each(Object.keys(wishes))("is not announced: %s", async (name) => {
    const stores = memoryStores();
    await storageOf(stores).add([sampleTitled("Odile", "odile-0001")]);
    const outcome = await wishes[name]?.(storageOf(lyingStores(stores, lost)));
    expect(outcome).toMatchObject({ kind: "notSaved", reason: "failed" });
  });

  it.each(["add", "put away", "remove", "save"])("nor one that was damaged on its way: %s", async (name) => {
    const stores = memoryStores();
    await storageOf(stores).add([sampleTitled("Odile", "odile-0001")]);
    const outcome = await wishes[name]?.(storageOf(lyingStores(stores, damaged)));
    expect(outcome).toMatchObject({ kind: "notSaved", reason: "failed" });
  });

  it.each(Object.keys(wishes))("and one that was kept is: %s", async (name) => {
    const storage = storageOf(memoryStores());
    await storage.add([sampleTitled("Odile", "odile-0001")]);
    expect((await wishes[name]?.(storage))?.kind).not.toBe("notSaved");
  });
});

describe("a fitting that could not be read again", () => {
  const tooLong = { ...sampleFitting, title: "x".repeat(201) };

  it.each([
    ["a title too long", tooLong],
    ["notes too long", { ...sampleFitting, notes: "x".repeat(20_001) }],
    ["a length that is none", { ...sampleFitting, body: { waistGirth: "wide" } }],
  ])("is not added, and nothing beside it: %s", async (_, fitting) => {
    const stores = memoryStores();
    const outcome = await storageOf(stores).add([sampleTitled("Ruth"), fitting]);
    expect(outcome).toMatchObject({ kind: "notSaved", reason: "unwritable" });
    expect([...stores.kept]).toEqual([]);
  });
});

describe("a file that is opened twice", () => {
  const byHand = new Blob([
    JSON.stringify({
      version: 1,
      unit: "cm",
      title: "Ines",
      body: { waistGirth: 80 },
      form: {},
      batting: sampleFitting.batting,
    }),
  ]);

  it("is here already the second time, although it carries no id", async () => {
    const storage = storageOf(memoryStores());
    expect(await importFile(byHand, storage)).toMatchObject({ fittings: [{ kind: "added" }], alreadyHere: [] });
    expect(await importFile(byHand, storage)).toMatchObject({
      fittings: [{ kind: "alreadyHere", id: "made-by-us-1" }],
      alreadyHere: [{ title: "Ines" }],
    });
    expect(await storage.list()).toMatchObject({ fittings: [{ kind: "fitting" }] });
  });

  it("lies beside a fitting that was changed since, once", async () => {
    const storage = storageOf(memoryStores());
    const file = sampleTitled("Odile", "odile-0001");
    await storage.add([file]);
    await wishes.save?.(storage);
    expect(await storage.add([file])).toMatchObject({ fittings: [{ kind: "addedBeside", besideId: "odile-0001" }] });
    expect(await storage.add([file])).toMatchObject({ fittings: [{ kind: "alreadyHere", id: "made-by-us-1" }] });
  });

  it("is added again where the first was removed", async () => {
    const storage = storageOf(memoryStores());
    await importFile(byHand, storage);
    await storage.remove("made-by-us-1");
    expect(await importFile(byHand, storage)).toMatchObject({ fittings: [{ kind: "added", id: "made-by-us-2" }] });
  });
});
