import { expect, test } from "vitest";
import { sealedRecord } from "../../../src/app/storage/fittingRecord";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { fittingText } from "../../../src/app/storage/fittingText";
import { memoryStores } from "./memoryStores";
import { sampleFitting } from "./sampleFittings";

/**
 * A fitting that an earlier release saved with a piece that cannot be. Seen to be unreadable, the whole of it, while the
 * storage read it as strictly as a file from outside.
 */
const tools = { now: () => "2026-03-01T10:00:00.000Z", newId: () => "fresh-0001" };
const impossible = { did: "pinned", piece: { id: "front-1", rows: [] } };
const stored = { ...(JSON.parse(fittingText(sampleFitting)) as object), work: [impossible, { did: "replanned" }] };

test("it opens without the entry, which is kept in it, and what is saved then opens again", async () => {
  const stores = memoryStores();
  const record = sealedRecord({
    id: "one",
    title: sampleFitting.title,
    changedAt: "2026-02-01T10:00:00.000Z",
    archived: false,
    deletedAt: null,
    revision: 3,
    saveMark: "a",
    text: JSON.stringify(stored),
  });
  stores.kept.set("fittings/one", record);
  const storage = fittingStorage(stores, tools);
  const loaded = await storage.load("one");
  expect(loaded).toMatchObject({
    kind: "loaded",
    fitting: { body: sampleFitting.body, work: [{ did: "replanned" }], extra: { workSetAside: [impossible] } },
  });
  if (loaded.kind !== "loaded") return;
  const title = "Odile, winter coat";
  const saved = await storage.save({
    id: "one",
    baseRevision: 3,
    mark: "b",
    earlierMarks: ["a"],
    fitting: { ...loaded.fitting, title },
    history: loaded.history,
  });
  expect(saved.kind).toBe("saved");
  expect(await storage.load("one")).toMatchObject({
    kind: "loaded",
    fitting: { title, work: [{ did: "replanned" }], extra: { workSetAside: [impossible] } },
  });
});
