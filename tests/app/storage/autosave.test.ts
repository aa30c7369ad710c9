import { describe, expect, it } from "vitest";
import { fittingStore } from "../../../src/app/session/store";
import { type FittingRecord, sealedRecord } from "../../../src/app/storage/fittingRecord";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { fittingText } from "../../../src/app/storage/fittingText";
import { knownFittings } from "../../../src/app/storage/knownFittings";
import { startAutosave } from "../../../src/app/storage/autosave";
import type { StorageContext, OpenState } from "../../../src/app/storage/openFitting";
import { fakeNotes } from "./fakeNotes";
import { fakeChannels, fakeLocks } from "./fakeTabs";
import { keptText, memoryStores } from "./memoryStores";
import { sampleTitled, sampleWithWaist, waistOf } from "./sampleFittings";

const rest = async () => {
  for (let i = 0; i < 300; i += 1) await Promise.resolve();
};

function browser() {
  const stores = memoryStores();
  const locks = fakeLocks();
  const channels = fakeChannels();
  const timers: (() => void)[] = [];
  let [ids, seconds] = [0, 0];
  const tools = {
    now: () => new Date(Date.UTC(2026, 0, 1, 12, 0, seconds++)).toISOString(),
    newId: () => `id-${++ids}-000000`,
    known: knownFittings({ localStorage: fakeNotes() }),
  };
  const tab = () => {
    const context: StorageContext = {
      storage: fittingStorage(stores, tools),
      locks,
      channel: channels(),
      later: (_, work) => {
        timers.push(work);
        return () => {};
      },
    };
    const store = fittingStore(sampleWithWaist(80));
    const states: (OpenState | null)[] = [];
    const found: string[] = [];
    let firstSaves = 0;
    const onFirstSave = () => {
      firstSaves += 1;
    };
    const autosave = startAutosave(store, context, {
      onState: (state) => states.push(state),
      onFirstSave,
      onHistoryLost: () => {},
      onFound: (what) => found.push(what),
    });
    const waist = (text: string) => store.dispatch({ does: "measure", whose: "body", name: "waistGirth", text });
    return { store, autosave, waist, found, last: () => states.at(-1), firstSaves: () => firstSaves };
  };
  const titles = async () => {
    const read = await fittingStorage(stores, tools).read("all");
    if (read.kind !== "read") return [];
    return read.fittings.map((one) =>
      one.kind === "fitting" ? `${one.entry.title} ${waistOf(one.fitting)}` : one.kind,
    );
  };
  const passTime = async () => {
    for (const work of timers.splice(0)) work();
    await rest();
  };
  return { stores, tab, titles, passTime };
}

