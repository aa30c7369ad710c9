import { describe, expect, it } from "vitest";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { knownFittings } from "../../../src/app/storage/knownFittings";
import { fakeNotes } from "./fakeNotes";
import { memoryStores } from "./memoryStores";
import { sampleTitled } from "./sampleFittings";

function browser() {
  const stores = memoryStores();
  const notes = fakeNotes();
  let ids = 0;
  const tab = () =>
    fittingStorage(stores, {
      now: () => "2026-03-01T10:00:00.000Z",
      newId: () => `made-by-us-${++ids}`,
      known: knownFittings({ localStorage: notes }),
    });
  const lose = (id: string) => {
    for (const place of [...stores.kept.keys()]) if (place.endsWith(`/${id}`)) stores.kept.delete(place);
  };
  return { stores, notes, tab, lose };
}

const ruth = sampleTitled("Ruth", "ruth-0001");
const ines = sampleTitled("Ines", "ines-0001");
const odile = sampleTitled("Odile", "odile-001");

const goneTitles = async (storage: ReturnType<typeof fittingStorage>) => {
  const compared = await storage.gone();
  if (compared.kind !== "compared") throw new Error(compared.kind);
  return compared.gone.map(({ title }) => title);
};

const save = (storage: ReturnType<typeof fittingStorage>, title: string, baseRevision: number) =>
  storage.save({
    id: "ruth-0001",
    baseRevision,
    mark: `${title} ${baseRevision}`,
    earlierMarks: [],
    fitting: sampleTitled(title, "ruth-0001"),
    history: { past: [], future: [] },
  });

describe("what is lost", () => {
  it("is told by name when everything was emptied under a page that goes on saving", async () => {
    const { tab, stores } = browser();
    const storage = tab();
    await storage.add([ines, odile]);
    await save(storage, "Ruth", 0);
    expect(await goneTitles(storage)).toEqual([]);
    stores.kept.clear();
    expect(await save(storage, "Ruth, blue coat", 1)).toMatchObject({ found: ["recreated"] });
    expect(await goneTitles(storage)).toEqual(["Ines", "Odile"]);
    // It is told again until the person says that it is known, in this visit or the next.
    expect(await goneTitles(tab())).toEqual(["Ines", "Odile"]);
    storage.forgetGone(["ines-0001"]);
    expect(await goneTitles(tab())).toEqual(["Odile"]);
  });

  it("comes with the file it was last saved to, and is not lost any more once that was opened", async () => {
    const { tab, lose } = browser();
    const storage = tab();
    await storage.add([ines, odile]);
    storage.noteFile(["ines-0001"], "fittings 2026-03-01.json");
    lose("ines-0001");
    lose("odile-001");
    expect(await storage.gone()).toMatchObject({
      gone: [
        { title: "Ines", file: { name: "fittings 2026-03-01.json", savedAt: "2026-03-01T10:00:00.000Z" } },
        { title: "Odile", file: null },
      ],
    });
    expect(storage.lastFile()).toMatchObject({ name: "fittings 2026-03-01.json" });
    await storage.add([ines]);
    expect(await goneTitles(storage)).toEqual(["Odile"]);
  });

  it("is nothing that was erased, removed, put away or not read", async () => {
    const { tab, stores } = browser();
    const storage = tab();
    await storage.add([ines, odile, ruth]);
    await storage.remove("ines-0001");
    await storage.setArchived("odile-001", true);
    await storage.erase("ruth-0001");
    expect(await goneTitles(storage)).toEqual([]);
    stores.kept.set("fittings/ines-0001", { half: "a record" });
    expect(await goneTitles(storage)).toEqual([]);
    await storage.eraseEverything();
    expect(await goneTitles(storage)).toEqual([]);
    stores.failFrom(() => ({ reason: "lost", when: "before" }));
    expect(await storage.gone()).toMatchObject({ kind: "notRead" });
  });

  it("is nothing that was erased, also where the note was behind when the browser was killed", async () => {
    const { tab, notes } = browser();
    const storage = tab();
    await storage.add([ines, odile]);
    const before = notes.everything();
    await storage.erase("ines-0001");
    notes.put(before);
    expect(await goneTitles(tab())).toEqual([]);
    await storage.eraseEverything();
    notes.put(before);
    expect(await goneTitles(tab())).toEqual([]);
    expect(notes.everything()).toEqual([]);
  });

  it("is told of a fitting that came back after it was erased", async () => {
    const { tab, lose } = browser();
    const storage = tab();
    await storage.add([ines]);
    await storage.erase("ines-0001");
    await storage.add([ines]);
    lose("ines-0001");
    expect(await goneTitles(storage)).toEqual(["Ines"]);
  });

  it("is told of what an older release had kept, once it has been listed", async () => {
    const { tab, stores, notes, lose } = browser();
    const storage = tab();
    await storage.add([ines, odile]);
    notes.put([["padwright fittings kept", "2"]]);
    expect(await storage.gone()).toMatchObject({ gone: [], isAllKnown: false });
    stores.kept.set("fittings/odile-001", { half: "a record" });
    stores.kept.delete("summaries/odile-001");
    await storage.list();
    expect(await storage.gone()).toMatchObject({ gone: [], isAllKnown: true });
    lose("ines-0001");
    lose("odile-001");
    expect(await goneTitles(storage)).toEqual(["Ines", ""]);
  });

  it("is told under the name it had last", async () => {
    const { tab, lose } = browser();
    const storage = tab();
    await save(storage, "Ruth", 0);
    storage.noteFile(["ruth-0001"], "Ruth.json");
    await save(storage, "Ruth, blue coat", 1);
    lose("ruth-0001");
    expect(await storage.gone()).toMatchObject({ gone: [{ title: "Ruth, blue coat", file: { name: "Ruth.json" } }] });
  });

  it("stays untold, and nothing else changes, where the browser lets no note be taken", async () => {
    const stores = memoryStores();
    const refusing = new Proxy({} as Storage, {
      get: () => {
        throw new DOMException("denied", "SecurityError");
      },
    });
    const tools = { now: () => "", newId: () => "new-00001", known: knownFittings({ localStorage: refusing }) };
    const storage = fittingStorage(stores, tools);
    expect(await storage.add([ines])).toMatchObject({ kind: "added" });
    storage.noteFile(["ines-0001"], "Ines.json");
    expect(storage.lastFile()).toBeNull();
    stores.kept.clear();
    expect(await storage.gone()).toMatchObject({ kind: "compared", gone: [] });
  });

  it("is told without a name where the note was changed by somebody", async () => {
    const { tab, notes, stores } = browser();
    const storage = tab();
    await storage.add([ines, odile]);
    const [one, other] = notes.everything();
    notes.put([
      [one?.[0] ?? "", "{"],
      [other?.[0] ?? "", "[7]"],
    ]);
    stores.kept.clear();
    expect(await goneTitles(storage)).toEqual(["", ""]);
  });
});
