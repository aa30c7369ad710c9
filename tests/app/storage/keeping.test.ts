// @vitest-environment node
import { describe, expect, it } from "vitest";
import { fittingStore } from "../../../src/app/store";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { startKeeping } from "../../../src/app/storage/keeping";
import type { Desk, OpenState } from "../../../src/app/storage/openFitting";
import { fakeChannels, fakeLocks } from "./fakeTabs";
import { memoryDrawers } from "./memoryDrawers";
import { sampleTitled, sampleWithWaist, waistOf } from "./sampleFittings";

const rest = async () => {
  for (let i = 0; i < 300; i += 1) await Promise.resolve();
};

function browser() {
  const drawers = memoryDrawers();
  const locks = fakeLocks();
  const channels = fakeChannels();
  const timers: (() => void)[] = [];
  let [ids, seconds] = [0, 0];
  const tools = {
    now: () => new Date(Date.UTC(2026, 0, 1, 12, 0, seconds++)).toISOString(),
    newId: () => `id-${++ids}-000000`,
  };
  const tab = () => {
    const desk: Desk = {
      storage: fittingStorage(drawers, tools),
      locks,
      channel: channels(),
      later: (_, work) => {
        timers.push(work);
        return () => {};
      },
    };
    const store = fittingStore(sampleWithWaist(80));
    const states: (OpenState | null)[] = [];
    let firstSaves = 0;
    const onFirstSave = () => {
      firstSaves += 1;
    };
    const keeping = startKeeping(store, desk, {
      onState: (state) => states.push(state),
      onFirstSave,
      onHistoryLost: () => {},
    });
    const waist = (text: string) => store.dispatch({ does: "measure", whose: "body", name: "waistGirth", text });
    return { store, keeping, waist, last: () => states.at(-1), firstSaves: () => firstSaves };
  };
  const titles = async () => {
    const listed = await fittingStorage(drawers, tools).list();
    if (listed.kind !== "listed") return [];
    return listed.fittings.map((one) =>
      one.kind === "fitting" ? `${one.entry.title} ${waistOf(one.fitting)}` : one.kind,
    );
  };
  const passTime = async () => {
    for (const work of timers.splice(0)) work();
    await rest();
  };
  return { drawers, tab, titles, passTime };
}

describe("the table", () => {
  it("keeps nothing until something is changed, and then every change, in one fitting", async () => {
    const { tab, titles } = browser();
    const { waist, keeping, last, firstSaves } = tab();
    await rest();
    expect(await titles()).toEqual([]);
    for (const text of ["81", "82", "83"]) waist(text);
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 83"]);
    expect(last()?.saving.kind).toBe("saved");
    expect(keeping.openId()).toBe("id-1-000000");
    waist("84");
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 84"]);
    expect(firstSaves()).toBe(1);
  });

  it("keeps the fitting that leaves apart from the one that comes, even in the same moment", async () => {
    const { tab, titles } = browser();
    const { store, keeping, waist } = tab();
    waist("81");
    store.load(sampleTitled("Made-up person"));
    waist("70");
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 81", "Made-up person 70"]);
    expect(await keeping.put(sampleTitled("Third"))).toBe("put");
    waist("60");
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 81", "Made-up person 70", "Third 60"]);
  });

  it("opens a kept fitting with its steps, and goes on in it", async () => {
    const { tab, titles } = browser();
    const first = tab();
    first.waist("81");
    first.waist("82");
    await rest();
    const id = first.keeping.openId() ?? "";
    await first.keeping.put(sampleTitled("Other"));
    await rest();
    const later = tab();
    expect(await later.keeping.open(id)).toBe("open");
    later.store.undo();
    await rest();
    expect(waistOf(later.store.getState().fitting)).toBe("81");
    expect(await titles()).toEqual(["Odile, spring jacket 81"]);
    expect(await later.keeping.open("nobody")).toBe("missing");
    expect(later.keeping.openId()).toBe(id);
  });

  it("lets nothing take the place of a change that could not be kept", async () => {
    const { tab, titles, drawers, passTime } = browser();
    const { store, keeping, waist, last } = tab();
    waist("81");
    await rest();
    drawers.failFrom(() => ({ reason: "noRoom", when: "before" }));
    waist("82");
    await rest();
    expect(last()?.saving.kind).toBe("notSaved");
    expect(await keeping.put(sampleTitled("Other"))).toBe("notKept");
    expect(await keeping.open("id-9-000000")).toBe("notKept");
    expect(waistOf(store.getState().fitting)).toBe("82");
    drawers.failFrom(() => null);
    await passTime();
    expect(await keeping.put(sampleTitled("Other"))).toBe("put");
    expect(await titles()).toEqual(["Odile, spring jacket 82"]);
  });

  it("keeps a change that came too late as a copy, or lets go of it, as the person says", async () => {
    const { tab, titles } = browser();
    const first = tab();
    first.waist("81");
    await rest();
    const second = tab();
    await second.keeping.open(first.keeping.openId() ?? "");
    expect(second.last()?.access).toBe("elsewhere");
    second.waist("99");
    await rest();
    expect(second.last()?.saving).toMatchObject({ kind: "notSaved", refusal: { reason: "changedElsewhere" } });
    first.waist("82");
    await rest();
    expect(waistOf(second.store.getState().fitting)).toBe("99");
    await second.keeping.keepAsCopy();
    await rest();
    expect(await titles()).toEqual(["Odile, spring jacket 82", "Odile, spring jacket 99"]);

    const third = tab();
    await third.keeping.open(first.keeping.openId() ?? "");
    third.waist("50");
    await third.keeping.readAnew();
    expect(waistOf(third.store.getState().fitting)).toBe("82");
    expect(third.last()?.saving.kind).toBe("saved");
  });
});