describe("the autosave", () => {
  it("keeps nothing until something is changed, and then every change, in one fitting", async () => {
    const { tab, titles } = browser();
    const { waist, autosave, last, firstSaves } = tab();
    await rest();
    expect(await titles()).toEqual([]);
    for (const text of ["81", "82", "83"]) waist(text);
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 83"]);
    expect(last()?.saving.kind).toBe("saved");
    expect(autosave.openId()).toBe("id-1-000000");
    waist("84");
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 84"]);
    expect(firstSaves()).toBe(1);
  });

  it("keeps the fitting that leaves apart from the one that comes, even in the same moment", async () => {
    const { tab, titles } = browser();
    const { store, autosave, waist } = tab();
    waist("81");
    store.load(sampleTitled("Made-up person"));
    waist("70");
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 81", "Made-up person 70"]);
    expect(await autosave.put(sampleTitled("Third"))).toBe("put");
    waist("60");
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 81", "Made-up person 70", "Third 60"]);
  });

  it("says nothing of a fitting that has left, though it is still being saved", async () => {
    const { tab, titles } = browser();
    const { store, waist, last } = tab();
    waist("81");
    store.load(sampleTitled("Other"));
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 81"]);
    expect(last()).toBeNull();
  });

  it("replaces nothing that may not be replaced at the last moment, however it came about", async () => {
    const { tab, titles } = browser();
    const { store, autosave, waist } = tab();
    const isUnchanged = ({ cause }: { readonly cause: string }) => cause === "load";
    waist("81");
    await rest();
    const id = autosave.openId() ?? "";
    await autosave.put(sampleTitled("Other"));
    const opening = autosave.open(id, isUnchanged);
    waist("70");
    expect(await opening).toBe("changed");
    expect(await autosave.put(sampleTitled("Third"), isUnchanged)).toBe("changed");
    await rest();
    expect(store.getState().fitting).toMatchObject({ title: "Other", body: { waistGirth: "70" } });
    expect(await titles()).toEqual(["Odile, spring jacket 81", "Other 70"]);
    expect(await autosave.open(id)).toBe("open");
    expect(await autosave.put(sampleTitled("Third"), isUnchanged)).toBe("put");
  });

  it("opens a kept fitting with its steps, and goes on in it", async () => {
    const { tab, titles } = browser();
    const first = tab();
    first.waist("81");
    first.waist("82");
    await rest();
    const id = first.autosave.openId() ?? "";
    await first.autosave.put(sampleTitled("Other"));
    await rest();
    const later = tab();
    expect(await later.autosave.open(id)).toBe("open");
    later.store.undo();
    await rest();
    expect(waistOf(later.store.getState().fitting)).toBe("81");
    expect(await titles()).toEqual(["Odile, spring jacket 81"]);
    expect(await later.autosave.open("nobody")).toBe("missing");
    expect(later.autosave.openId()).toBe(id);
  });

  it("shows a fitting of a newer release, changes nothing of it, and goes on with others", async () => {
    const { tab, stores } = browser();
    const newer = { ...JSON.parse(fittingText(sampleTitled("From tomorrow"))), version: 2, tomorrow: "unheard of" };
    const record = sealedRecord({
      id: "id-from-tomorrow",
      title: "From tomorrow",
      changedAt: "2027-01-01T00:00:00.000Z",
      archived: false,
      deletedAt: null,
      revision: 4,
      saveMark: "z",
      text: JSON.stringify(newer),
    });
    stores.kept.set("fittings/id-from-tomorrow", record);
    const { store, autosave, waist, last } = tab();
    waist("81");
    await rest();
    const before = keptText(stores);
    expect(await autosave.open("id-from-tomorrow")).toBe("looking");
    expect(last()?.access).toBe("newer");
    waist("70");
    store.dispatch({ does: "changeUnit", unit: "in" });
    autosave.keepNow();
    await rest();
    expect(store.getState().fitting).toMatchObject({ title: "From tomorrow", unit: "in" });
    expect(waistOf(store.getState().fitting)).not.toBe("70");
    expect(keptText(stores)).toBe(before);
    expect(await autosave.open("id-1-000000")).toBe("open");
    waist("82");
    await rest();
    expect(last()).toMatchObject({ access: "writing", saving: { kind: "saved" } });
  });

  it("is told what a save found in place of what was kept", async () => {
    const { tab, stores } = browser();
    const { waist, found } = tab();
    waist("81");
    await rest();
    stores.kept.delete("fittings/id-1-000000");
    waist("82");
    await rest();
    stores.kept.set("fittings/id-1-000000", { half: "a record" });
    waist("83");
    await rest();
    expect(found).toEqual(["recreated", "quarantined"]);
  });

  it("keeps what is open again when everything was emptied under it, and tells what else is lost", async () => {
    const { tab, titles, stores } = browser();
    const { autosave, waist, found } = tab();
    waist("81");
    await rest();
    await autosave.put(sampleTitled("Other"));
    waist("70");
    await rest();
    expect(await autosave.lost()).toEqual([]);
    stores.kept.clear();
    expect(await autosave.lost()).toMatchObject([{ id: "id-1-000000", title: "Odile, spring jacket" }]);
    await rest();
    expect(await titles()).toEqual(["Other 70"]);
    expect(found).toEqual(["recreated"]);
    expect(await autosave.lost()).toMatchObject([{ id: "id-1-000000" }]);
    stores.failFrom(() => ({ reason: "lost", when: "before" }));
    expect(await autosave.lost()).toBeNull();
  });

  it("says not saved at once when a newer release has written in another tab", async () => {
    const { tab, stores } = browser();
    const first = tab();
    first.waist("81");
    await rest();
    const second = tab();
    await second.autosave.open("id-1-000000");
    const { check: _check, ...kept } = stores.kept.get("fittings/id-1-000000") as FittingRecord;
    const text = JSON.stringify({ ...JSON.parse(kept.text), version: 2 });
    stores.kept.set("fittings/id-1-000000", sealedRecord({ ...kept, text, revision: 9 }));
    await second.autosave.readAnew();
    expect(second.last()?.saving).toMatchObject({ kind: "notSaved", refusal: { reason: "newerRecord" } });
  });

  it("lets nothing take the place of a change that could not be kept", async () => {
    const { tab, titles, stores, passTime } = browser();
    const { store, autosave, waist, last } = tab();
    waist("81");
    await rest();
    stores.failFrom(() => ({ reason: "noRoom", when: "before" }));
    waist("82");
    await rest();
    expect(last()?.saving.kind).toBe("notSaved");
    expect(await autosave.put(sampleTitled("Other"))).toBe("notKept");
    expect(await autosave.open("id-9-000000")).toBe("notKept");
    expect(waistOf(store.getState().fitting)).toBe("82");
    stores.failFrom(() => null);
    await passTime();
    expect(await autosave.put(sampleTitled("Other"))).toBe("put");
    expect(await titles()).toEqual(["Odile, spring jacket 82"]);
  });

  it("lets nothing leave when erasing everything fails, and everything when it does not", async () => {
    const { tab, titles, stores, passTime } = browser();
    const { store, autosave, waist } = tab();
    waist("81");
    await rest();
    stores.failFrom(() => ({ reason: "noRoom", when: "before" }));
    waist("82");
    expect(await autosave.eraseEverything(sampleTitled("In its place"))).toMatchObject({ kind: "notSaved" });
    expect(waistOf(store.getState().fitting)).toBe("82");
    stores.failFrom(() => null);
    expect(await autosave.eraseEverything(sampleTitled("In its place"))).toEqual({ kind: "erased" });
    await passTime();
    expect(store.getState().fitting.title).toBe("In its place");
    expect(await titles()).toEqual([]);
  });

  it("tries to save nothing again while everything is being erased", async () => {
    const { tab, titles, stores, passTime } = browser();
    const { autosave, waist, last, found } = tab();
    waist("81");
    await rest();
    stores.failFrom(() => ({ reason: "noRoom", when: "before" }));
    waist("82");
    await rest();
    expect(last()?.saving.kind).toBe("notSaved");
    let isErasing = false;
    stores.failFrom((_, name) => {
      if (name === "clear") isErasing = true;
      return null;
    });
    const erasing = autosave.eraseEverything(sampleTitled("In its place"));
    while (!isErasing) await Promise.resolve();
    await passTime();
    expect(await erasing).toEqual({ kind: "erased" });
    expect(await titles()).toEqual([]);
    expect(found).toEqual([]);
  });

  it("keeps a change that came too late as a copy, or lets go of it, as the person says", async () => {
    const { tab, titles } = browser();
    const first = tab();
    first.waist("81");
    await rest();
    const second = tab();
    await second.autosave.open(first.autosave.openId() ?? "");
    expect(second.last()?.access).toBe("elsewhere");
    second.waist("99");
    await rest();
    expect(second.last()?.saving).toMatchObject({ kind: "notSaved", refusal: { reason: "changedElsewhere" } });
    first.waist("82");
    await rest();
    expect(waistOf(second.store.getState().fitting)).toBe("99");
    await second.autosave.keepAsCopy();
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 82", "Odile, spring jacket 99"]);

    const third = tab();
    await third.autosave.open(first.autosave.openId() ?? "");
    third.waist("50");
    await third.autosave.readAnew();
    expect(waistOf(third.store.getState().fitting)).toBe("82");
    expect(third.last()?.saving.kind).toBe("saved");
  });
});
